"""The working of numbers, worked by hand: each kind of wall has its own terms, with their names."""

from __future__ import annotations

import msgspec
import pytest

from core.framing import printed
from core.job import Number, work_out, workings
from core.lengths import System, Tape
from core.model import (
    Dormer,
    DormerKind,
    Habits,
    Header,
    HeaderKind,
    HeadLie,
    Leaf,
    LineEdge,
    MeasuredStud,
    MeetingKind,
    PlateLie,
    Project,
    Room,
    Side,
    SiteRecord,
    StandsOn,
    Wall,
)
from core.wording import Wording
from walls import US, in_12, stations

Told = list[str]

# 22 ft across, 9 in 12 from 30 in. on both sides, a flat ceiling at 7 ft 6 in.
ROOM = US.room(264, (30, in_12(9)), (30, in_12(9)), flat=90)
RAKE = US.wall((36, 96), (228, 96), openings=(US.opening("door-1", 84, 34, 80),))


def told(
    number: Number,
    key: str | None = None,
    *,
    wall: Wall = RAKE,
    room: Room = ROOM,
    plate: str = "",
    line_edge: LineEdge = LineEdge.NEAR,
    others: tuple[Wall, ...] = (),
) -> list[Told]:
    """The workings of a number of wall B, as lines of name and number, without their titles."""
    tape = Tape.usual(System.INCH)
    habits = Habits(tape, line_edge)
    project = Project("test", System.INCH, room, (wall, *others), habits)
    results = work_out(project, SiteRecord())
    key = None if key is None else f"B/{key}"
    found = workings(results, "B", key, number, f"B/{plate}" if plate else "")
    shown = (printed(working, Wording("us", tape)) for working in found)
    return [
        [*(f"{line.name} {line.text}" for line in one.lines), f"= {one.result}"] for one in shown
    ]


def changed(**fields: object) -> Wall:
    return msgspec.structs.replace(RAKE, **fields)


def test_a_stud_under_the_slope() -> None:
    # Place 1: from 15 1/4 to 16 3/4 along the wall, 36 in. in. Over its right edge the roof is at
    # 30 + 52.75 x 0.75 = 69.5625; the plate takes 1.5 / 0.8 = 1.875 plumb.
    assert told(Number.LONG, "layout/1") == [
        [
            'roof above here 69 9/16"',
            'top plate on the slope, 1 1/2" ÷ cos 36.87° − 1 7/8"',
            'sole plate − 1 1/2"',
            '= 66 3/16"',
        ]
    ]
    assert told(Number.SHORT, "layout/1")[0][0] == 'roof above here 68 7/16"'


def test_what_is_above_is_named() -> None:
    assert told(Number.LONG, "layout/4") == [
        ['flat ceiling above here 90"', 'top plate − 1 1/2"', 'sole plate − 1 1/2"', '= 87"']
    ]


def test_two_plates() -> None:
    plate = msgspec.structs.replace(RAKE.top_plate, count=2)
    # 2 x 1.5 / 0.8 = 3.75.
    assert told(Number.LONG, "layout/1", wall=changed(top_plate=plate))[0][1] == (
        '2 top plates on the slope, 3" ÷ cos 36.87° − 3 3/4"'
    )


def test_a_slip_gap_and_a_fit() -> None:
    wall = changed(slip_gap=US.length(0.75), fit=US.length(0.125))
    assert told(Number.LONG, "layout/4", wall=wall) == [
        [
            'flat ceiling above here 90"',
            'gap left under the roof − 3/4"',
            'top plate − 1 1/2"',
            'fit: cut short by − 1/8"',
            'sole plate − 1 1/2"',
            '= 86 1/8"',
        ]
    ]


def test_a_measured_roof_tells_what_it_is_off() -> None:
    # The ceiling sags by 5/8 at 64, where stud 4 has its middle, and nowhere at 48 and 150.
    wall = changed(roof_points=stations(US, (48, 90), (64, 89.375), (150, 90)))
    found = told(Number.SHORT, "layout/4", wall=wall)[0]
    # At its right edge it is back by 0.75 x 0.625 / 86 = 0.0055: 89.3805, so 0.6195 off.
    assert found[:2] == [
        'flat ceiling above here, as stated 90"',
        'measured off that here − 5/8"',
    ]
    assert found[-1] == '= 86 3/8"'


