"""The pitch as a value."""

import math

import pytest

from core.lengths import Pitch, Unit, parse_pitch, write_pitch

# Rise in 12, and degrees. Source: plain trigonometry, atan(rise / 12); the values
# for 2, 3, 4 and 5 in 12 agree with zenkankakufes.com/picts/412-roof-pitch-in-degrees.html.
DEGREES = [(2, 9.46), (3, 14.04), (4, 18.43), (5, 22.62), (9, 36.87), (12, 45.0)]


@pytest.mark.parametrize(("rise", "degrees"), DEGREES)
def test_angle_of_a_rise_in_12(rise: int, degrees: float) -> None:
    pitch = Pitch(rise / 12, f"{rise} in 12")
    assert pitch.degrees == pytest.approx(degrees, abs=0.005)
    assert pitch.angle == pytest.approx(math.radians(degrees), abs=1e-4)
    assert pitch.rise_in_12 == pytest.approx(rise)


def test_the_text_is_written_as_it_stands() -> None:
    assert write_pitch(Pitch(0.75, "9 in 12")) == "9 in 12"


def test_a_flat_roof_has_a_pitch() -> None:
    flat = parse_pitch("0 in 12", Unit.INCH)
    assert (flat.tangent, flat.degrees) == (0.0, 0.0)
    assert math.copysign(1, Pitch(-0.0, "0 in 12").tangent) == 1


# tan 80 = 5.671...
@pytest.mark.parametrize("tangent", [-0.1, 5.672, math.tan(math.radians(80)), math.inf, math.nan])
def test_what_is_no_roof_is_refused(tangent: float) -> None:
    with pytest.raises(ValueError, match="from 0 to below 80 degrees"):
        Pitch(tangent, "")


def test_pitches_can_be_kept_in_a_set() -> None:
    assert len({Pitch(0.75, "9 in 12"), Pitch(0.75, "9 in 12"), Pitch(0.75, "9/12")}) == 2
