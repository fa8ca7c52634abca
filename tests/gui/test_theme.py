"""The colours can be read by day and by night, and tell things apart."""

from __future__ import annotations

from itertools import combinations

import pytest
from PySide6.QtGui import QColor

from core.drawing import Pen
from gui.theme import Theme

THEMES = pytest.mark.parametrize("theme", [Theme.day(), Theme.night()], ids=["day", "night"])


def contrast(a: QColor, b: QColor) -> float:
    """The contrast ratio of two colours, 1 to 21 (WCAG 2.1, relative luminance; from memory)."""
    light, dark = sorted((_luminance(a), _luminance(b)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def _luminance(colour: QColor) -> float:
    def linear(part: float) -> float:
        return part / 12.92 if part <= 0.03928 else ((part + 0.055) / 1.055) ** 2.4

    parts = (colour.redF(), colour.greenF(), colour.blueF())
    return sum(w * linear(p) for w, p in zip((0.2126, 0.7152, 0.0722), parts, strict=True))


def test_contrast_of_black_on_white_is_21() -> None:
    assert contrast(QColor("black"), QColor("white")) == pytest.approx(21.0)


@THEMES
def test_every_pen_has_a_look(theme: Theme) -> None:
    assert set(theme.looks) == set(Pen)


@THEMES
@pytest.mark.parametrize("pen", list(Pen))
def test_what_is_written_can_be_read_on_paper(theme: Theme, pen: Pen) -> None:
    assert contrast(theme.looks[pen].text, theme.paper) >= 4.5


@THEMES
@pytest.mark.parametrize(
    "pen",
    [Pen.STUD, Pen.KING, Pen.TRIMMER, Pen.CRIPPLE, Pen.HEADER, Pen.SILL, Pen.SOLE_PLATE,
     Pen.TOP_PLATE, Pen.TAPE, Pen.BOX],
)  # fmt: skip
def test_ink_can_be_read_on_timber_and_tape(theme: Theme, pen: Pen) -> None:
    assert contrast(theme.ink, theme.looks[pen].fill) >= 4.5


@THEMES
@pytest.mark.parametrize("ground", ["paper", "panel", "field"])
@pytest.mark.parametrize("colour", ["ink", "faint", "chalk", "warning"])
def test_every_colour_of_words_can_be_read_on_every_ground(
    theme: Theme, colour: str, ground: str
) -> None:
    assert contrast(getattr(theme, colour), getattr(theme, ground)) >= 4.5


@THEMES
def test_timber_has_a_few_tones_and_no_more(theme: Theme) -> None:
    roles = (Pen.STUD, Pen.KING, Pen.HEADER, Pen.SOLE_PLATE)
    tones = {pen: theme.looks[pen].fill.name() for pen in roles}
    assert len(set(tones.values())) == 4
    assert tones[Pen.STUD] == theme.looks[Pen.CRIPPLE].fill.name()
    assert tones[Pen.KING] == theme.looks[Pen.TRIMMER].fill.name()


@THEMES
def test_what_cannot_be_built_is_told_by_its_line_too(theme: Theme) -> None:
    look = theme.looks[Pen.UNBUILDABLE]
    assert look.line == theme.warning
    assert look.dash
    assert look.fill.alphaF() < 0.3


def test_day_and_night_differ_in_all_that_is_seen() -> None:
    day, night = Theme.day(), Theme.night()
    assert not day.dark
    assert night.dark
    assert day.paper.lightnessF() > 0.9 > 0.2 > night.paper.lightnessF()


@THEMES
def test_the_four_voices_are_told_apart(theme: Theme) -> None:
    for a, b in combinations((theme.ink, theme.chalk, theme.warning, theme.faint), 2):
        far = abs(a.red() - b.red()) + abs(a.green() - b.green()) + abs(a.blue() - b.blue())
        assert far > 120