def test_a_floor_out_of_level() -> None:
    # The floor falls 1 in. over 192: 47.25 / 192 = 0.246 at stud 3's left edge.
    wall = changed(floor_points=stations(US, (0, 0), (192, -1)))
    found = told(Number.SHORT, "layout/3", wall=wall)[0]
    assert 'floor here, off its level + 1/4"' in found
    assert 'sole plate on the sloping floor, 1 1/2" ÷ cos 0.298° − 1 1/2"' in found


def test_a_measured_stud_and_those_it_corrects() -> None:
    studs = (MeasuredStud("B/layout/4", US.length(86.5), is_test=True),)
    wall = changed(measured_studs=studs)
    assert told(Number.LONG, "layout/4", wall=wall)[0][2] == 'as this stud was measured − 1/2"'
    assert told(Number.LONG, "layout/3", wall=wall)[0][2] == 'as the test stud came out − 1/2"'


def test_around_an_opening() -> None:
    assert told(Number.LONG, "door-1/trimmer/left") == [
        ['head of the opening above the subfloor 80"', 'sole plate − 1 1/2"', '= 78 1/2"']
    ]
    assert told(Number.LONG, "door-1/header/1") == [
        ['width of the opening 34"', 'trimmers it bears on, 2 × 1 1/2" + 3"', '= 37"']
    ]
    # 90 - 1 1/2 - 81 1/2.
    assert told(Number.LONG, "door-1/above/6") == [
        [
            'flat ceiling above here 90"',
            'top plate − 1 1/2"',
            'head of the opening above the subfloor − 80"',
            'header over it − 1 1/2"',
            '= 7"',
        ]
    ]


def test_a_knee_wall_under_a_level_plate() -> None:
    lie = msgspec.structs.replace(RAKE.top_plate, lie=PlateLie.LEVEL)
    wide = US.timber((1.5, 5.5))
    knee = US.wall((36, 240), (36, 96), plate=(1.5, 5.5))
    wall = msgspec.structs.replace(knee, top_plate=msgspec.structs.replace(lie, timber=wide))
    # The roof over face A, 36 in. in, is at 57; the plate reaches 2 in. past the stud on the eave
    # side, where it is 2 x 0.75 lower.
    assert told(Number.LONG, "layout/2", wall=wall) == [
        [
            'roof above here 57"',
            'down to where the level plate clears the roof − 1 1/2"',
            'top plate − 1 1/2"',
            'sole plate − 1 1/2"',
            '= 52 1/2"',
        ]
    ]


def test_a_ripped_plate_is_as_wide_as_the_mitred_studs() -> None:
    lie = msgspec.structs.replace(RAKE.top_plate, lie=PlateLie.RIPPED)
    wall = msgspec.structs.replace(US.wall((36, 240), (36, 96)), top_plate=lie)
    # 3.5 / 0.8 = 4.375.
    assert told(Number.CUTS, "top/1/1", wall=wall)[-1] == [
        '3 1/2" ÷ cos 36.87° 4 3/8"',
        '= 4 3/8"',
    ]


def test_a_dormers_cheek_stands_on_a_rafter() -> None:
    dormer = Dormer(
        "dormer-1",
        DormerKind.SHED,
        Side.LEFT,
        start=US.length(60),
        width=US.length(120),
        face=US.length(24),
        front=US.length(24),
        height=US.length(84),
        pitch=in_12(3),
    )
    room = msgspec.structs.replace(US.room(264, (30, in_12(9)), (30, in_12(9))), dormers=(dormer,))
    cheek = msgspec.structs.replace(
        US.wall((24, 61), (110, 61)),
        stands_on=StandsOn.RAFTERS,
        top_plate=msgspec.structs.replace(RAKE.top_plate, count=0),
    )
    found = told(Number.LONG, "layout/1", wall=cheek, room=room)[0]
    # The long point is at the left edge, 15 1/4 from the front: dormer 84 + 15.25/4 = 87.8125;
    # rafter 30 + 39.25 x 0.75 = 59.4375, and 3.5 / 0.8 = 4.375 for its depth.
    assert found == [
        'roof of dormer 1 above here 87 13/16"',
        'underside of the rafter above the subfloor − 59 7/16"',
        'rafter on its slope, 3 1/2" ÷ cos 36.87° − 4 3/8"',
        '= 24"',
    ]


