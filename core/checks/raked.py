"""The cautions of openings with a raked head: why one does not fit, and the leaf that it takes."""

import math

from core.checks.caution import Caution, Severity
from core.framing import PlacedOpening, spoken
from core.model import OpeningKind, Wall
from core.wording import Message, Mm, Rad, message

_TAKES_A_LEAF = (OpeningKind.DOOR, OpeningKind.ACCESS_DOOR, OpeningKind.WINDOW)


def raked_leaves(wall: Wall, placed: tuple[PlacedOpening, ...]) -> list[Caution]:
    """The raked openings for whose leaf or unit no ready-made one will do."""
    found = [p for p in placed if p.fit.fits and p.rake and p.opening.kind in _TAKES_A_LEAF]
    return [Caution(Severity.WARNING, p.key, _special(wall, p)) for p in found]


def leaf_heights(placed: PlacedOpening) -> tuple[float, float]:
    """The heights of the leaf at its left and its right edge, mm: of the rough opening without one.

    Across its width it rises by the opening's slope, from the stated height at the lower edge.
    """
    leaf, (at_left, at_right) = placed.opening.leaf, placed.heads
    sill = placed.opening.sill.mm
    if leaf is None:
        return at_left - sill, at_right - sill
    rise = placed.rake * leaf.width.mm
    return leaf.height.mm + max(-rise, 0.0), leaf.height.mm + max(rise, 0.0)


def _special(wall: Wall, placed: PlacedOpening) -> Message:
    at_left, at_right = leaf_heights(placed)
    stated = "leaf" if placed.opening.leaf is not None else "rough"
    return message(
        f"opening.raked-{stated}",
        letter=wall.letter,
        opening=spoken(placed.opening.id),
        angle=Rad(abs(math.atan(placed.rake))),
        left=Mm(at_left),
        right=Mm(at_right),
    )
