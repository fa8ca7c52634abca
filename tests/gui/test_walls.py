"""The list of the room and its walls."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from core.job import work_out
from core.model import SiteRecord
from gui.desk import Desk
from gui.edits import add_wall, delete, delete_wall
from gui.theme import Theme
from gui.walls import Walls, buildable, detail_of
from gui.wordings import wording_of
from loft import STUD, desk_of, loft


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of(add_wall(loft(), "Other wall", "B"))


@pytest.fixture
def walls(desk: Desk, qtbot: QtBot) -> Walls:
    made = Walls(desk, Theme.day())
    qtbot.addWidget(made)
    return made


def names(walls: Walls) -> list[str]:
    return [walls.list.item(row).text() for row in range(walls.list.count())]


def test_it_lists_the_walls_and_marks_the_one_shown(walls: Walls) -> None:
    assert names(walls) == ["The room", "partition", "Other wall"]
    assert walls.list.currentRow() == 1


def test_choosing_one_shows_it(desk: Desk, walls: Walls) -> None:
    walls.list.setCurrentRow(2)
    assert desk.letter == "A"
    walls.list.setCurrentRow(0)
    assert desk.held == "A"
    assert desk.letter is None


def test_it_follows_the_desk(desk: Desk, walls: Walls) -> None:
    desk.show_wall("A")
    walls.refresh()
    assert walls.list.currentRow() == 2
    desk.commit("delete", delete_wall(desk.project, "A"))
    walls.refresh()
    assert names(walls) == ["The room", "partition"]
    assert walls.list.currentRow() == 0


def test_the_room_is_told_by_its_size(walls: Walls) -> None:
    said = walls.list.item(0).data(Qt.ItemDataRole.AccessibleTextRole)
    assert said == 'The room, 240" × 400"'


def test_it_counts_studs_or_says_what_cannot_be_built() -> None:
    # End studs and places 1, 2, 3, 6 and 7.
    good = work_out(loft(), SiteRecord()).wall("B")
    assert (buildable(good), detail_of(good, wording_of(loft()))) == (True, "7 studs")
    bad = work_out(delete(loft(), "B", STUD), SiteRecord()).wall("B")
    assert (buildable(bad), detail_of(bad, wording_of(loft()))) == (False, "cannot be built")


def test_the_mark_is_seen_by_day_and_by_night(desk: Desk, walls: Walls) -> None:
    walls.resize(220, 300)
    good = walls.list.grab().toImage()
    desk.commit("delete", delete(desk.project, "B", STUD))
    walls.refresh()
    bad = walls.list.grab().toImage()
    assert bad != good
    walls.set_theme(Theme.night())
    assert walls.list.grab().toImage() != bad