def test_marks_of_a_stud_of_the_layout() -> None:
    # 2 x 16 - 3/4 along the floor, over the cosine 0.8 along the plate.
    assert told(Number.MARK, "layout/2", plate="sole") == [
        ['2 × 16" on center 32"', 'half a stud − 3/4"', '= 31 1/4"']
    ]
    assert told(Number.MARK, "layout/2", plate="top/1/1")[-1] == [
        'on the floor 31 1/4" ÷ cos 36.87° 39 1/16"',
        '= 39 1/16"',
    ]


def test_marks_from_the_right_end_leave_the_length_of_the_wall_out() -> None:
    layout = msgspec.structs.replace(RAKE.layout, start=Side.RIGHT)
    wall = changed(layout=layout)
    assert told(Number.MARK, "layout/2", plate="sole", wall=wall) == [
        ['2 × 16" on center 32"', 'half a stud − 3/4"', '= 31 1/4"']
    ]


@pytest.mark.parametrize(
    ("wall", "key", "lines"),
    [
        (RAKE, "end/left", ['at the very end 0"', '= 0"']),
        (
            RAKE,
            "end/right",
            ['length of the wall 192"', 'thickness of a stud − 1 1/2"', '= 190 1/2"'],
        ),
        (
            RAKE,
            "door-1/king/left",
            [
                'left edge of the opening 84"',
                'trimmer − 1 1/2"',
                'king stud − 1 1/2"',
                '= 81"',
            ],
        ),
        (
            RAKE,
            "door-1/king/right",
            [
                'left edge of the opening 84"',
                'width of the opening + 34"',
                'trimmer + 1 1/2"',
                '= 119 1/2"',
            ],
        ),
        (
            US.wall((36, 96), (228, 96), hung=0.5),
            "layout/1",
            [
                'board that hangs already 1/2"',
                '1 × 16" on center + 16"',
                'half a stud − 3/4"',
                '= 15 3/4"',
            ],
        ),
        (
            US.wall((36, 96), (228, 96), moved=((2, 33),)),
            "layout/2",
            ['as stated 33"', '= 33"'],
        ),
        (
            US.wall((36, 96), (228, 96), added=(("stud-1", 50),)),
            "stud-1",
            ['as stated 50"', '= 50"'],
        ),
    ],
)
def test_where_studs_stand(wall: Wall, key: str, lines: Told) -> None:
    assert told(Number.MARK, key, wall=wall, plate="sole") == [lines]


def test_a_plate_on_the_slope() -> None:
    # The undersides meet where 57 - 1.875 + 0.75 x = 88.5: at 44.5; 44.5 / 0.8 = 55.625.
    assert told(Number.LONG, "top/1/1") == [
        ['on the floor 44 1/2" ÷ cos 36.87° 55 5/8"', '= 55 5/8"']
    ]


def test_the_angles_of_a_compound_cut() -> None:
    # 45 degrees askew under 9 in 12: 0.75 x 0.7071 = 0.5303 along and through the wall.
    # Mitre atan 0.5303 = 27.938; bevel atan(0.5303 x cos 27.938) = atan 0.4685 = 25.104.
    wall = US.wall((30, 20), (90, 80))
    mitre, bevel = told(Number.CUTS, "layout/2", wall=wall)
    assert mitre == [
        "the roof rises 9 in 12 0.7500",
        "its way up, off the line of the wall 45°",
        "through the wall, 0.7500 × sin 45° 0.5303",
        "miter: arctan 0.5303 27.938°",
        "= 27.9°",
    ]
    assert bevel[2:] == [
        "along the wall, 0.7500 × cos 45° 0.5303",
        "bevel: arctan (0.5303 × cos 27.938°) 25.104°",
        "= 25.1°",
    ]


