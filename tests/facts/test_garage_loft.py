"""The garage loft, worked by hand: a gable of 9 in 12, 22 ft wide, partition G1 and knee walls.

The underside of the rafters is 12 in. up at each outer wall, 12 + 132 x 0.75 = 111 at the ridge.
Cosine 0.8, sine 0.6, 36.87 degrees. G1 runs between the knee walls, 168 in. long, from 48 in. off
the left outer wall: over it the roof rises from 48 in. to 111 at its middle.
A plate stands 1.5 x 1.25 = 1.875 high under the slope, so a stud is R - 1.875 - 1.5 long, where R
is the roof over its edge; its two edges differ by 1.5 x 0.75 = 1.125.
All figures are our own arithmetic, done by hand, then again by a script of its own.
"""

from __future__ import annotations

import math

import pytest

from core.framing import PlacedBox
from core.job import WallResult
from core.lengths import System, Tape
from core.model import LineEdge, Side, Wall
from walls import US, in_12, member, result

TAPE = Tape.usual(System.INCH)
SLOPE = (12.0, in_12(9))
ROOM = US.room(264, SLOPE, SLOPE, length=288)
DOOR = US.opening("door-1", left=56, width=34, head=82.5)
BOXES = (
    US.box("receptacle-1", "B/layout/2", Side.RIGHT, 12),
    US.box("receptacle-2", "B/layout/9", Side.LEFT, 12),
    US.box("switch-1", "B/door-1/king/right", Side.RIGHT, 48),
)


def partition(edge: LineEdge = LineEdge.NEAR) -> WallResult:
    wall: Wall = US.wall((48, 144), (216, 144), openings=(DOOR,), boxes=BOXES)
    return result(ROOM, wall, edge)


# cause | left edge, right edge, in. | long point | short point | side of the long point
#       | mark along its slope, from the low plumb end, to the downhill edge
STUDS = """
end/left          |   0    |   1.5  |  45 3/4   |  44 5/8   | right |  0
layout/1          |  15.25 |  16.75 |  57 3/16  |  56 1/16  | right | 19 1/16
layout/2          |  31.25 |  32.75 |  69 3/16  |  68 1/16  | right | 39 1/16
layout/3          |  47.25 |  48.75 |  81 3/16  |  80 1/16  | right | 59 1/16
door-1/king/left  |  53    |  54.5  |  85 1/2   |  84 3/8   | right | 66 1/4
door-1/above/4    |  63.25 |  64.75 |  10 11/16 |   9 9/16  | right | 79 1/16
door-1/above/5    |  79.25 |  80.75 |  22 11/16 |  21 9/16  | right | 99 1/16
door-1/king/right |  91.5  |  93    | 102       | 100 7/8   | left  | 93 3/4
layout/6          |  95.25 |  96.75 |  99 3/16  |  98 1/16  | left  | 89 1/16
layout/7          | 111.25 | 112.75 |  87 3/16  |  86 1/16  | left  | 69 1/16
layout/8          | 127.25 | 128.75 |  75 3/16  |  74 1/16  | left  | 49 1/16
layout/9          | 143.25 | 144.75 |  63 3/16  |  62 1/16  | left  | 29 1/16
layout/10         | 159.25 | 160.75 |  51 3/16  |  50 1/16  | left  |  9 1/16
end/right         | 166.5  | 168    |  45 3/4   |  44 5/8   | left  |  0
"""
ROWS = [[cell.strip() for cell in line.split("|")] for line in STUDS.strip().splitlines()]

