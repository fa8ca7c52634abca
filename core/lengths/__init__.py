"""Lengths, pitches and angles: read as people write them, shown as a tape shows them."""

from core.lengths.angle import write_degrees
from core.lengths.errors import LengthError, PitchError
from core.lengths.length import Length, write
from core.lengths.parsing import parse
from core.lengths.pitch import Pitch, write_pitch
from core.lengths.pitch_parsing import parse_pitch
from core.lengths.tape import Tape
from core.lengths.unbroken import HARD, unbroken
from core.lengths.units import System, Unit

__all__ = [
    "HARD",
    "Length",
    "LengthError",
    "Pitch",
    "PitchError",
    "System",
    "Tape",
    "Unit",
    "parse",
    "parse_pitch",
    "unbroken",
    "write",
    "write_degrees",
    "write_pitch",
]