def test_a_square_cut_has_no_angle_to_work() -> None:
    assert told(Number.CUTS, "layout/4") == []


def test_a_cut_past_the_stops_of_the_saw() -> None:
    # 14 in 12 is 49.399 degrees: past 45 of bevel, on edge it is a mitre of as much.
    room = US.room(264, (30, in_12(14)))
    found = told(Number.SAW, "layout/1", wall=US.wall((36, 96), (100, 96)), room=room)
    assert found == [["arctan (tan 49.399° ÷ cos 0°) 49.399°", "= 49.4°"]]


def test_a_rough_opening_is_leaf_and_allowances() -> None:
    leaf = Leaf(*map(US.length, (32, 78, 2, 2)))
    door = msgspec.structs.replace(RAKE.openings[0], leaf=leaf)
    assert told(Number.ROUGH_OPENING, "door-1", wall=changed(openings=(door,))) == [
        ['width of the leaf or unit 32"', 'added to its width + 2"', '= 34"'],
        ['height of the leaf or unit 78"', 'added to its height + 2"', '= 80"'],
    ]
    assert told(Number.ROUGH_OPENING, "door-1") == [
        ['as stated 34"', '= 34"'],
        ['head of the opening above the subfloor 80"', '= 80"'],
    ]


def test_where_an_opening_fits() -> None:
    # Head and header reach 81 1/2; the plate's underside is there at (81.5 - 55.125) / 0.75.
    first, last = told(Number.FITS, "door-1")
    assert first == [
        'here the plates are 81 1/2" up, head and header 35 11/64"',
        'trimmer + 1 1/2"',
        'rounding to the tape + 1/64"',
        '= 36 11/16"',
    ]
    assert last[1:3] == ['trimmer − 1 1/2"', 'width of the opening − 34"']


def test_where_an_opening_fits_between_an_end_and_another() -> None:
    low = tuple(US.opening(name, left, 30, 40) for name, left in (("door-1", 20), ("door-2", 100)))
    wall = changed(openings=low)
    # Past the end stud, king and trimmer: 4 1/2. Before the other: 100 - 6 - 30 = 64... from the
    # first of them, stated before it, the second has 20 + 30 + 6 = 56 as its least.
    found = told(Number.FITS, "door-2", wall=wall)
    assert found[0] == [
        'right edge of door 1 50"',
        'two trimmers and two kings + 6"',
        '= 56"',
    ]
    assert found[1] == [
        'length of the wall 192"',
        'end stud − 1 1/2"',
        'king stud − 1 1/2"',
        'trimmer − 1 1/2"',
        'width of the opening − 30"',
        '= 157 1/2"',
    ]


def test_a_box_beside_its_stud() -> None:
    wall = changed(boxes=(US.box("box-1", "B/layout/2", Side.RIGHT, 14),))
    assert told(Number.BOX_EDGES, "box-1", wall=wall)[1] == [
        'left edge of B3 31 1/4"',
        'thickness of a stud + 1 1/2"',
        'width of the box + 2"',
        '= 34 3/4"',
    ]
    assert told(Number.BOX_HEIGHTS, "box-1", wall=wall) == [
        ['stated height to its center 14"', 'half its height − 2"', '= 12"'],
        [
            'stated height to its center 14"',
            'half its height − 2"',
            'height of the box + 4"',
            '= 16"',
        ],
    ]


def test_the_wall_and_its_studs() -> None:
    assert told(Number.WALL_LENGTH) == [
        ['far end, in the plan 228"', 'near end, in the plan − 36"', '= 192"']
    ]
    assert told(Number.STUDS) == [["at the ends 2", "of the layout + 9", "= 11"]]
    askew = US.wall((30, 20), (90, 100))
    assert told(Number.WALL_LENGTH, wall=askew) == [['√ (60"² + 80"²) 100"', '= 100"']]


