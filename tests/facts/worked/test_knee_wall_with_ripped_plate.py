"""A knee wall at 9 in 12 with its top plate ripped plumb, every number worked by hand; inches.

The roof rises from 12 at the left eave, 12 + 0.75 u. Face A is toward the room, at u = 48, where R
is 48; the timber goes 3 1/2 back toward the eave, to u = 44.5, where R is 45.375. The wall is 100
long, along the room. Cosine of the slope 0.8, sine 0.6, angle 36.870.
    A plate stands 1.5 / 0.8 = 1.875 high.
    Studs on face A: 48 - 1.875 - 1.5 = 44.625; on the far face 45.375 - 3.375 = 42.
    Ripped plumb, the plate's faces are 3.5 / 0.8 = 4.375 wide. Its edges slant by 1.5 x 0.75 =
    1.125, so it is ripped out of stock 5.5 wide: just a 2x6.
Our own arithmetic.
"""

from __future__ import annotations

import math

import msgspec
import pytest

import reading
from core.framing import PlateSection
from core.job import WallResult
from core.model import PlateLie
from core.wording import Mm
from walls import US, Pair, in_12, result

# Centres at 16 n; the end stud at 100 - 1.5. The mark is at the same place on both plates.
PLACES = {
    "end/left": 0,
    "layout/1": 15.25,
    "layout/2": 31.25,
    "layout/3": 47.25,
    "layout/4": 63.25,
    "layout/5": 79.25,
    "layout/6": 95.25,
    "end/right": 98.5,
}
each_stud = pytest.mark.parametrize("cause", PLACES)


def wall(lie: PlateLie | None = PlateLie.RIPPED, plate: Pair = (1.5, 5.5)) -> WallResult:
    slope = (12, in_12(9))
    made = US.wall((48, 100), (48, 200), plate=plate)
    lying = msgspec.structs.replace(made.top_plate, lie=lie)
    return result(US.room(264, slope, slope), msgspec.structs.replace(made, top_plate=lying))


def section(found: WallResult) -> PlateSection:
    assert found.frame is not None
    (made,) = found.frame.sections
    return made


@each_stud
def test_places_and_four_edges(cause: str) -> None:
    found = wall()
    assert [US.of(reading.stick(found, cause).left)] == reading.written(PLACES[cause])
    assert reading.edges(US, found, cause) == reading.written(44.625, 44.625, 42, 42)
    assert reading.points(US, found, cause) == reading.written(44.625, 42, 44.625)


@each_stud
def test_the_saw_swings_and_does_not_tilt(cause: str) -> None:
    # The roof falls away from face A by 0.75 in 1: arctan 0.75 = 36.870, negative.
    stud = reading.stick(wall(), cause)
    assert reading.saw(stud.last_cut) == [(0.0, -36.87)]
    assert stud.last_cut[0].face_up == "any"
    assert reading.saw(stud.first_cut) == [(0.0, 0.0)]


@each_stud
def test_marks(cause: str) -> None:
    found = wall()
    marks = (reading.on_sole(found, cause), reading.on_top(found, cause))
    assert [US.of(m.along) for m in marks] == reading.written(*[PLACES[cause]] * 2)


def test_the_ripped_plate() -> None:
    # Level along the wall, square at both ends: 100 on every edge.
    found = wall()
    plate = reading.stick(found, "top/1/1")
    assert reading.edges(US, found, "top/1/1") == reading.written(*[100] * 4)
    assert reading.saw((*plate.first_cut, *plate.last_cut)) == [(0.0, 0.0)] * 2
    assert plate.rip is not None
    assert [US.of(plate.rip.width)] == reading.written(4.375)
    assert [math.degrees(plate.rip.bevel)] == reading.written(-36.87, each=0.01)
    # Its top is against the roof, 48 on face A and 45.375 on the far one; underside 1.875 lower.
    heights = [[US.of(y) for _, y in face] for face in (plate.near, plate.far)]
    assert heights[0] == reading.written(46.125, 46.125, 48, 48)
    assert heights[1] == reading.written(43.5, 43.5, 45.375, 45.375)


def test_its_section() -> None:
    # Corners from face A, from the roof over it: underside near and far, top far and near. Far they
    # are 3.5 x 0.75 = 2.625 lower. Nothing stands proud of the studs.
    made = section(wall())
    (outline,) = made.layers
    corners = [US.of(n) for corner in outline for n in corner]
    assert corners == reading.written(0, -1.875, 3.5, -4.5, 3.5, -2.625, 0, 0)
    edges = (made.near.underside, made.near.top, made.far.underside, made.far.top)
    assert [US.of(x) for x in edges] == reading.written(0, 0, 0, 0)
    assert [US.of(made.need), US.of(made.have)] == reading.written(5.5, 5.5)


def test_stock_too_narrow_is_told() -> None:
    # A 2x4 is 3.5 wide: 2 short of 5.5.
    found = wall(plate=(1.5, 3.5))
    assert [c.message.id for c in found.cautions] == ["plate.narrow-rip"]
    told = dict(found.cautions[0].message.values)
    widths = [told[name] for name in ("need", "have")]
    assert [US.of(w.mm) for w in widths if isinstance(w, Mm)] == reading.written(5.5, 3.5)


def test_with_square_edges_it_stands_proud_instead() -> None:
    # The corner under the uphill edge is flush with face A. Square to the slope over it the top's
    # corner lies 1.5 x 0.6 = 0.9 back from the face. A 2x6 reaches 5.5 x 0.8 = 4.4 back: 0.9 past
    # the studs at its underside, 1.8 at its top. It needs 4.375 only, and studs are as before.
    found = wall(lie=None)
    made = section(found)
    edges = (made.near.underside, made.near.top, made.far.underside, made.far.top)
    assert [US.of(x) for x in edges] == reading.written(0, -0.9, 0.9, 1.8)
    assert [US.of(made.need)] == reading.written(4.375)
    assert reading.stick(found, "top/1/1").rip is None
    assert reading.edges(US, found, "layout/1") == reading.written(44.625, 44.625, 42, 42)


def test_level_the_studs_are_square() -> None:
    # A level 2x4 clears the roof with its eave-side edge, 45.375: studs 45.375 - 1.5 - 1.5.
    found = wall(PlateLie.LEVEL, (1.5, 3.5))
    assert reading.edges(US, found, "layout/1") == reading.written(*[42.375] * 4)
    assert reading.saw(reading.stick(found, "layout/1").last_cut) == [(0.0, 0.0)]


def test_nothing_else_is_in_it() -> None:
    found = wall()
    assert reading.uprights(found) == list(PLACES)
    assert reading.lying(found) == {"sole", "top/1/1"}
    assert found.cautions == ()
