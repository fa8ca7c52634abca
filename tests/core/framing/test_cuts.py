"""End cuts as the saw is set: bevels, mitres, and both."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.framing.cuts import Direction, plate_facet, stud_facet, top_facets
from core.framing.member import Facet
from core.roof import Segment

PLUMB: Direction = (0.0, 1.0, 0.0)
THROUGH: Direction = (0.0, 0.0, 1.0)


def under(along: float, across: float) -> Segment:
    return Segment(0.0, 100.0, 50.0, along, across)


def degrees(facet: Facet) -> tuple[float, float]:
    return round(math.degrees(facet.bevel), 2) + 0.0, round(math.degrees(facet.mitre), 2) + 0.0


@pytest.mark.parametrize(
    ("along", "across", "bevel", "mitre", "face_up"),
    [
        pytest.param(0.75, 0, 36.87, 0, "right", id="up the slope"),
        pytest.param(-0.75, 0, -36.87, 0, "left", id="down the slope"),
        pytest.param(0, -0.75, 0, -36.87, "any", id="knee wall"),
        pytest.param(0, 0.75, 0, 36.87, "any", id="knee wall from the eave side"),
        pytest.param(0, 0, 0, 0, "any", id="level"),
        pytest.param(1.5, 0, 56.31, 0, "right", id="past 45 degrees"),
        # 9 in 12, the wall turned so that 3-4-5 splits the slope into 0.45 along and 0.6 across:
        # mitre = atan 0.6 = 30.96, bevel = atan(0.45 x 0.85749) = 21.10.
        pytest.param(0.45, -0.6, 21.10, -30.96, "right", id="compound"),
        # 12 in 12 at 45 degrees in plan, 0.70711 both ways: mitre = atan 0.70711 = 35.26,
        # bevel = atan(0.70711 x 0.81650) = atan 0.57735 = 30.
        pytest.param(0.5**0.5, 0.5**0.5, 30.0, 35.26, "right", id="as a hip"),
    ],
)
def test_stud(along: float, across: float, bevel: float, mitre: float, face_up: str) -> None:
    facet = stud_facet(under(along, across))
    assert degrees(facet) == (bevel, mitre)
    assert facet.face_up == face_up


@given(st.floats(0, 1.4), st.floats(0, 2 * math.pi))
def test_stud_formula_for_a_plan_angle(slope: float, turn: float) -> None:
    """A roof at angle t, a wall turned by a from the upslope direction: the formula of the trade.

    mitre = atan(tan t sin a), then bevel = atan(tan t cos a cos mitre) with that mitre set.
    """
    tangent = math.tan(slope)
    facet = stud_facet(under(tangent * math.cos(turn), tangent * math.sin(turn)))
    mitre = math.atan(tangent * math.sin(turn))
    assert facet.mitre == pytest.approx(mitre)
    assert facet.bevel == pytest.approx(math.atan(tangent * math.cos(turn) * math.cos(mitre)))


@pytest.mark.parametrize(
    ("along", "across", "up", "back", "bevel", "mitre", "face_up"),
    [
        pytest.param(0.75, 0, PLUMB, THROUGH, 36.87, 0, "top", id="plumb cut"),
        pytest.param(-0.75, 0, PLUMB, THROUGH, -36.87, 0, "underside", id="plumb cut, falling"),
        pytest.param(0, 0, PLUMB, THROUGH, 0, 0, "top", id="square"),
        pytest.param(0, -0.75, PLUMB, THROUGH, 0, 0, "top", id="knee wall plate"),
        pytest.param(0.75, 0, (-0.6, 0.8, 0.0), THROUGH, 0, 0, "top", id="square to the slope"),
        # 9 in 12 meets level: each plate is cut at half of 36.87, the joint leans left by it.
        pytest.param(0.75, 0, (-1.0, 3.0, 0.0), THROUGH, 18.43, 0, "top", id="up to the break"),
        pytest.param(0, 0, (-1.0, 3.0, 0.0), THROUGH, -18.43, 0, "underside", id="on from it"),
        # Across the roof by 3-4-5: bevel = asin(0.45 x 0.8) = 21.10; the broad face is turned by
        # atan(0.45 x 0.6 / 1.25) = 12.19.
        pytest.param(0.45, -0.6, PLUMB, THROUGH, 21.10, -12.19, "top", id="compound plumb cut"),
        # Under the ridge of the same: the roof's own plumb cut is 36.87; along the slope the plate
        # runs at 43.15 degrees to the ridge (cosine 0.8 / 1.09659), so the saw swings 46.85.
        pytest.param(0.45, -0.6, PLUMB, (4.0, 0.0, 3.0), 36.87, 46.85, "top", id="under a ridge"),
        pytest.param(0, 0, PLUMB, (1.0, 0.0, 1.0), 0, 45, "top", id="level, 45 in plan"),
    ],
)
def test_plate(
    along: float,
    across: float,
    up: Direction,
    back: Direction,
    bevel: float,
    mitre: float,
    face_up: str,
) -> None:
    facet = plate_facet(under(along, across), up, back)
    assert degrees(facet) == (bevel, mitre)
    if bevel:
        assert facet.face_up == face_up


@pytest.mark.parametrize(
    ("bevel", "mitre", "square"),
    [(0, 0, True), (0.49, 0, True), (0, -0.49, True), (0.51, 0, False), (0, 0.51, False)],
)
def test_sawn_square_within_half_a_degree(bevel: float, mitre: float, square: bool) -> None:
    assert Facet(math.radians(bevel), math.radians(mitre), "any").is_square is square


def test_a_break_aslant_over_a_stud_makes_a_facet_that_one_face_alone_shows() -> None:
    # A stud from x = 0 to 38. Over face A the falling plane alone, over the far face the ceiling to
    # x = 20 and then that plane, its slopes a floating point's breadth off.
    falling = (-0.75, 0.5)
    near = (Segment(0.0, 38.0, 2400.0, *falling),)
    far = (
        Segment(0.0, 20.0, 2400.0, 0.0, 0.0),
        Segment(20.0, 38.0, 2415.0, -0.75 + 1e-13, 0.5),
    )
    wanted = [(0.0, 0.0), degrees(stud_facet(under(*falling)))]
    assert [degrees(f) for f in top_facets((near, far))] == wanted
    assert [degrees(f) for f in top_facets((far, near))] == wanted
    assert [degrees(f) for f in top_facets((near, near))] == wanted[1:]


def test_planes_that_each_cover_a_whole_face_go_from_left_to_right_too() -> None:
    # The ridge runs aslant from one side of the stud to the other, all of it behind face A.
    rising, falling = (Segment(0.0, 38.0, 2400.0, along, 0.3) for along in (0.75, -0.75))
    wanted = [degrees(stud_facet(s)) for s in (rising, falling)]
    for faces in (((rising,), (falling,)), ((falling,), (rising,))):
        assert [degrees(f) for f in top_facets(faces)] == wanted
