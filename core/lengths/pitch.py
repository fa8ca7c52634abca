"""A pitch: the slope of a roof plane and the text that states it."""

import math
from typing import Final

import msgspec

STEEPEST_DEGREES: Final = 80
"""A pitch is below this; steeper is a wall."""

STEEPEST: Final = math.tan(math.radians(STEEPEST_DEGREES))
"""The tangent that a pitch is below."""


class Pitch(msgspec.Struct, frozen=True):
    """A slope, as rise over run, and the text that states it.

    Equal pitches written differently are different values, as lengths are.

    Raises:
        ValueError: when the tangent is not that of an angle from 0 to below 80
            degrees.
    """

    tangent: float
    text: str

    def __post_init__(self) -> None:
        """Refuse what is no roof; make minus zero plain zero."""
        if not 0 <= self.tangent < STEEPEST:
            raise ValueError(
                f"a pitch must be from 0 to below {STEEPEST_DEGREES} degrees, and"
                f" {self.tangent} is the tangent of none"
            )
        msgspec.structs.force_setattr(self, "tangent", self.tangent + 0.0)

    @property
    def angle(self) -> float:
        """The angle from level, in radians."""
        return math.atan(self.tangent)

    @property
    def degrees(self) -> float:
        """The angle from level, in degrees."""
        return math.degrees(self.angle)

    @property
    def rise_in_12(self) -> float:
        """The rise in a run of 12, of whatever unit."""
        return self.tangent * 12


def write_pitch(pitch: Pitch) -> str:
    """The text of a pitch, which reads back as the same pitch."""
    return pitch.text
