"""Making members: timber that stands under a line, and timber that lies level."""

import math
from itertools import pairwise

import msgspec

from core.framing.cuts import foot_facet, top_facets
from core.framing.member import SQUARE, SQUARE_WITHIN, XY, Facet, Member, Role
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
    foot: float | tuple[RoofLine, RoofLine],
    over: tuple[RoofLine, RoofLine],
) -> Member | None:
    """A member that stands plumb from `foot` to the lines over face A and the far face.

    `left` is its left edge, mm. `foot` is the height it stands on, mm, or the lines that it stands
    on under face A and the far face: a floor out of level, the top of a rafter. Each end gets one
    facet for each plane it meets. None where there is no room for it.
    """
    right = left + timber.thickness.mm
    spans = tuple(line.between(left, right) for line in over)
    tops = tuple(_corners(span) for span in spans)
    if isinstance(foot, tuple):
        under = tuple(line.between(left, right) for line in foot)
        feet, first_cut = tuple(_corners(span) for span in under), tuple(map(foot_facet, under[0]))
    else:
        feet, first_cut = (((left, foot), (right, foot)),) * 2, SQUARE
    on_near, on_far = _lengths(feet[0], tops[0]), _lengths(feet[1], tops[1])
    short = min(*on_near, *on_far)
    if short <= NO_ROOM:
        return None
    near, far = (*feet[0], *tops[0][::-1]), (*feet[1], *tops[1][::-1])
    heights = [y for _, y in (*near, *far)]
    return Member(
        key=key,
        role=role,
        thickness=timber.thickness.mm,
        width=timber.width.mm,
        near=near,
        far=far,
        edges=(on_near[0], on_near[-1], on_far[0], on_far[-1]),
        long_point=max(*on_near, *on_far),
        short_point=short,
        overall=max(heights) - min(heights),
        first_cut=first_cut,
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


def raking(
    key: str, role: Role, timber: Timber, left: float, right: float, under: Segment, rise: float
) -> Member:
    """A member that lies along a slope from `left` to `right`, cut plumb at both ends.

    `under` is the line of its underside, and `rise` its height square to that, as in `lying`. One
    that lies flat has its ends bevelled, one on edge has them mitred.
    """
    level = lying(key, role, timber, left, right, under.at(left), rise)
    if under.along == 0.0:
        return level
    secant = math.hypot(1.0, under.along)
    feet = (left, under.at(left)), (right, under.at(right))
    outline = (*feet, *((x, y + rise * secant) for x, y in reversed(feet)))
    length, angle = (right - left) * secant, math.atan(under.along)
    flat = rise < timber.width.mm
    up = "top" if angle > 0 else "underside"
    bevelled = Facet(angle, 0.0, "any" if abs(angle) < SQUARE_WITHIN else up)
    cut = (bevelled if flat else Facet(0.0, angle, "any"),)
    return msgspec.structs.replace(
        level,
        near=outline,
        far=outline,
        edges=(length, length, length, length),
        long_point=length,
        short_point=length,
        overall=length + rise * abs(under.along),
        first_cut=cut,
        last_cut=cut,
    )


def _corners(span: tuple[Segment, ...]) -> tuple[XY, ...]:
    """The corners of an end cut from left to right."""
    first = (span[0].left, span[0].at(span[0].left))
    return (first, *((s.right, s.at(s.right)) for s in span))


def _lengths(foot: tuple[XY, ...], top: tuple[XY, ...]) -> list[float]:
    """The lengths on one face from left to right: at both edges, and at every corner between."""
    if len(foot) == len(top) == 2:
        return [top[0][1] - foot[0][1], top[1][1] - foot[1][1]]
    places = sorted({x for x, _ in (*foot, *top)})
    return [_height(top, x) - _height(foot, x) for x in places]


def _height(corners: tuple[XY, ...], x: float) -> float:
    """The height at x of a line broken at these corners, mm; exact at the corners."""
    for (x0, y0), (x1, y1) in pairwise(corners):
        if x0 < x < x1:
            return y0 + (y1 - y0) * ((x - x0) / (x1 - x0))
    return next(y for place, y in corners if place == x)
