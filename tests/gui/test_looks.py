"""Day and night, and how large texts are."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from gui.keeping import Fleeting, Kept
from gui.looks import Looks
from gui.sizes import TEXT_SCALES, USUAL, points, set_text_step, text_scale
from gui.theme import Theme


@pytest.fixture(autouse=True)
def usual_texts(qapp: QApplication) -> Iterator[None]:  # noqa: ARG001
    yield
    set_text_step(0)


@pytest.fixture
def kept() -> Kept:
    return Kept(Fleeting())


def test_as_long_as_nothing_is_chosen_the_system_is_followed(kept: Kept) -> None:
    looks = Looks(kept)
    assert looks.follows_system
    # The offscreen system is a light one.
    assert not looks.theme.dark


def test_a_choice_stays(kept: Kept, qtbot: QtBot) -> None:
    looks = Looks(kept)
    with qtbot.waitSignal(looks.recoloured):
        looks.turn()
    assert looks.theme.dark
    assert Looks(kept).theme.dark
    looks.turn()
    assert not Looks(kept).theme.dark
    assert not looks.follows_system


def test_the_choice_can_be_given_back(kept: Kept) -> None:
    looks = Looks(kept)
    looks.turn()
    looks.follow_system()
    assert looks.follows_system
    assert not looks.theme.dark


def test_a_given_theme_is_shown_first(kept: Kept) -> None:
    assert Looks(kept, Theme.night()).theme.dark


def test_texts_grow_step_by_step_to_an_end(kept: Kept, qtbot: QtBot) -> None:
    looks = Looks(kept)
    with qtbot.waitSignal(looks.resized):
        looks.larger()
    assert text_scale() == 1.15
    assert points(10) == "11.5pt"
    for _ in TEXT_SCALES:
        looks.larger()
    assert text_scale() == TEXT_SCALES[-1]
    with qtbot.assertNotEmitted(looks.resized):
        looks.larger()
    assert kept.text_step == len(TEXT_SCALES) - 1 - USUAL


def test_texts_are_as_large_the_next_day(kept: Kept) -> None:
    Looks(kept).smaller()
    set_text_step(0)
    Looks(kept)
    assert text_scale() == 0.85


@pytest.mark.parametrize(("step", "scale"), [(99, 1.5), (-99, 0.85), (0, 1.0)])
def test_a_step_out_of_range_is_the_nearest(step: int, scale: float) -> None:
    set_text_step(step)
    assert text_scale() == scale
