"""What pens look like on paper."""

from itertools import pairwise

import pytest

from core.drawing import Pen
from core.output.paper_pens import PAPER_PENS

TIMBER = (
    Pen.SOLE_PLATE,
    Pen.TOP_PLATE,
    Pen.STUD,
    Pen.KING,
    Pen.TRIMMER,
    Pen.HEADER,
    Pen.SILL,
    Pen.CRIPPLE,
    Pen.BLOCK,
)


def test_every_pen_has_its_look() -> None:
    assert set(PAPER_PENS) == set(Pen)


@pytest.mark.parametrize(
    ("pens", "least", "most"),
    [
        # National CAD Standard, as quoted in the notes of Cornell Architecture 367.
        ((Pen.ROOF, Pen.FLOOR, Pen.BORDER, Pen.UNBUILDABLE), 0.70, 0.70),
        ((Pen.OPENING,), 0.50, 0.50),
        (TIMBER, 0.35, 0.35),
        ((Pen.DIMENSION, Pen.TAPE), 0.18, 0.25),
        ((Pen.RULE, Pen.ABOVE_ROOF), 0.18, 0.25),
    ],
)
def test_widths(pens: tuple[Pen, ...], least: float, most: float) -> None:
    assert [pen for pen in pens if not least <= PAPER_PENS[pen].width <= most] == []


def test_each_kind_of_timber_has_a_tone_of_its_own() -> None:
    """Pale enough for black figures, darker than paper, and told apart by a fortieth of the way."""
    tones = sorted(PAPER_PENS[pen].fill for pen in TIMBER)
    assert tones[0] >= 0.7
    assert tones[-1] <= 0.95
    assert min(b - a for a, b in pairwise(tones)) >= 0.024


def test_what_cannot_be_built_is_told_without_colour() -> None:
    """It alone is dashed and heavy, as heavy as anything."""
    heavy = {pen for pen, look in PAPER_PENS.items() if look.dash and look.width > 0.25}
    assert heavy == {Pen.UNBUILDABLE}
    assert PAPER_PENS[Pen.UNBUILDABLE].width == max(look.width for look in PAPER_PENS.values())


def test_what_is_read_is_black() -> None:
    read = (Pen.LABEL, Pen.LENGTH, Pen.DIMENSION, Pen.MARK, Pen.TITLE, Pen.NOTE, *TIMBER)
    assert [pen for pen in read if PAPER_PENS[pen].grey > 0] == []
