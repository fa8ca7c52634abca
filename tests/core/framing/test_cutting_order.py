"""The order in which the pieces of a wall are cut."""

from __future__ import annotations

import math

from core.framing import SQUARE_WITHIN, Facet, Member, Role, cutting_order, saw_settings

SQUARE = (Facet(0.0, 0.0, "any"),)


def bevel(degrees: float) -> tuple[Facet, ...]:
    return (Facet(math.radians(degrees), 0.0, "right"),)


def piece(key: str, role: Role, long: float, top: tuple[Facet, ...], width: float = 88.9) -> Member:
    return Member(key, role, 38.1, width, (), (), (long,) * 4, long, long, long, SQUARE, top)


def test_plates_then_stocks_then_settings_then_the_longest() -> None:
    members = (
        piece("wide", Role.HEADER, 900, SQUARE, width=139.7),
        piece("short bevelled", Role.STUD, 1500, bevel(-36.87)),
        piece("long bevelled", Role.STUD, 2000, bevel(36.87)),
        piece("flatter", Role.STUD, 2100, bevel(20)),
        piece("square", Role.TRIMMER, 1400, SQUARE),
        piece("plate", Role.TOP_PLATE, 3000, bevel(36.87)),
        piece("sole", Role.SOLE_PLATE, 4000, SQUARE),
    )
    assert [m.key for m in cutting_order(members)] == [
        "sole",
        "plate",
        "square",
        "flatter",
        "long bevelled",
        "short bevelled",
        "wide",
    ]


def test_a_cut_and_its_mirror_image_are_one_setting() -> None:
    left, right = (piece("x", Role.STUD, 1, bevel(sign * 36.87)) for sign in (1, -1))
    assert saw_settings(left) == saw_settings(right) == ((36.87, 0.0),)


def test_square_ends_need_no_setting() -> None:
    nearly = (Facet(SQUARE_WITHIN * 0.9, 0.0, "any"),)
    assert saw_settings(piece("x", Role.STUD, 1, nearly)) == ()
