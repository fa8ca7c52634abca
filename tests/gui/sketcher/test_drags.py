"""Drags that the small loft has nothing for: a window up and down, backing, a kept-clear zone.

Each is one edit, and its twin is taken back with Escape.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt

from core.model import Project
from gui.desk import Desk
from gui.edits import add_fixture, add_zone, set_fixture
from gui.edits.stating import stated
from hand import SHIFT, Hand
from loft import INCH, loft, with_window

Key = Qt.Key

Place = tuple[float, float]


def with_rail() -> Project:
    """Backing 5 1/2 in. high from 10 to 50, its middle 30 up."""
    project = add_fixture(loft(), "B")
    to = {"left": stated(project, 10 * INCH), "height": stated(project, 30 * INCH)}
    return set_fixture(project, "B", "backing-1", **to)


def with_zone() -> Project:
    """Kept clear from 54 to 66, 12 to 36 up, in a wall without its door."""
    project = with_window()
    return add_zone(project, "B")


def window(project: Project) -> Place:
    opening = project.wall("B").opening("window-1")
    return opening.left.mm / INCH, opening.sill.mm / INCH


def rail(project: Project) -> Place:
    (fixture,) = project.wall("B").fixtures
    return fixture.left.mm / INCH, fixture.height.mm / INCH


def zone(project: Project) -> Place:
    (found,) = project.wall("B").kept_clear
    return found.left.mm / INCH, found.bottom.mm / INCH


# What stands there, where it is pressed and dragged to (inches), what is looked at, where it is
# then, and the text of undo. About 6 px are an inch: places are good to a step or two.
DRAGS = [
    pytest.param(with_window, (75, 60), (75, 66), window, (60.0, 46.0), "window 1", id="up"),
    pytest.param(with_window, (75, 60), (75, 52), window, (60.0, 32.0), "window 1", id="down"),
    # Pulled aside, it keeps its height however the hand wavers.
    pytest.param(with_window, (75, 60), (70, 61), window, (55.0, 40.0), "window 1", id="aside"),
    pytest.param(with_rail, (24, 30), (28, 40), rail, (14.0, 40.0), "backing 1", id="backing"),
    pytest.param(with_zone, (55.2, 20), (35.2, 30), zone, (34.0, 22.0), "kept clear 1", id="zone"),
]

drags = pytest.mark.parametrize(("make", "start", "end", "look", "there", "name"), DRAGS)


@drags
def test_a_drag_is_one_edit(
    hand: Hand,
    desk: Desk,
    make: Callable[[], Project],
    start: Place,
    end: Place,
    look: Callable[[Project], Place],
    there: Place,
    name: str,
) -> None:
    desk.commit("made", make())
    hand.drag(start, end)
    assert look(desk.project) == pytest.approx(there, abs=0.6)
    assert desk.undo_text == f"Move {name}"
    desk.undo()
    assert desk.project == make()


@drags
def test_escape_takes_it_back(
    hand: Hand,
    desk: Desk,
    make: Callable[[], Project],
    start: Place,
    end: Place,
    look: Callable[[Project], Place],
    there: Place,
    name: str,
) -> None:
    desk.commit("made", make())
    hand.press(*start)
    hand.move(*end)
    assert look(desk.project) == pytest.approx(there, abs=0.6), name
    hand.key(Key.Key_Escape)
    hand.release(*end)
    assert desk.project == make()
    assert desk.undo_text == "made"


def test_a_window_stops_under_the_plates_and_says_why(
    hand: Hand, desk: Desk, sayings: list[str]
) -> None:
    desk.commit("made", with_window())
    # The plate's underside is at 106 1/2, less a header's 1 1/2 and 40 of window: a sill at 65.
    hand.press(75, 60)
    hand.move(75, 98, SHIFT)
    assert window(desk.project)[1] == pytest.approx(65.0)
    assert sayings[-1] == ('window 1: sill at 65", as far as it goes: the slope is too low beyond')
    hand.release(75, 98)