# The sole plate from its left end: near edges. The door, 56 to 90, is cut out after.
SOLE = """
0 X, 15 1/4 X, 31 1/4 X, 47 1/4 X, 53 K, 54 1/2 T, 90 T, 91 1/2 K, 95 1/4 X, 111 1/4 X, 127 1/4 X,
143 1/4 X, 159 1/4 X, 166 1/2 X
"""


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_stud(row: list[str]) -> None:
    cause, left, right, long_point, short_point, side, _ = row
    wall = partition()
    assert wall.frame is not None
    stud = member(wall.frame, cause)
    assert (US.of(stud.left), US.of(stud.right)) == pytest.approx((float(left), float(right)))
    assert (TAPE.text(stud.long_point), TAPE.text(stud.short_point)) == (
        f'{long_point}"',
        f'{short_point}"',
    )
    edges = dict(zip(("left", "right"), stud.edges[:2], strict=True))
    assert edges[side] == stud.long_point
    assert stud.edges[2:] == pytest.approx(stud.edges[:2])
    # The stud lies on its wide face; the blade tilts 36.87, the saw does not swing.
    (cut,) = stud.last_cut
    tilt = 36.87 if side == "right" else -36.87
    assert (round(math.degrees(cut.bevel), 2), cut.mitre, cut.face_up) == (tilt, 0.0, side)


def test_nothing_else_stands_in_it() -> None:
    wall = partition()
    assert wall.frame is not None
    trimmers = {f"door-1/trimmer/{side}" for side in ("left", "right")}
    level = {"door-1/header/1", "top/1/1", "top/2/1", "sole"}
    causes = {m.key.removeprefix("B/") for m in wall.frame.members}
    assert causes == {row[0] for row in ROWS} | trimmers | level
    assert wall.cautions == ()


def test_trimmers_and_header() -> None:
    # Trimmers stand on the sole plate: 82.5 - 1.5. The header is 34 + 2 x 1.5 long.
    frame = partition().frame
    assert frame is not None
    for side, left in (("left", 54.5), ("right", 90)):
        trimmer = member(frame, f"door-1/trimmer/{side}")
        assert US.of(trimmer.left) == pytest.approx(left)
        assert TAPE.text(trimmer.long_point) == '81"'
        assert trimmer.short_point == trimmer.long_point
    header = member(frame, "door-1/header/1")
    assert TAPE.text(header.overall) == '37"'
    assert (US.of(header.bottom), US.of(header.top)) == pytest.approx((82.5, 84))


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_mark_on_the_slope(row: list[str]) -> None:
    cause, _, _, _, _, side, along = row
    downhill = [m for m in partition().marks if m.member == f"B/{cause}" and "/top/" in m.plate]
    (mark,) = downhill
    assert (mark.plate, mark.origin.value) == (
        ("B/top/1/1", "left") if side == "right" else ("B/top/2/1", "right")
    )
    assert TAPE.text(mark.along) == f'{along}"'
    assert mark.x_side.value == side
    # The other habit lines the uphill edge: 1.5 x 1.25 = 1 7/8 further up the slope.
    uphill = [
        m
        for m in partition(LineEdge.UPHILL).marks
        if m.member == f"B/{cause}" and "/top/" in m.plate
    ]
    assert US.of(uphill[0].along - mark.along) == pytest.approx(1.875)
    assert uphill[0].edge.value == side


def test_uphill_marks_on_the_tape() -> None:
    marks = partition(LineEdge.UPHILL).marks
    left = [TAPE.text(m.along) for m in marks if m.plate == "B/top/1/1"]
    assert left[1:4] == ['20 15/16"', '40 15/16"', '60 15/16"']


def test_precut_studs_would_be_too_short_for_two() -> None:
    # 92 5/8 in. precut studs, published for 8 ft ceilings: king and stud at 102 and 99 3/16.
    frame = partition().frame
    assert frame is not None
    longer = [m.key for m in frame.members if not m.lies and US.of(m.long_point) > 92.625]
    assert longer == ["B/door-1/king/right", "B/layout/6"]


def test_marks_on_the_sole_plate() -> None:
    marks = [m for m in partition().marks if m.plate == "B/sole"]
    written = [f"{TAPE.text(m.along)[:-1]} {m.letter}" for m in marks]
    assert written == [entry.strip() for entry in SOLE.replace("\n", " ").split(",")]
    assert {(m.origin, m.edge, m.x_side) for m in marks} == {(Side.LEFT, Side.LEFT, Side.RIGHT)}


