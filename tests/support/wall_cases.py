"""Generated rooms and walls: any pitches and heights, walls at any angle in plan."""

from __future__ import annotations

import math

import msgspec
from hypothesis import assume
from hypothesis import strategies as st

from core.job import WallResult
from core.lengths import Length, Pitch
from core.model import (
    AddedStud,
    DoubledStud,
    HeaderKind,
    HeadLie,
    Layout,
    MovedStud,
    Near,
    Opening,
    Point,
    Room,
    Side,
    Wall,
    WallRules,
)
from walls import UK, Pair, at_degrees

PITCHES = st.one_of(
    st.sampled_from([0.0, 14.0, 30.0, 38.0, 45.0, 52.0]),
    st.integers(0, 600).map(lambda tenths: tenths / 10),
).map(at_degrees)
STEEP = st.integers(100, 550).map(lambda tenths: at_degrees(tenths / 10))
ANGLES = st.one_of(st.sampled_from([0, 90, 180, 270, 45]), st.integers(0, 359))


@st.composite
def rooms(draw: st.DrawFn) -> Room:
    """A room under one slope or two, with or without a flat ceiling."""
    width = float(draw(st.integers(3000, 9000)))
    sides = draw(st.sampled_from(["left", "right", "both", "both"]))
    left = _slope(draw, width) if sides != "right" else None
    right = _slope(draw, width) if sides != "left" else None
    flat = draw(st.one_of(st.none(), st.integers(2000, 3200).map(float)))
    return UK.room(width, left, right, flat=flat, length=9000.0)


def _slope(draw: st.DrawFn, width: float) -> tuple[float, Pitch]:
    """Eave height and pitch; a roof nearly flat starts high enough for a wall."""
    pitch = draw(PITCHES)
    least = 300 if pitch.tangent * width > 2000 else 1800
    return float(draw(st.integers(least, 2600))), pitch


@st.composite
def gables(draw: st.DrawFn, beam: bool = False) -> Room:
    """A room whose ridge is in its middle third, with or without a ceiling, or with a beam."""
    width = 3 * float(draw(st.integers(1000, 3000)))
    across = width / 3 + draw(st.integers(0, int(width / 3)))
    left, right = draw(STEEP), draw(STEEP)
    runs = ((left, across), (right, width - across))
    top = 600.0 + max(pitch.tangent * run for pitch, run in runs)
    slopes = [(top - pitch.tangent * run, pitch) for pitch, run in runs]
    drop = float(draw(st.integers(0, 400)))
    if beam:
        under = (float(draw(st.integers(40, 200))), top - drop)
        return UK.room(width, slopes[0], slopes[1], beam=under, length=9000.0)
    flat = draw(st.sampled_from([None, top - drop]))
    return UK.room(width, slopes[0], slopes[1], flat=flat, length=9000.0)


@st.composite
def crossing_walls(draw: st.DrawFn, room: Room) -> Wall:
    """A wall from the room's left third to its right one, square to the ridge or aslant."""
    third = int(room.width.mm / 3)
    start = (float(draw(st.integers(0, third - 200))), 4000.0)
    along = draw(st.one_of(st.just(0), st.integers(-3000, 3000)))
    end = (room.width.mm - draw(st.integers(0, third - 200)), 4000.0 + along)
    return UK.wall(start, end, plates=draw(st.integers(1, 2)), start=draw(st.sampled_from(Side)))


@st.composite
def bare_walls(draw: st.DrawFn, room: Room, shortest: int = 40) -> Wall:
    """A wall of studs alone, from any point of the room in any direction."""
    width = room.width.mm
    start = (float(draw(st.integers(0, int(width)))), float(draw(st.integers(1000, 8000))))
    end = _along(start, draw(ANGLES), draw(st.integers(shortest, 5000)))
    if not 0 <= end[0] <= width:
        end = (2 * start[0] - end[0], end[1])
    assume(-1 <= end[0] <= width + 1)
    return UK.wall(
        start,
        end,
        plate=draw(st.sampled_from([(38.0, 89.0), (38.0, 140.0), (50.0, 150.0)])),
        plates=draw(st.sampled_from([1, 1, 2])),
        spacing=draw(st.sampled_from([300.0, 400.0, 450.0, 487.68, 600.0])),
        start=draw(st.sampled_from(Side)),
        hung=draw(st.sampled_from([0.0, 0.0, 12.5, 15.875])),
    )


def _along(start: Pair, degrees: float, run: float) -> Pair:
    # Right angles stay exact, as a person states them.
    cos, sin = (round(f(math.radians(degrees)), 12) + 0.0 for f in (math.cos, math.sin))
    return start[0] + run * cos, start[1] + run * sin


