"""Worked examples of rake and gable walls from published texts, each with its source."""

from __future__ import annotations

from itertools import pairwise

import pytest

from core.framing import Role
from core.lengths import Length, Pitch, System, Tape
from core.model import LineEdge, Side
from core.wording import Mm
from walls import UK, US, Shop, in_12, result

TAPE = Tape.usual(System.INCH)
FEET = Tape(System.INCH, Length.of_inches(1 / 16), feet=True)


def studs(shop: Shop, pitch: Pitch, spacing: float) -> list[tuple[float, float, float]]:
    """Long point, short point and mark on the sloping plate of a rake wall's layout studs, in the
    shop's unit."""
    room = shop.room(spacing * 10, left=(spacing, pitch))
    wall = result(room, shop.wall((0, 50), (spacing * 5.5, 50), spacing=spacing))
    assert wall.frame is not None
    marks = {m.member: m.along for m in wall.marks if m.plate == "B/top/1/1"}
    return [
        (shop.of(m.long_point), shop.of(m.short_point), shop.of(marks[m.key]))
        for m in wall.frame.members
        if m.key.startswith("B/layout/")
    ]


def common_difference(shop: Shop, pitch: Pitch, spacing: float) -> float:
    """The one difference between neighbouring studs, in the shop's unit."""
    long_points = [stud[0] for stud in studs(shop, pitch, spacing)]
    found = {round(b - a, 6) for a, b in pairwise(long_points)}
    assert len(found) == 1
    return found.pop()


@pytest.mark.parametrize(
    ("rise", "spacing", "difference", "source"),
    [
        (6, 24, 12.0, "NAVEDTRA 14044 ch. 2, fig. 2-29: 2 x 6 = 12 in."),
        (6, 16, 8.0, "NAVEDTRA 14044 ch. 2, set of the square; the answer is our own arithmetic"),
        (7, 16, 9.33, "jhcarpentry.wordpress.com, 2014/10/27: 9.33 = 9 5/16"),
        (7, 24, 14.0, "finehomebuilding.com forum, rake wall stud lengths"),
        (16, 16, 21.3, "learn8.cc, exam item; the text has one decimal"),
        (6, 16, 8.0, "homebuildingandrepairs.com, gable stud formula: 0.5 x 48 = 24, /3 = 8"),
        (4, 16, 5.33, "homebuildingandrepairs.com, gable stud formula"),
    ],
)
def test_common_difference(rise: float, spacing: float, difference: float, source: str) -> None:
    decimals = len(f"{difference}".split(".")[1])
    assert round(common_difference(US, in_12(rise), spacing), decimals) == difference, source


def test_seven_in_twelve_at_sixteen_is_a_hair_over_nine_and_five_sixteenths() -> None:
    # finehomebuilding.com forum, rake wall stud lengths: "a hair over 9 5/16".
    difference = common_difference(US, in_12(7), 16)
    assert 9.3125 < difference < 9.3125 + 1 / 32
    assert TAPE.text(difference * 25.4) == '9 5/16"'


def test_metric_gable_studs_differ_by_360() -> None:
    # basiccarpentrytechniques.com, Framing Gable Roofs 12: 600 mm o.c., rise 150 in a run of 250.
    assert common_difference(UK, Pitch(150 / 250, "150 in 250"), 600) == pytest.approx(360)


@pytest.mark.parametrize(
    ("rise", "spacing", "printed"),
    [
        (10, 16, 20.83),  # Audel, Carpenters and Builders Guide, vol. 3, p. 975
        (10, 20, 26.0),  # the same; exact is 26.03, our own arithmetic
        (7, 24, 27.75),  # printed rafter-square guide, yumpu.com 41214027, p. 22: 2' 3 3/4"
    ],
)
def test_marks_along_the_slope(rise: float, spacing: float, printed: float) -> None:
    """The texts round to what they find handy; a sixteenth is as near as they go."""
    places = [stud[2] for stud in studs(US, in_12(rise), spacing)]
    assert [b - a for a, b in pairwise(places)] == pytest.approx([printed] * 4, abs=1 / 16)


def test_tall_rake_wall_low_point_and_peak() -> None:
    # "Fast layout for tall rake walls", jlconline.com: a room 16 ft wide, 8 in 12, the wall line
    # inside the 2x4 side walls, so half the run is 96 - 3 1/2 = 92 1/2; low point 8' 9 3/16", peak
    # 13' 10 7/8". Our own check: 105.1875 + 92.5 x 8 / 12 = 166.854.
    slope = (105.1875, in_12(8))
    wall = result(US.room(185, slope, slope), US.wall((0, 50), (185, 50)))
    assert wall.inputs.near is not None
    low, peak, _ = wall.inputs.near.points()
    assert (FEET.text(low[1]), FEET.text(peak[1])) == ("8'-9 3/16\"", "13'-10 7/8\"")
    assert peak[0] == pytest.approx(92.5 * 25.4)


def test_common_rafter_over_half_a_span() -> None:
    # NAVEDTRA 14044 p. 64: 7 in 12, span 16 ft, 8 x 13.89 = 111.12, that is 9' 3 1/8". A plate
    # under the whole of one slope is as long as the rafter.
    slope = (60, in_12(7))
    wall = result(US.room(192, slope, slope), US.wall((0, 50), (192, 50)))
    assert wall.frame is not None
    plates = [m for m in wall.frame.members if m.role is Role.TOP_PLATE]
    assert [FEET.text(p.edges[1]) for p in plates] == ["9'-3 1/8\""] * 2


def test_long_point_rule() -> None:
    # prod.protradecraft.com, rake wall layout: lay the studs out to the uphill (long-point) side;
    # the line is the long point, the X goes on the short side.
    slope = (40, in_12(9))
    wall = result(US.room(200, slope, slope), US.wall((0, 50), (200, 50)), LineEdge.UPHILL)
    assert wall.frame is not None
    for mark in wall.marks:
        stud = wall.frame.member(mark.member)
        assert stud is not None
        left, right = stud.edges[:2]
        uphill = Side.RIGHT if right > left else Side.LEFT
        assert (mark.edge, mark.x_side) == (uphill, uphill.other)
        assert max(left, right) == stud.long_point


@pytest.mark.parametrize(
    ("rise", "sixteenths"),
    [(6, 12), (8, 16), (12, 24)],  # 3/4, 1 and 1 1/2 in.; our own arithmetic: 1.5 x rise / 12
)
def test_one_stud_is_longer_on_its_uphill_side(rise: float, sixteenths: int) -> None:
    for long_point, short_point, _ in studs(US, in_12(rise), 16):
        assert long_point - short_point == pytest.approx(sixteenths / 16)


@pytest.mark.parametrize(
    ("plate", "cautioned"),
    [((1.5, 3.5), True), ((1.5, 5.5), False)],
)
def test_knee_wall_plate_is_a_two_by_six(plate: tuple[float, float], cautioned: bool) -> None:
    # homeinstitute.com, building attic knee walls: the bevelled top plate is a 2x6 on 2x4 studs,
    # "for the added stud depth created by the angled cut". Our own arithmetic: at 9 in 12 the cut
    # is 3 1/2 x 1.25 = 4 3/8 in. deep.
    room = US.room(264, (12, in_12(9)), (12, in_12(9)))
    wall = result(room, US.wall((48, 0), (48, 288), plate=plate))
    ids = [caution.message.id for caution in wall.cautions]
    assert ids == (["plate.narrow"] if cautioned else [])
    for caution in wall.cautions:
        need = dict(caution.message.values)["need"]
        assert isinstance(need, Mm)
        assert TAPE.text(need.mm) == '4 3/8"'
