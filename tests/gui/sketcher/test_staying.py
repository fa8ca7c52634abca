"""Labels that stay in sight when the sheet is looked at closely."""

from __future__ import annotations

from itertools import combinations

import pytest

from core.drawing.elevation import elevation
from core.job import work_out
from core.model import SiteRecord
from gui.desk import Desk
from gui.sketcher.camera import Camera
from gui.sketcher.sheet import Sheet
from gui.sketcher.staying import Label, staying
from gui.wordings import wording_of
from loft import INCH, loft

RESULT = work_out(loft(), SiteRecord()).walls[0]
WORDS = wording_of(loft())
DENSITY = 96 / 25.4
WINDOW = (800.0, 600.0)


def seen(scale: float, left: float, bottom: float) -> tuple[Label, ...]:
    """The labels of a window with its lower left corner at a place of the wall, in inches."""
    camera = Camera(scale, -left * INCH * scale, 600.0 + bottom * INCH * scale)
    drawing = elevation(RESULT, camera.view(DENSITY), WORDS)
    return staying(RESULT, drawing, camera, WINDOW, DENSITY, WORDS)


def test_while_all_is_in_sight_nothing_is_told_twice() -> None:
    assert seen(0.18, -10.0, -15.0) == ()


def test_what_has_its_own_label_out_of_sight_is_named_at_the_lower_edge() -> None:
    # 1.2 px a mm: from 20 to 46 in. along and from 50 in. up, two studs stand in the window.
    labels = seen(1.2, 20.0, 50.0)
    assert [label.text for label in labels] == ['B3  89 1/8"']
    left, low, right, high = labels[0].slip
    # Its middle is at 32 in.: (32 - 20) x 25.4 x 1.2 px.
    assert (left + right) / 2 == pytest.approx(12 * INCH * 1.2)
    assert 600 - 40 < low < high < 600


def test_an_opening_is_named_too() -> None:
    assert "door 1" in [label.text for label in seen(1.2, 62.0, 40.0)]


@pytest.mark.parametrize("scale", [0.4, 0.8, 1.6, 3.0])
@pytest.mark.parametrize("place", [(0.0, 40.0), (50.0, 30.0), (80.0, 60.0)])
def test_none_stands_over_another_or_leaves_the_window(
    scale: float, place: tuple[float, float]
) -> None:
    slips = [label.slip for label in seen(scale, *place)]
    for left, low, right, high in slips:
        assert 0 <= left < right <= 800
        assert 0 <= low < high <= 600
    for a, b in combinations(slips, 2):
        assert a.right <= b.left or b.right <= a.left or a.high <= b.low or b.high <= a.low


def test_the_sheet_shows_them_and_hatches_above_the_roof(sheet: Sheet, desk: Desk) -> None:
    assert desk.result is not None
    whole = sheet.scene()
    assert len(whole.under) == 1
    sheet.look(sheet.camera.zoomed(6.0, (500.0, 200.0)))
    assert sheet.grab().toImage().pixelColor(2, 2).isValid()
    # Looking from so near that the roof is above the window, there is nothing to hatch.
    sheet.look(Camera(2.0, 0.0, 900.0))
    assert sheet.scene().under == ()