def test_plates() -> None:
    # 84 / 0.8 = 105 along either edge, plumb at both ends; tip to tip 105 + 1.5 x 0.75 = 106 1/8.
    frame = partition().frame
    assert frame is not None
    for cause, tilt in (("top/1/1", 36.87), ("top/2/1", -36.87)):
        plate = member(frame, cause)
        assert [TAPE.text(edge) for edge in plate.edges] == ['105"'] * 4
        assert TAPE.text(plate.overall) == '106 1/8"'
        cuts = [*plate.first_cut, *plate.last_cut]
        assert [(round(math.degrees(c.bevel), 2), c.mitre) for c in cuts] == [(tilt, 0.0)] * 2
    assert TAPE.text(member(frame, "sole").overall) == '168"'
    # The undersides meet at 84 too, since the slopes match.
    assert [US.of(s.right) for s in frame.near.segments] == pytest.approx([84, 168])


def test_peak_stud() -> None:
    # Point: 111 - 1.875 - 1.5 = 107 5/8; shoulders 0.75 x 0.75 lower: 107 1/16.
    peak = US.wall((48, 144), (216, 144), openings=(DOOR,), added=(("peak", 83.25),))
    frame = result(ROOM, peak).frame
    assert frame is not None
    # Over the door it stands on the header, whose top is at 84 instead of 1 1/2.
    stud = member(frame, "door-1/above/peak")
    assert TAPE.text(stud.long_point + US.length(84 - 1.5).mm) == '107 5/8"'
    assert TAPE.text(stud.short_point + US.length(84 - 1.5).mm) == '107 1/16"'
    assert [round(math.degrees(c.bevel), 2) for c in stud.last_cut] == [36.87, -36.87]


def test_lowest_left_edge_of_the_door() -> None:
    # The header's low end, 1.5 left of the opening, needs R >= 84 + 1.875: u = 37.875 / 0.75 =
    # 50.5, so the opening starts at 52 or after; at 56 there are 4 in. to spare. On the right the
    # same: its right edge at 168 - 52 = 116 at most, so its left one at 82.
    frame = partition().frame
    assert frame is not None
    ((low, high),) = frame.openings[0].fit.ranges
    assert (US.of(low), US.of(high)) == pytest.approx((52.0, 82.0))


def test_boxes() -> None:
    # Each 2 in. wide and 4 tall, centred on its height, against its side of the stud.
    boxes = {b.box.id: b for b in partition().boxes}

    def edges(box: PlacedBox) -> tuple[float, ...]:
        return tuple(US.of(x) for x in (box.left, box.right, box.bottom, box.top))

    assert edges(boxes["receptacle-1"]) == pytest.approx((32.75, 34.75, 10, 14))
    assert edges(boxes["receptacle-2"]) == pytest.approx((141.25, 143.25, 10, 14))
    # Between the right king, which ends at 93, and the stud at 95.25.
    assert edges(boxes["switch-1"]) == pytest.approx((93, 95, 46, 50))
    assert {b.blocked_by for b in boxes.values()} == {None}
    assert [b.stud for b in boxes.values()] == [b.box.stud for b in boxes.values()]


@pytest.mark.parametrize("ends", [((48, 0), (48, 288)), ((216, 288), (216, 0))])
def test_knee_walls(ends: tuple[tuple[float, float], tuple[float, float]]) -> None:
    # Face A towards the room, R = 48 over it. Long point 48 - 1.875 - 1.5 = 44 5/8 on face A; 3.5
    # further out it is 3.5 x 0.75 lower, 42. The saw swings 36.87 across the wide face.
    wall = result(ROOM, US.wall(*ends, plate=(1.5, 5.5)))
    assert wall.frame is not None
    studs = [m for m in wall.frame.members if not m.lies]
    # 288 / 16 + 1 = 19 studs.
    assert len(studs) == 19
    for stud in studs:
        assert [TAPE.text(e) for e in stud.edges] == ['44 5/8"', '44 5/8"', '42"', '42"']
        (cut,) = stud.last_cut
        assert (math.degrees(cut.bevel), math.degrees(cut.mitre)) == pytest.approx(
            (0, -36.87), abs=5e-3
        )
    assert wall.cautions == ()
