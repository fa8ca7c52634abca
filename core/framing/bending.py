"""Plates that bend along a line of slight breaks, instead of being cut at each of them."""

import math
from collections.abc import Sequence
from itertools import pairwise

import msgspec

from core.framing.member import XY, Member
from core.roof import RoofLine, Segment
from core.roof.line import TOUCH

BENDS = math.radians(3.0)
"""A plate laid flat follows a break of up to 3 degrees; common practice, no source."""


def runs(line: RoofLine, roll: float = BENDS) -> tuple[tuple[int, ...], ...]:
    """The segments of a line by index, those together that one plate can follow.

    Between two of them it rolls about its length by up to `roll`, radians.
    """
    found = [[0]]
    for index, (a, b) in enumerate(pairwise(line.segments), start=1):
        if bends(a, b, roll):
            found[-1].append(index)
        else:
            found.append([index])
    return tuple(tuple(run) for run in found)


def bent(key: str, pieces: Sequence[Member]) -> Member:
    """One plate that follows the pieces from left to right; lengths are those along it."""
    first, last = pieces[0], pieces[-1]
    if len(pieces) == 1:
        return msgspec.structs.replace(first, key=key)
    a, b, c, d = (sum(lengths) for lengths in zip(*(p.edges for p in pieces), strict=True))
    edges = (a, b, c, d)
    tips = _tip(first.near, 0) + sum(p.edges[0] for p in pieces) + _tip(last.near, 1)
    return msgspec.structs.replace(
        first,
        key=key,
        near=_outline([p.near for p in pieces]),
        far=_outline([p.far for p in pieces]),
        edges=edges,
        long_point=max(edges),
        short_point=min(edges),
        overall=max(tips, *edges),
        last_cut=last.last_cut,
    )


def underside(plate: Member) -> tuple[XY, ...]:
    """The corners of a lying member's underside on face A, from left to right."""
    return courses(plate.near)[0]


def topside(plate: Member) -> tuple[XY, ...]:
    """The corners of a lying member's top on face A, from left to right."""
    return courses(plate.near)[1]


def courses(outline: tuple[XY, ...]) -> tuple[tuple[XY, ...], tuple[XY, ...]]:
    """The corners of the underside and of the top of a lying member, both from left to right."""
    half = len(outline) // 2
    return outline[:half], outline[half:][::-1]


def height_on(course: tuple[XY, ...], x: float) -> float:
    """The height at x of a line through these corners, mm; the end lines go on."""
    (x0, y0), (x1, y1) = stretch_at(course, x)
    return y0 + (y1 - y0) * (x - x0) / (x1 - x0)


def stretch_at(course: tuple[XY, ...], x: float) -> tuple[XY, XY]:
    """The corners of a line between which x lies; the end ones for a place beyond them."""
    pairs = list(pairwise(course))
    return next((pair for pair in pairs if x <= pair[1][0]), pairs[-1])


def length_along(course: tuple[XY, ...], x: float) -> float:
    """How far x lies along a line through these corners from its left end, mm."""
    total = 0.0
    for (x0, y0), (x1, y1) in pairwise(course):
        if x <= x1 or x1 == course[-1][0]:
            return total + (x - x0) * math.hypot(1.0, (y1 - y0) / (x1 - x0))
        total += math.hypot(x1 - x0, y1 - y0)
    return total


def bends(a: Segment, b: Segment, roll: float = BENDS) -> bool:
    """Whether one plate can follow two neighbouring segments, rolling by up to `roll`, radians."""
    stepped = abs(a.at(a.right) - b.at(b.left)) > TOUCH
    turned = abs(math.atan(a.across) - math.atan(b.across)) > roll
    return not stepped and not turned and abs(a.angle - b.angle) <= BENDS


def _outline(pieces: list[tuple[XY, ...]]) -> tuple[XY, ...]:
    under = (pieces[0][0], *(piece[1] for piece in pieces))
    over = (pieces[0][3], *(piece[2] for piece in pieces))
    return (*under, *reversed(over))


def _tip(outline: tuple[XY, ...], end: int) -> float:
    """How far the top of an end juts out past the underside, along the plate, mm."""
    (x0, y0), (x1, y1) = outline[:2]
    under, over = (outline[0], outline[3]) if end == 0 else (outline[1], outline[2])
    run = math.hypot(x1 - x0, y1 - y0)
    reach = ((over[0] - under[0]) * (x1 - x0) + (over[1] - under[1]) * (y1 - y0)) / run
    return max(0.0, -reach if end == 0 else reach)
