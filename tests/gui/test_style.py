"""The style sheet and the palette take every colour from the theme."""

from __future__ import annotations

import re

import pytest
from PySide6.QtGui import QPalette

from gui.style import palette, style_sheet
from gui.theme import Theme

NAMES = ("paper", "panel", "field", "ink", "faint", "edge", "chalk", "warning")


@pytest.mark.parametrize("theme", [Theme.day(), Theme.night()], ids=["day", "night"])
def test_no_colour_is_of_its_own(theme: Theme) -> None:
    known = {getattr(theme, name).name() for name in NAMES}
    found = set(re.findall(r"#[0-9a-f]{6}\b", style_sheet(theme)))
    assert found
    assert found <= known


@pytest.mark.parametrize("theme", [Theme.day(), Theme.night()], ids=["day", "night"])
def test_what_is_written_can_be_read(theme: Theme) -> None:
    made = palette(theme)
    text, base = (made.color(role) for role in (QPalette.ColorRole.Text, QPalette.ColorRole.Base))
    assert abs(text.lightness() - base.lightness()) > 120
