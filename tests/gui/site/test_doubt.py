"""A step that would spoil cut pieces is told first, and made only if the person says so."""

from __future__ import annotations

from pathlib import Path

import msgspec
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from asked import Asked
from core.lengths import Length
from core.model import Project, SiteRecord
from core.storage import Document
from gui.asking import Leave
from gui.desk import Desk
from gui.edits import delete
from gui.site.prints import printed
from gui.site.ticks import tick_cut
from gui.theme import Theme
from gui.window import Window
from loft import STUD, loft

ASKED = Asked(leaves=Leave.DISCARD)


@pytest.fixture
def desk() -> Desk:
    desk = Desk(Document(loft(), SiteRecord()))
    desk.show_wall("B")
    return desk


def cut(desk: Desk, key: str) -> None:
    assert desk.result is not None
    desk.record(tick_cut(desk.site, desk.result, key))


def named() -> Project:
    return msgspec.structs.replace(loft(), name="another")


def lower() -> Project:
    """The loft with its left end 2 in. nearer the eave: the roof over each stud 2 in. lower."""
    wall = loft().wall("B")
    end = msgspec.structs.replace(wall.left_end, across=Length.of_inches(10))
    return loft().with_wall(msgspec.structs.replace(wall, left_end=end))


def test_a_step_that_spoils_nothing_is_made_at_once(desk: Desk) -> None:
    cut(desk, STUD)
    desk.commit("name", named())
    assert desk.doubt is None
    assert desk.project == named()


def test_a_step_that_spoils_a_cut_stud_waits(desk: Desk) -> None:
    cut(desk, STUD)
    desk.preview(lower())
    desk.commit("move", lower())
    assert desk.project == loft()
    assert desk.undo_text is None
    assert desk.doubt is not None
    label = desk.results.wall("B").label_of[STUD]
    # 89 1/8, and the same 2 in. less.
    said = f'{label} is cut 89 1/8" long and now has to be 87 1/8".'
    assert desk.doubt.sentence(desk.wording) == said


def test_the_person_may_go_on(desk: Desk) -> None:
    cut(desk, STUD)
    desk.commit("move", lower())
    desk.go_on()
    assert desk.project == lower()
    assert (desk.doubt, desk.undo_text) == (None, "move")
    assert [change.key for change in desk.results.wall("B").changes] == [STUD]


def test_the_person_may_let_it_be(desk: Desk) -> None:
    cut(desk, STUD)
    desk.commit("move", lower())
    desk.let_be()
    assert (desk.doubt, desk.undo_text) == (None, None)
    desk.go_on()
    assert desk.project == loft()


def test_what_is_spoilt_already_is_not_told_again(desk: Desk) -> None:
    cut(desk, STUD)
    desk.commit("move", lower())
    desk.go_on()
    desk.commit("name", msgspec.structs.replace(lower(), name="another"))
    assert desk.doubt is None


def test_another_step_takes_the_place_of_the_doubted_one(desk: Desk) -> None:
    cut(desk, STUD)
    desk.commit("move", lower())
    desk.commit("name", named())
    assert desk.doubt is None
    assert desk.project.name == "another"


def test_undo_and_redo_are_doubted_too(desk: Desk) -> None:
    desk.commit("move", lower())
    cut(desk, STUD)
    desk.undo()
    assert desk.project == lower()
    assert desk.doubt is not None
    desk.go_on()
    assert desk.project == loft()
    assert desk.redo_text == "move"
    # Going forth mends what going back spoilt.
    desk.redo()
    assert desk.project == lower()
    assert desk.doubt is None


def test_more_than_one_piece_is_counted(desk: Desk) -> None:
    for key in (STUD, "B/layout/1", "B/end/left"):
        cut(desk, key)
    desk.commit("move", lower())
    assert desk.doubt is not None
    assert desk.doubt.sentence(desk.wording).endswith("And 2 more pieces that are cut.")


def test_deleting_a_cut_stud_is_doubted(desk: Desk) -> None:
    cut(desk, STUD)
    desk.commit("delete", delete(loft(), "B", STUD))
    assert desk.doubt is not None


def test_another_document_has_no_doubt(desk: Desk) -> None:
    cut(desk, STUD)
    desk.commit("move", lower())
    desk.start(Document(loft(), SiteRecord()))
    assert desk.doubt is None


@pytest.fixture
def window(qtbot: QtBot, desk: Desk) -> Window:
    window = Window(desk, Theme.day(), Path("loft.eave"), ASKED)
    qtbot.addWidget(window)
    window.resize(1400, 860)
    window.show()
    return window


def test_the_bar_stands_only_while_there_is_doubt(window: Window) -> None:
    assert not window.doubt.isVisible()
    cut(window.desk, STUD)
    window.desk.commit("move", lower())
    assert window.doubt.isVisible()
    assert 'is cut 89 1/8" long' in window.doubt.text.text()
    QTest.mouseClick(window.doubt.go_on, Qt.MouseButton.LeftButton)
    assert not window.doubt.isVisible()
    assert window.desk.project == lower()


def test_escape_leaves_what_is_cut(window: Window) -> None:
    cut(window.desk, STUD)
    window.desk.commit("move", lower())
    QTest.keyClick(window.doubt, Qt.Key.Key_Escape)
    assert not window.doubt.isVisible()
    assert window.desk.project == loft()


def test_the_sheet_on_site_is_told_to_be_stale(window: Window) -> None:
    desk, since = window.desk, window.held.forms.since
    assert not since.stands
    desk.record(printed(desk.site, desk.results, "2026-03-01"))
    window.held.refresh()
    assert since.isVisible()
    assert "2026-03-01" in since.title.text()
    assert "Nothing changed" in since.text.text()
    desk.commit("move", lower())
    window.held.refresh()
    assert 'was 89 1/8" long, now 87 1/8".' in since.text.text()
