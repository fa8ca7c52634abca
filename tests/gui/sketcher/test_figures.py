"""Where figures stand: on their lines, in the window, never over each other."""

from __future__ import annotations

from itertools import combinations

import pytest

from gui.sketcher.camera import Camera
from gui.sketcher.figures import Figure, figures
from gui.sketcher.measures import Measure, Ruler, measures
from gui.wordings import wording_of
from loft import BOX, DOOR, STUD, hold_of, loft

WORDS = wording_of(loft())
WINDOW = (800.0, 600.0)
ONE_TO_ONE = Camera(1.0, 0.0, 600.0)
"""One px for each mm, the floor at the lower edge of the window."""


def laid(*found: Measure, camera: Camera = ONE_TO_ONE) -> tuple[Figure, ...]:
    return figures(found, camera, WORDS, 14, WINDOW)


def test_a_figure_stands_in_the_middle_of_its_line() -> None:
    (figure,) = laid(Measure(Ruler.LEFT_END, (100.0, 200.0), (500.0, 200.0)))
    assert (figure.slip.left + figure.slip.right) / 2 == pytest.approx(300.0)
    assert (figure.slip.low + figure.slip.high) / 2 == pytest.approx(400.0)
    assert figure.holds((300.0, 400.0))
    assert not figure.holds((300.0, 440.0))
    # 400 mm is 15 3/4 in.
    assert figure.text == '15 3/4"'


def test_a_short_upright_line_has_its_figure_beside_it() -> None:
    (short,) = laid(Measure(Ruler.SLOPE, (400.0, 300.0), (400.0, 290.0)))
    (long,) = laid(Measure(Ruler.SLOPE, (400.0, 300.0), (400.0, 100.0)))
    assert short.slip.left > 400.0
    assert long.slip.left < 400.0 < long.slip.right


def test_a_line_that_leaves_the_window_has_its_figure_on_what_is_seen() -> None:
    (figure,) = laid(Measure(Ruler.LEFT_END, (-2000.0, 200.0), (200.0, 200.0)))
    assert (figure.slip.left + figure.slip.right) / 2 == pytest.approx(100.0)


@pytest.mark.parametrize("key", [STUD, DOOR, BOX])
@pytest.mark.parametrize("scale", [0.05, 0.1, 0.25, 1.0, 4.0])
@pytest.mark.parametrize("x", [-300.0, 20.0, 700.0])
def test_figures_stay_apart_and_in_the_window(key: str, scale: float, x: float) -> None:
    found = laid(*measures(hold_of(loft(), key)), camera=Camera(scale, x, 500.0))
    for figure in found:
        assert figure.slip.left >= 0
        assert figure.slip.low >= 0
        assert figure.slip.right <= WINDOW[0]
        assert figure.slip.high <= WINDOW[1]
    for one, other in combinations((f.slip for f in found), 2):
        beside = one.right <= other.left or other.right <= one.left
        assert beside or one.high <= other.low or other.high <= one.low
