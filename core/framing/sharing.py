"""Kings that two openings share, and end studs that do for a king, where the rules allow it."""

from core.framing.member import Member, Role
from core.framing.near import CLEAR, end_spans
from core.model import Opening, Wall

Range = tuple[float, float]
"""Two places of an opening's left edge, mm, between which it fits."""

SAME = 10 * CLEAR
"""Two studs as near as this stand in one place, mm."""


def beside_ends(wall: Wall, opening: Opening) -> tuple[Range, ...]:
    """The places of an opening between the wall's ends, mm, with a king inside each end stud.

    Where an end stud may be a king, an opening may stand a trimmer from it as well.
    """
    thickness, width = wall.stud.thickness.mm, opening.width.mm
    (_, first), (last, _) = end_spans(wall)
    inside = (first + 2 * thickness, last - 2 * thickness - width)
    if not wall.goes_by.end_as_king:
        return (inside,)
    left, right = first + thickness, last - thickness - width
    places = [inside]
    places += [(left, left)] if left <= inside[1] + CLEAR or abs(left - right) <= CLEAR else []
    places += [(right, right)] if right >= inside[0] - CLEAR and abs(left - right) > CLEAR else []
    return tuple(sorted(places))


def beside_another(wall: Wall, opening: Opening, other: Opening) -> tuple[Range, ...]:
    """The places of an opening to the left and to the right of another, mm, each with its king.

    Where they may share a king, they may stand a trimmer, a king and a trimmer apart as well.
    """
    thickness, width = wall.stud.thickness.mm, opening.width.mm
    low, high = other.left.mm, other.left.mm + other.width.mm
    places = [(-1e9, low - 4 * thickness - width), (high + 4 * thickness, 1e9)]
    if wall.goes_by.share_kings:
        before, after = low - 3 * thickness - width, high + 3 * thickness
        places += [(before, before), (after, after)]
    return tuple(sorted(places))


def without_shared(ends: list[Member], around: list[Member]) -> list[Member]:
    """The timber around all openings, with one stud where two would stand in the same place."""
    taken = [m.left for m in ends]
    kept = []
    for member in around:
        if member.role is Role.KING:
            if any(abs(member.left - left) <= SAME for left in taken):
                continue
            taken.append(member.left)
        kept.append(member)
    return kept
