"""Angles as text."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.lengths import write_degrees

DEGREES = [
    (0.0, 1, "0.0°"),
    (36.87, 1, "36.9°"),
    (36.87, 2, "36.87°"),
    (36.87, 0, "37°"),
    (45.0, 1, "45.0°"),
    (-36.87, 1, "-36.9°"),
    (-0.01, 1, "0.0°"),
    (-0.0, 0, "0°"),
    # Halves go away from zero, as on the tape.
    (22.5, 0, "23°"),
    (36.85, 1, "36.9°"),
    # In radians and back 3.75 and 14.45 fall a hair short of the half.
    (3.75, 1, "3.8°"),
    (14.45, 1, "14.5°"),
    (-22.5, 0, "-23°"),
    (9.96, 1, "10.0°"),
]


@pytest.mark.parametrize(("degrees", "decimals", "text"), DEGREES)
def test_degrees(degrees: float, decimals: int, text: str) -> None:
    assert write_degrees(math.radians(degrees), decimals) == text


def test_one_decimal_unless_told() -> None:
    # 9 in 12: atan 0.75 = 36.8699 degrees.
    assert write_degrees(math.atan(0.75)) == "36.9°"


@pytest.mark.parametrize("radians", [math.nan, math.inf])
def test_what_is_not_finite_is_refused(radians: float) -> None:
    with pytest.raises(ValueError, match="finite"):
        write_degrees(radians)


@given(st.floats(-180, 180), st.integers(0, 4))
def test_the_text_is_within_half_of_its_last_decimal(degrees: float, decimals: int) -> None:
    text = write_degrees(math.radians(degrees), decimals)
    assert abs(float(text.removesuffix("°")) - degrees) <= 0.5000001 / 10**decimals
