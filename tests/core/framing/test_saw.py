"""Cuts against the stops of a saw: how the piece is held, and what the saw is set to; degrees."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.framing import Facet, Rip, Way, past_stops, rip_setting, saw_setting
from core.model import USUAL_SAW, Saw
from walls import US, at_degrees, frame_of, in_12, member

Pair = tuple[float, float]


def facet(bevel: float, mitre: float) -> Facet:
    return Facet(math.radians(bevel), math.radians(mitre), "any")


def saw(bevel: float, mitre: float) -> Saw:
    return Saw(at_degrees(bevel), at_degrees(mitre))


def test_the_usual_saw() -> None:
    assert (USUAL_SAW.bevel.degrees, USUAL_SAW.mitre.degrees) == pytest.approx((45, 50))


@pytest.mark.parametrize(
    ("cut", "way", "setting"),
    [
        ((0, 0), Way.FLAT, (0, 0)),
        ((-36.87, 0), Way.FLAT, (36.87, 0)),
        ((45, -50), Way.FLAT, (45, 50)),
        # A bevel is a swing on edge: 48 is past the tilt and within the swing.
        ((48, 0), Way.ON_EDGE, (0, 48)),
        # A mitre past the stop: 90 - 53.13 from a block square to the fence.
        ((0, 53.13), Way.SQUARE, (0, 36.87)),
        ((20, 53.13), Way.SQUARE, (20, 36.87)),
        # 16 in 12 up the slope: on edge the swing of 53.13 is past its stop too, 36.87 is left.
        ((53.13, 0), Way.ON_EDGE_SQUARE, (0, 36.87)),
        # Compound, on edge: swing atan(tan 50 / cos 20) = atan(1.19175 / 0.93969) = 51.744, which
        # leaves 38.256; tilt asin(cos 50 x sin 20) = asin(0.64279 x 0.34202) = 12.700.
        ((50, 20), Way.ON_EDGE_SQUARE, (12.700, 38.256)),
    ],
)
def test_ways_on_the_usual_saw(cut: Pair, way: Way, setting: Pair) -> None:
    found = saw_setting(facet(*cut), USUAL_SAW)
    assert found.way is way
    angles = (math.degrees(found.bevel), math.degrees(found.mitre))
    assert angles == pytest.approx(setting, abs=1e-3)


def test_what_no_way_does_is_cut_by_hand() -> None:
    # A saw that swings to 40 and does not tilt: 45 and its complement are both past 40.
    found = saw_setting(facet(0, -45), saw(0, 40))
    assert found.way is Way.BY_HAND
    assert math.degrees(found.mitre) == pytest.approx(45)


@given(
    st.floats(-75, 75),
    st.floats(-75, 75),
    st.integers(0, 60).map(float),
    st.integers(0, 60).map(float),
)
def test_every_way_cuts_the_same_plane(
    bevel: float, mitre: float, tilts: float, swings: float
) -> None:
    """By plain geometry: the blade's plane on the table, seen from the piece as it is held.

    On the table x runs along the fence, y away from it, z up. The blade stands across the fence;
    it swings about z, then tilts about its own line on the table.
    """
    wanted = facet(bevel, mitre)
    found = saw_setting(wanted, saw(tilts, swings))
    b, m = found.bevel, found.mitre
    x, y, z = (math.cos(b) * math.cos(m), math.cos(b) * math.sin(m), math.sin(b))
    # Which way the piece's length, width and thickness lie on the table.
    held = {
        Way.FLAT: (x, y, z),
        Way.ON_EDGE: (x, z, y),
        Way.SQUARE: (y, x, z),
        Way.ON_EDGE_SQUARE: (y, z, x),
        Way.BY_HAND: (x, y, z),
    }[found.way]
    bevel, mitre = abs(wanted.bevel), abs(wanted.mitre)
    plane = (
        math.cos(bevel) * math.cos(mitre),
        math.cos(bevel) * math.sin(mitre),
        math.sin(bevel),
    )
    assert held == pytest.approx(plane, abs=1e-9)
    if found.way is not Way.BY_HAND:
        assert math.degrees(b) <= tilts + 0.01
        assert math.degrees(m) <= swings + 0.01


@pytest.mark.parametrize(
    ("bevel", "tilts", "way", "tilt"),
    [
        (-36.87, 45, Way.FLAT, 36.87),
        (45, 45, Way.FLAT, 45),
        # 90 - 53.13 with the plate on edge.
        (-53.13, 45, Way.ON_EDGE, 36.87),
        (45, 40, Way.BY_HAND, 45),
    ],
)
def test_ripping(bevel: float, tilts: float, way: Way, tilt: float) -> None:
    found = rip_setting(Rip(100.0, math.radians(bevel)), saw(tilts, 50))
    assert (found.way, round(math.degrees(found.bevel), 2)) == (way, tilt)


def test_a_member_tells_each_cut_past_the_stops_once() -> None:
    # A wall up 16 in 12: the stud's top is past 45, its foot is square; both ends of the plate are.
    frame = frame_of(US.room(264, (12, in_12(16)), (12, in_12(16))), US.wall((12, 9), (72, 9)))
    (found,) = past_stops(member(frame, "layout/1"), USUAL_SAW)
    assert math.degrees(found[0].bevel) == pytest.approx(53.130, abs=1e-3)
    assert len(past_stops(member(frame, "top/1/1"), USUAL_SAW)) == 1
    assert past_stops(member(frame, "sole"), USUAL_SAW) == ()
    assert past_stops(member(frame, "layout/1"), saw(55, 50)) == ()