@st.composite
def openings(draw: st.DrawFn, wall: Wall, number: int) -> Opening:
    """An opening somewhere along the wall; whether it fits is another matter."""
    sill = float(draw(st.sampled_from([0, 0, 300, 900])))
    header = UK.header(draw(st.sampled_from(HeaderKind)), plies=draw(st.integers(1, 2)))
    head = sill + draw(st.integers(300, 1500))
    left, width = float(draw(st.integers(0, int(wall.run)))), float(draw(st.integers(200, 1500)))
    opening = UK.opening(f"opening-{number}", left, width, head, sill=sill, header=header)
    lie = draw(st.sampled_from([None, None, HeadLie.RAKED]))
    return msgspec.structs.replace(opening, head_lie=lie)


@st.composite
def stated_walls(draw: st.DrawFn, room: Room) -> Wall:
    """A wall with openings and with studs moved, added and left out."""
    wall = draw(bare_walls(room, shortest=400))
    places = st.sets(st.integers(1, 8), max_size=2).map(sorted)
    somewhere = st.integers(0, int(wall.run)).map(float).map(Length)
    return msgspec.structs.replace(
        wall,
        openings=tuple(draw(openings(wall, n + 1)) for n in range(draw(st.integers(0, 3)))),
        moved=tuple(MovedStud(place, draw(somewhere)) for place in draw(places)),
        added=tuple(
            AddedStud(f"extra-{n}", draw(somewhere)) for n in range(draw(st.integers(0, 2)))
        ),
        left_out=tuple(draw(places)),
        layout=draw(_through_a_point(wall)),
        rules=draw(st.none() | _RULES),
        doubled=draw(_DOUBLED),
    )


_RULES = st.builds(
    WallRules,
    st.sampled_from(Near),
    st.sampled_from(Near),
    st.sampled_from([None, Length(40.0), Length(90.0)]),
    st.none(),
    *(st.booleans() for _ in range(3)),
)
_DOUBLED = st.one_of(
    st.just(()),
    st.builds(
        DoubledStud,
        st.sampled_from(["B/layout/1", "B/layout/2", "B/extra-0", "B/end/left"]),
        st.sampled_from(Side),
    ).map(lambda doubled: (doubled,)),
)


def _through_a_point(wall: Wall) -> st.SearchStrategy[Layout]:
    """The wall's layout as it is, or in line with a point of the wall or beyond it."""
    points = st.none() | st.integers(-500, int(wall.run) + 500).map(float).map(Length)
    return points.map(lambda at: msgspec.structs.replace(wall.layout, origin=at))


@st.composite
def housed(draw: st.DrawFn) -> tuple[Room, Wall]:
    """A room and a wall in it with everything that a person may state of it."""
    room = draw(rooms())
    return room, draw(stated_walls(room))


def whole(result: WallResult) -> bool:
    """Whether both faces stand under the same planes from end to end.

    Where a wall runs nearly along the ridge, or a ridge passes within the last corner of a wall,
    a plane ends between the faces; a plate there would be a wedge.
    """
    near, far = result.inputs.near, result.inputs.far
    if near is None or far is None or result.frame is None:
        return False
    planes = [
        [(round(s.along, 9), round(s.across, 9)) for s in line.segments]
        for line in (near, far, result.frame.near, result.frame.far)
    ]
    return planes[0] == planes[1] and planes[2] == planes[3]


def mirrored_room(room: Room) -> Room:
    """The room as seen in a mirror: left and right change places. It has no purlins."""
    replace = msgspec.structs.replace
    return replace(
        room,
        left=room.right,
        right=room.left,
        dormers=tuple(replace(d, side=d.side.other) for d in room.dormers),
        wings=tuple(replace(w, side=w.side.other) for w in room.wings),
    )


def mirrored_wall(wall: Wall, room: Room) -> Wall:
    """The wall in the mirrored room; face A stays face A, its left end becomes the right one."""
    run = wall.run

    def point(p: Point) -> Point:
        return Point(Length(room.width.mm - p.across.mm), p.along)

    def left(at: Length, width: float) -> Length:
        return Length(run - at.mm - width)

    stud = wall.stud.thickness.mm
    layout = wall.layout
    return msgspec.structs.replace(
        wall,
        left_end=point(wall.right_end),
        right_end=point(wall.left_end),
        layout=Layout(
            layout.spacing,
            layout.start.other,
            layout.hung_board,
            None if layout.origin is None else Length(run - layout.origin.mm),
        ),
        openings=tuple(
            msgspec.structs.replace(o, left=left(o.left, o.width.mm)) for o in wall.openings
        ),
        moved=tuple(msgspec.structs.replace(m, left=left(m.left, stud)) for m in wall.moved),
        added=tuple(msgspec.structs.replace(a, left=left(a.left, stud)) for a in wall.added),
        doubled=tuple(DoubledStud(_turned(d.stud), d.side.other) for d in wall.doubled),
    )


def _turned(key: str) -> str:
    """The key of a stud in the mirror: an end stud changes its end."""
    ends = {"B/end/left": "B/end/right", "B/end/right": "B/end/left"}
    return ends.get(key, key)
