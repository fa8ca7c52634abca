"""A worked-out wall read as it is built: in the shop's unit and in degrees, to four places."""

from __future__ import annotations

import math
from collections.abc import Iterable

import pytest

from core.framing import Facet, Mark, Member, Role
from core.job import WallResult
from walls import Shop, member

Row = list[str]


def rows(table: str) -> list[Row]:
    """The cells of a table of lines, parted by upright strokes."""
    return [[cell.strip() for cell in line.split("|")] for line in table.strip().splitlines()]


def written(*cells: str | float, each: float = 1e-4) -> object:
    """What equals the numbers in these cells, in order, to about their last written place."""
    numbers = [float(n) for cell in cells for n in str(cell).split()]
    return pytest.approx(numbers, abs=0.6 * each)


def stick(found: WallResult, cause: str) -> Member:
    """The member of wall "B" with this cause."""
    assert found.frame is not None
    return member(found.frame, cause)


def edges(shop: Shop, found: WallResult, cause: str) -> list[float]:
    """The lengths of a member's edges: left and right on face A, then on the far face."""
    return [shop.of(edge) for edge in stick(found, cause).edges]


def points(shop: Shop, found: WallResult, cause: str) -> list[float]:
    """Long point, short point and the length from tip to tip."""
    piece = stick(found, cause)
    return [shop.of(x) for x in (piece.long_point, piece.short_point, piece.overall)]


def saw(facets: Iterable[Facet]) -> list[tuple[float, float]]:
    """The settings (bevel, mitre) of each facet, degrees to two places."""
    return [
        (round(math.degrees(f.bevel), 2) + 0.0, round(math.degrees(f.mitre), 2) + 0.0)
        for f in facets
    ]


def on_sole(found: WallResult, cause: str) -> Mark:
    """A member's mark on the sole plate."""
    (mark,) = (m for m in found.marks if m.member == f"B/{cause}" and m.plate == "B/sole")
    return mark


def on_top(found: WallResult, cause: str) -> Mark:
    """A member's mark on a top plate."""
    (mark,) = (m for m in found.marks if m.member == f"B/{cause}" and "/top/" in m.plate)
    return mark


def uprights(found: WallResult) -> list[str]:
    """The causes of everything that stands, from left to right."""
    assert found.frame is not None
    standing = sorted((m for m in found.frame.members if not m.lies), key=lambda m: m.left)
    return [m.key.removeprefix("B/") for m in standing]


def lying(found: WallResult) -> set[str]:
    """The causes of all plates, headers and sills."""
    assert found.frame is not None
    return {m.key.removeprefix("B/") for m in found.frame.members if m.lies}


def roles(found: WallResult) -> set[Role]:
    """What kinds of members stand or lie in it."""
    assert found.frame is not None
    return {m.role for m in found.frame.members}
