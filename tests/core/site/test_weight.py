"""Weights by section and species, against the tables of FACTS 2.4."""

from __future__ import annotations

import pytest

from core.framing import Member, Role
from core.framing.sticks import lying
from core.model import Species
from core.site import density, weight, weights
from walls import US, Pair, frame_of, in_12

LB = 0.45359237


def stick(section: Pair, inches: float) -> Member:
    timber = US.timber(section)
    return lying("B/x", Role.SOLE_PLATE, timber, 0.0, inches * 25.4, 0.0, timber.thickness.mm)


@pytest.mark.parametrize(
    ("section", "lb_per_foot"),
    # At 35 lb/ft3, SEEN in wikiengineer.com, Sawn Lumber Dimensions.
    [
        ((0.75, 3.5), 0.64),
        ((0.75, 5.5), 1.00),
        ((1.5, 3.5), 1.28),
        ((1.5, 5.5), 2.00),
        ((1.5, 7.25), 2.64),
        ((1.5, 9.25), 3.37),
        ((1.5, 11.25), 4.10),
        ((3.5, 3.5), 2.98),
    ],
)
def test_pounds_a_foot_by_section(section: Pair, lb_per_foot: float) -> None:
    assert weight(stick(section, 12), density(None)) / LB == pytest.approx(lb_per_foot, abs=0.006)


@pytest.mark.parametrize(
    ("species", "lb_ft3"),
    [
        # SEEN, Oregon State University after the Wood Handbook.
        (Species.DOUGLAS_FIR, 34),
        (Species.DOUGLAS_FIR_GREEN, 43),
        (Species.WESTERN_LARCH, 36),
        (Species.WESTERN_LARCH_GREEN, 50),
        (Species.ENGELMANN_SPRUCE, 27),
        (Species.ENGELMANN_SPRUCE_GREEN, 36),
        # From memory: 62.4 * 0.42 / (1 + 0.009 * 0.42 * 19) * 1.19 = 31.1875 / 1.07182 = 29.1.
        (Species.SPRUCE_PINE_FIR, 29.1),
    ],
)
def test_density_of_a_species(species: Species, lb_ft3: float) -> None:
    # A cubic foot is 0.3048^3 m3.
    assert density(species) * 0.3048**3 / LB == pytest.approx(lb_ft3, abs=0.01)


def test_an_8_foot_2x4_of_spruce_pine_fir() -> None:
    # 29.1 / 35 * 1.276 = 1.06 lb a foot (FACTS 2.4, CALC).
    found = weight(stick((1.5, 3.5), 96), density(Species.SPRUCE_PINE_FIR)) / LB
    assert found == pytest.approx(8 * 1.06, abs=0.03)


def test_a_bevelled_stud_weighs_by_its_mean_length() -> None:
    # Project 1 of NEEDS.md: S1 has edges 56.0625 and 57.1875, mean 56.625; 5.25 in2.
    room = US.room(264, (12, in_12(9)), (12, in_12(9)))
    frame = frame_of(room, US.wall((48, 100), (216, 100)))
    stud = frame.member("B/layout/1")
    assert stud is not None
    assert weight(stud, density(None)) / LB == pytest.approx(56.625 * 5.25 / 1728 * 35)


def test_the_heaviest_piece_of_a_wall() -> None:
    # Level roof at 96, 168 long: the sole plate and the top plate are 168 long, the studs 93.
    frame = frame_of(US.room(264, (96, in_12(0))), US.wall((48, 100), (216, 100)))
    found = weights(frame, None)
    assert found.heaviest / LB == pytest.approx(168 * 5.25 / 1728 * 35)
    assert found.key in ("B/sole", "B/top/1/1")
    # 0, 15.25 ... 159.25 (10), 166.5: 12 studs.
    length = 2 * 168 + 12 * 93
    assert found.wall / LB == pytest.approx(length * 5.25 / 1728 * 35)
