"""Where openings fit: under slopes and ceilings, between end studs, clear of each other."""

from __future__ import annotations

import pytest

from core.framing import Fit, header_rise
from core.model import Header, HeaderKind, Opening, Room
from walls import US, Pair, frame_of, in_12

SLOPE = (12.0, in_12(9))
GABLE = US.room(264, SLOPE, SLOPE)
BEAM = US.room(264, SLOPE, SLOPE, beam=(3.5, 84))
TIES = US.room(264, SLOPE, SLOPE, flat=84)
FLAT = US.room(264, left=(96, in_12(0)))
SHED = US.room(264, left=(48, in_12(3)))


def fit_of(room: Room, ends: tuple[Pair, Pair], *openings: Opening) -> Fit:
    """Where the last of the openings fits."""
    return frame_of(room, US.wall(*ends, openings=openings)).openings[-1].fit


def ranges(fit: Fit) -> list[Pair]:
    return [(round(US.of(a), 4), round(US.of(b), 4)) for a, b in fit.ranges]


ACROSS = ((48.0, 9.0), (216.0, 9.0))
LEVEL = ((0.0, 9.0), (120.0, 9.0))


@pytest.mark.parametrize(
    ("kind", "timber", "plies", "rise"),
    [
        (HeaderKind.FLAT, (1.5, 3.5), 1, 1.5),
        (HeaderKind.FLAT, (1.5, 3.5), 2, 3.0),
        (HeaderKind.ON_EDGE, (1.5, 5.5), 2, 5.5),
        (HeaderKind.NONE, (1.5, 3.5), 1, 0.0),
    ],
)
def test_header_rise(kind: HeaderKind, timber: Pair, plies: int, rise: float) -> None:
    assert US.of(header_rise(US.header(kind, timber, plies))) == pytest.approx(rise)


@pytest.mark.parametrize(
    ("room", "ends", "width", "head", "expected"),
    [
        # Level at 96, plate's underside 94.5. Three studs, 4.5, at each end: 120 - 4.5 - 32.
        pytest.param(FLAT, LEVEL, 32, 80, [(4.5, 83.5)], id="level"),
        pytest.param(FLAT, LEVEL, 32, 93, [(4.5, 83.5)], id="the header just passes"),
        pytest.param(FLAT, LEVEL, 32, 93.1, [], id="too tall anywhere"),
        pytest.param(FLAT, LEVEL, 111, 80, [(4.5, 4.5)], id="one place"),
        pytest.param(FLAT, LEVEL, 111.1, 80, [], id="no room for kings"),
        pytest.param(FLAT, LEVEL, 300, 80, [], id="wider than the wall"),
        # R >= 84 + 1.875 at the header's ends, 1.5 outside: 37.875 / 0.75 = 50.5.
        pytest.param(GABLE, ACROSS, 34, 82.5, [(52, 82)], id="gable"),
        pytest.param(GABLE, ACROSS, 10, 82.5, [(52, 106)], id="gable, narrower"),
        pytest.param(GABLE, ACROSS, 34, 105, [], id="taller than the ridge allows"),
        # The ties' plate has its underside at 82.5: a head of 81 just passes under it, from where
        # the sloping plate is as high, x = 48.5.
        pytest.param(TIES, ACROSS, 34, 81, [(50, 84)], id="under ties"),
        pytest.param(TIES, ACROSS, 34, 81.1, [], id="too tall for the ties"),
        # The beam's underside at 84, plate 82.5, from 82.25 to 85.75: only beside it.
        pytest.param(
            BEAM, ACROSS, 20, 82.5, [(52, 60.75), (87.25, 96)], id="either side of a beam"
        ),
        pytest.param(BEAM, ACROSS, 34, 82.5, [], id="too wide beside the beam"),
        pytest.param(BEAM, ACROSS, 34, 81, [(50, 84)], id="under the beam too"),
        # 3 in 12 from 48: R - 1.5462 >= 81.5 at x = (81.5 + 1.5462 - 48) x 4 = 140.1846.
        pytest.param(SHED, ((0, 9), (240, 9)), 30, 80, [(141.6847, 205.5)], id="shed"),
        # A wall seen from the other face: the same places from its other end.
        pytest.param(SHED, ((240, 9), (0, 9)), 30, 80, [(4.5, 68.3153)], id="shed, other face"),
        # A knee wall: over the far face the plate is 2.625 lower, 43.5.
        pytest.param(GABLE, ((48, 0), (48, 100)), 30, 42, [(4.5, 65.5)], id="knee wall"),
        pytest.param(GABLE, ((48, 0), (48, 100)), 30, 42.1, [], id="too tall at the far face"),
    ],
)
def test_ranges(
    room: Room, ends: tuple[Pair, Pair], width: float, head: float, expected: list[Pair]
) -> None:
    found = fit_of(room, ends, US.opening("door-1", 55, width, head))
    assert len(found.ranges) == len(expected)
    for place, wanted in zip(ranges(found), expected, strict=True):
        assert place == pytest.approx(wanted, abs=1e-3)