def test_studs_where_another_wall_ends_against_this_one() -> None:
    met = msgspec.structs.replace(US.wall((130, 96), (130, 20)), letter="C")
    wall = msgspec.structs.replace(US.wall((36, 96), (228, 96)), meeting=MeetingKind.TWO_STUDS)
    assert "where walls meet it + 2" in told(Number.STUDS, wall=wall, others=(met,))[0]


def test_plies_with_a_spacer_between_them() -> None:
    header = Header(HeaderKind.ON_EDGE, US.timber((1.5, 5.5)), 2, US.length(0.5))
    door = msgspec.structs.replace(RAKE.openings[0], header=header, head=US.length(76))
    assert told(Number.BUILT_UP, "door-1/header/1", wall=changed(openings=(door,))) == [
        ['2 plies of 1 1/2" 3"', 'spacers 1/2" thick: 1 + 1/2"', '= 3 1/2"']
    ]


def test_nothing_is_told_of_what_is_not_there() -> None:
    assert told(Number.LONG, "layout/99") == []
    assert told(Number.ROUGH_OPENING, "layout/1") == []
    nowhere = US.wall((50, 50), (50, 50))
    assert told(Number.STUDS, wall=nowhere) == []
    assert told(Number.LONG, "layout/1", wall=nowhere) == []


def test_a_raked_head() -> None:
    # From 10 to 22 along the wall, its head 50 high at the left. The right trimmer's outer edge is
    # at 23 1/2: 13 1/2 x 0.75 = 10 1/8 up. The header takes 1.5 / 0.8 = 1 7/8 plumb.
    door = US.opening("door-1", 10, 12, 50)
    raked = msgspec.structs.replace(door, head_lie=HeadLie.RAKED)
    wall = changed(openings=(raked,))
    assert told(Number.LONG, "door-1/trimmer/right", wall=wall) == [
        [
            'head of the opening above the subfloor 50"',
            'raked head at 36.87°, from its lower side to here + 10 1/8"',
            'sole plate − 1 1/2"',
            '= 58 5/8"',
        ]
    ]
    # The cripple of place 1 stands from 15 1/4, and both edges are alike; 5 1/4 x 0.75 = 3 15/16.
    assert told(Number.LONG, "door-1/above/1", wall=wall) == [
        [
            'roof above here 68 7/16"',
            'top plate on the slope, 1 1/2" ÷ cos 36.87° − 1 7/8"',
            'head of the opening above the subfloor − 50"',
            'raked head at 36.87°, from its lower side to here − 3 15/16"',
            'header over it − 1 7/8"',
            '= 10 3/4"',
        ]
    ]


def test_the_mark_of_a_cripple_on_a_raked_header() -> None:
    # The distance on the floor from below the header's low end, over the cosine 0.8.
    door = msgspec.structs.replace(US.opening("door-1", 48, 32, 80), head_lie=HeadLie.RAKED)
    wall = US.wall((12, 100), (132, 100), openings=(door,))
    room = US.room(240, (60, in_12(9)))
    level, along = told(
        Number.MARK, "door-1/above/4", wall=wall, room=room, plate="door-1/header/1"
    )
    assert level[:2] == ['4 × 16" on center 64"', 'half a stud − 3/4"']
    assert along[0].startswith("on the floor ")
    assert "÷ cos 36.87°" in along[0]


def test_the_weight_of_a_wall_role_by_role() -> None:
    # At 35 lb/ft3 a foot of 2x4 is 5.25 / 144 x 35 = 1.276 lb: the sole plate, 16 ft, 20.4.
    (lines,) = told(Number.WEIGHT)
    assert "+ 20.4" in next(line for line in lines if line.startswith("sole plate"))
    whole = sum(float(line.split()[-1]) * (-1 if "−" in line else 1) for line in lines[:-1])
    assert f"= {whole:.0f} lb" == lines[-1]
