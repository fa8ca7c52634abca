"""Making members: timber that stands under a line, and timber that lies level."""

from core.framing.cuts import top_facets
from core.framing.member import SQUARE, XY, Member, Role
from core.model import Timber
from core.roof import RoofLine, Segment

NO_ROOM = 1e-6
"""A member with an edge shorter than this (mm) cannot be cut."""


def flat_line(height: float, length: float) -> RoofLine:
    """A level line at `height` over a wall `length` long, mm."""
    return RoofLine((Segment(0.0, length, height, 0.0, 0.0),))


def standing(
    key: str,
    role: Role,
    timber: Timber,
    left: float,
    foot: float,
    over: tuple[RoofLine, RoofLine],
) -> Member | None:
    """A member that stands plumb from `foot` to the lines over face A and the far face.

    `left` is its left edge and `foot` the height it stands on, mm. Its top gets one facet for
    each plane it meets. None where there is no room for it.
    """
    right = left + timber.thickness.mm
    spans = tuple(line.between(left, right) for line in over)
    tops = tuple(_top(span) for span in spans)
    edges = tuple(y - foot for top in tops for y in (top[0][1], top[-1][1]))
    lengths = [y - foot for top in tops for _, y in top]
    if min(lengths) <= NO_ROOM:
        return None
    near, far = (((left, foot), (right, foot), *reversed(top)) for top in tops)
    return Member(
        key=key,
        role=role,
        thickness=timber.thickness.mm,
        width=timber.width.mm,
        near=near,
        far=far,
        edges=(edges[0], edges[1], edges[2], edges[3]),
        long_point=max(lengths),
        short_point=min(lengths),
        overall=max(lengths),
        first_cut=SQUARE,
        last_cut=top_facets(spans),
    )


def lying(
    key: str, role: Role, timber: Timber, left: float, right: float, bottom: float, rise: float
) -> Member:
    """A member that lies level from `left` to `right`, square at both ends; `rise` is its height.

    The height is the timber's thickness for one that lies flat, its width for one on edge; mm.
    """
    outline = ((left, bottom), (right, bottom), (right, bottom + rise), (left, bottom + rise))
    length = right - left
    return Member(
        key=key,
        role=role,
        thickness=timber.thickness.mm,
        width=timber.width.mm,
        near=outline,
        far=outline,
        edges=(length, length, length, length),
        long_point=length,
        short_point=length,
        overall=length,
        first_cut=SQUARE,
        last_cut=SQUARE,
    )


def _top(span: tuple[Segment, ...]) -> tuple[XY, ...]:
    """The corners of a top cut from left to right."""
    first = (span[0].left, span[0].at(span[0].left))
    return (first, *((s.right, s.at(s.right)) for s in span))