@pytest.mark.parametrize(
    ("header", "low"),
    [
        # x of the header's low end: (82.5 + rise + 1.875 - 48) / 0.75, the opening 1.5 after it.
        (US.header(), 52.0),
        (US.header(plies=2), 54.0),
        (US.header(HeaderKind.ON_EDGE, (1.5, 3.5), 2), 54.6667),
        # Without a header the trimmers, as high as the head, have to pass.
        (US.header(HeaderKind.NONE), 50.0),
    ],
)
def test_headers_take_height(header: Header, low: float) -> None:
    found = fit_of(GABLE, ACROSS, US.opening("door-1", 60, 34, 82.5, header=header))
    assert ranges(found)[0][0] == pytest.approx(low, abs=1e-4)


@pytest.mark.parametrize(
    ("left", "fits"),
    [(52, True), (51.99, False), (82, True), (82.01, False), (4.5, False), (67, True)],
)
def test_fits(left: float, fits: bool) -> None:
    assert fit_of(GABLE, ACROSS, US.opening("door-1", left, 34, 82.5)).fits is fits


FIRST = US.opening("door-1", 40, 20, 80)
"""With trimmers and kings from 37 to 63."""


@pytest.mark.parametrize(
    ("left", "width", "expected", "fits"),
    [
        # Until 37 - 3 - width, after 63 + 3 = 66.
        pytest.param(80, 24, [(4.5, 10), (66, 91.5)], True, id="clear"),
        pytest.param(66, 24, [(4.5, 10), (66, 91.5)], True, id="kings side by side"),
        pytest.param(65.5, 24, [(4.5, 10), (66, 91.5)], False, id="kings overlap"),
        pytest.param(64.5, 24, [(4.5, 10), (66, 91.5)], False, id="sharing a king"),
        pytest.param(45, 24, [(4.5, 10), (66, 91.5)], False, id="within the other"),
        pytest.param(8, 30, [(66, 85.5)], False, id="no room on the left"),
        pytest.param(70, 60, [], False, id="no room at all"),
    ],
)
def test_two_openings(left: float, width: float, expected: list[Pair], fits: bool) -> None:
    found = fit_of(FLAT, LEVEL, FIRST, US.opening("door-2", left, width, 80))
    assert ranges(found) == expected
    assert found.fits is fits


def test_one_that_does_not_fit_takes_no_room() -> None:
    """The second fits though it overlaps the first, which is not framed."""
    too_tall = US.opening("door-1", 40, 20, 95)
    found = fit_of(FLAT, LEVEL, too_tall, US.opening("door-2", 45, 24, 80))
    assert (found.fits, ranges(found)) == (True, [(4.5, 91.5)])


@pytest.mark.parametrize(
    ("left", "nearest"), [(62, 66), (30, 10), (40, 66), (-5, 4.5), (200, 91.5), (7, 7), (80, 80)]
)
def test_nearest(left: float, nearest: float) -> None:
    found = fit_of(FLAT, LEVEL, FIRST, US.opening("door-2", 80, 24, 80))
    place = found.nearest(US.length(left).mm)
    assert place is not None
    assert US.of(place) == pytest.approx(nearest)


def test_nearest_of_nothing() -> None:
    assert fit_of(FLAT, LEVEL, US.opening("door-1", 40, 20, 95)).nearest(0.0) is None
