"""How far the person's saw goes."""

import math

import msgspec

from core.lengths import Pitch


class Saw(msgspec.Struct, frozen=True):
    """The stops of a saw, from a square cut: how far its blade tilts and how far it swings."""

    bevel: Pitch
    mitre: Pitch


USUAL_SAW = Saw(Pitch(math.tan(math.radians(45)), "45°"), Pitch(math.tan(math.radians(50)), "50°"))
"""Where sliding mitre saws commonly stop (common practice, no source)."""
