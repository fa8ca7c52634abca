"""The window: its menus, its title, its guard, its words and its colours."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMessageBox
from pytestqt.qtbot import QtBot

from asked import Asked
from clipping import clipped
from core.lengths import System
from core.storage import load
from gui.asking import Leave
from gui.commands import main
from gui.edits import move_opening
from gui.panels.section import Section
from gui.plan.drawing import Tool
from gui.theme import Theme
from gui.window import Window
from loft import BOX, DOOR, INCH, STUD, desk_of


class Shown:
    """A window on the loft with its answers, shown offscreen."""

    def __init__(self, qtbot: QtBot, tmp_path: Path) -> None:
        self.desk = desk_of()
        self.asked = Asked(saves=tmp_path / "mine.eave")
        self.window = Window(self.desk, Theme.day(), ask=self.asked)
        qtbot.addWidget(self.window)
        self.window.resize(1300, 800)
        with qtbot.waitExposed(self.window):
            self.window.show()

    def do(self, name: str) -> None:
        self.window.menus.actions[f"action.{name}"].trigger()

    def move(self) -> None:
        project = move_opening(self.desk.project, "B", "door-1", 68 * INCH)
        self.desk.commit("move door 1", project)

    def held(self) -> str | None:
        return self.desk.held

    def text(self, name: str) -> str:
        return self.window.menus.actions[f"action.{name}"].text()

    def enabled(self, name: str) -> bool:
        return self.window.menus.actions[f"action.{name}"].isEnabled()


@pytest.fixture
def shown(qtbot: QtBot, tmp_path: Path) -> Shown:
    made = Shown(qtbot, tmp_path)
    # A window that is closed at the end of a test must not ask.
    made.asked.leaves = Leave.DISCARD
    return made


def test_the_menus_hold_everything(shown: Shown) -> None:
    menus = [action.text() for action in shown.window.menuBar().actions()]
    assert menus == ["&File", "&Edit", "&View", "&Help"]
    names = {name.removeprefix("action.") for name in shown.window.menus.actions}
    assert names == {
        *("new-inch", "new-metric", "open", "save", "save-as", "print", "drawing", "quit"),
        *(
            "undo",
            "redo",
            "duplicate",
            "hold-all",
            "delete",
            "add-stud",
            "add-door",
            "add-access-door",
            "add-window",
        ),
        *("add-pass-through", "add-cased-opening"),
        *(
            "add-box",
            "add-fixture",
            "add-zone",
            "put-back",
            "add-wall",
            "delete-wall",
            *("copy-wall", "mirror-wall", "turn-wall", "turn-face"),
            "fit",
            "zoom-in",
            "zoom-out",
            "show-room",
            *("demo-inch", "demo-metric", "as-system", "larger", "smaller"),
            *("help", "what-is-this", "card"),
            "list",
            "walk",
            "next-part",
            "previous-part",
            "night",
            "about",
        ),
    }
    shortcuts = [a.shortcut().toString() for a in shown.window.menus.actions.values()]
    used = [s for s in shortcuts if s]
    assert len(used) == len(set(used))
    assert {"Ctrl+N", "Ctrl+O", "Ctrl+S", "Ctrl+P", "Ctrl+Z", "Del", "Ctrl+Q"} <= set(used)


def test_undo_and_redo_say_what_they_do(shown: Shown, qtbot: QtBot) -> None:
    assert (shown.text("undo"), shown.enabled("undo")) == ("&Undo", False)
    shown.move()
    qtbot.waitUntil(lambda: shown.enabled("undo"))
    assert shown.text("undo") == "&Undo: move door 1"
    shown.do("undo")
    qtbot.waitUntil(lambda: shown.text("redo") == "&Redo: move door 1")
    assert not shown.enabled("undo")


@pytest.mark.parametrize(("key", "can"), [(None, False), (STUD, True), ("B/sole", False)])
def test_delete_is_offered_where_something_can_be_deleted(
    shown: Shown, key: str | None, can: bool
) -> None:
    shown.desk.hold(key)
    assert shown.enabled("delete") is can


def test_without_a_wall_nothing_is_offered_for_it(shown: Shown, qtbot: QtBot) -> None:
    shown.do("delete-wall")
    qtbot.waitUntil(lambda: not shown.enabled("add-stud"))
    assert not shown.enabled("add-box")
    assert shown.enabled("add-wall")
    assert not shown.enabled("delete-wall")
    shown.do("add-wall")
    qtbot.waitUntil(lambda: shown.enabled("delete-wall"))
    shown.desk.show_wall("A")
    assert shown.enabled("add-stud")


def test_the_button_under_the_list_begins_a_wall_in_the_plan(shown: Shown) -> None:
    page = shown.window.middle.room.page
    shown.window.walls.add.click()
    assert shown.window.middle.currentWidget() is shown.window.middle.room
    assert (page.plan.busy, page.buttons[Tool.WALL].isChecked()) == (True, True)
    page.buttons[Tool.WALL].click()
    assert (page.plan.busy, page.buttons[Tool.WALL].isChecked()) == (False, False)


def test_the_middle_shows_the_room_or_the_wall_and_keeps_the_keys(shown: Shown) -> None:
    middle = shown.window.middle
    shown.window.activateWindow()
    shown.window.sheet.setFocus()
    shown.do("show-room")
    assert middle.currentWidget() is middle.room
    assert middle.room.plan.hasFocus()
    near = middle.room.plan.camera
    shown.do("zoom-in")
    assert middle.room.plan.camera.scale > near.scale
    shown.do("fit")
    assert middle.room.plan.camera == near
    QTest.keyClick(middle.room.plan, Qt.Key.Key_Return)
    assert (shown.desk.letter, middle.currentWidget()) == ("B", middle.wall)
    assert shown.window.sheet.hasFocus()


def test_a_wall_comes_back_while_something_of_another_is_held(shown: Shown, qtbot: QtBot) -> None:
    shown.do("add-wall")
    shown.desk.show_wall("B")
    shown.do("delete-wall")
    shown.desk.show_wall("A")
    shown.do("add-stud")
    assert shown.held() == "A/stud-1"
    shown.do("undo")
    shown.do("undo")
    assert (shown.desk.letter, shown.held()) == ("B", None)
    numbers = shown.window.held.numbers
    qtbot.waitUntil(lambda: numbers.accessibleName() == "B partition")


def test_the_title_names_the_file_and_marks_unsaved_work(shown: Shown, qtbot: QtBot) -> None:
    assert shown.window.windowTitle() == "loft[*] - Eavewright"
    assert not shown.window.isWindowModified()
    shown.move()
    qtbot.waitUntil(shown.window.isWindowModified)
    shown.do("save")
    qtbot.waitUntil(lambda: not shown.window.isWindowModified())
    assert shown.window.windowTitle() == "mine.eave[*] - Eavewright"


@pytest.mark.parametrize(
    ("answer", "closes"), [(Leave.CANCEL, False), (Leave.DISCARD, True), (Leave.SAVE, True)]
)
def test_closing_asks_before_unsaved_work_is_lost(
    shown: Shown, answer: Leave, closes: bool, tmp_path: Path
) -> None:
    shown.move()
    shown.asked.leaves = answer
    assert shown.window.close() is closes
    assert shown.asked.questions[0] == "leave loft"
    if answer is Leave.SAVE:
        assert load(tmp_path / "mine.eave").project == shown.desk.project
    shown.asked.leaves = Leave.DISCARD


def test_what_is_said_stands_at_the_foot(shown: Shown) -> None:
    shown.desk.said.emit("It snapped to the layout")
    assert shown.window.foot.text() == "It snapped to the layout"


def test_a_long_line_at_the_foot_does_not_widen_the_window(shown: Shown) -> None:
    before = shown.window.minimumSizeHint().width()
    shown.desk.said.emit("A very long sentence. " * 40)
    QApplication.processEvents()
    assert shown.window.minimumSizeHint().width() == before


def test_the_panels_follow_a_drag(shown: Shown, qtbot: QtBot) -> None:
    shown.desk.hold(DOOR)
    left = shown.window.held.forms.opening.left
    for step in range(1, 9):
        project = move_opening(shown.desk.document.project, "B", "door-1", (60 + step) * INCH)
        shown.desk.preview(project)
    qtbot.waitUntil(lambda: left.text() == "68 in")
    shown.desk.drop_preview()
    qtbot.waitUntil(lambda: left.text() == "60 in")


def begin(shown: Shown, name: str) -> None:
    """A new room, its questions passed over, with a first wall."""
    shown.do(name)
    assert shown.window.page is not None
    shown.window.page.begin()
    assert shown.window.held.forms.room.words is shown.desk.wording
    shown.do("add-wall")
    shown.desk.show_wall("A")


def test_metric_work_has_metric_words(shown: Shown, qtbot: QtBot) -> None:
    begin(shown, "new-metric")
    assert shown.desk.project.system is System.METRIC
    qtbot.waitUntil(lambda: shown.window.walls.list.count() == 2)
    shown.do("add-door")
    captions = shown.window.held.numbers.accessibleDescription()
    assert captions.startswith("Structural opening 900 mm × 2060 mm")
    begin(shown, "new-inch")
    shown.do("add-door")
    captions = shown.window.held.numbers.accessibleDescription()
    assert captions.startswith('Rough opening 34" × 82 1/2"')


def test_a_new_room_is_asked_for_over_the_work_at_hand(shown: Shown) -> None:
    shown.move()
    before = shown.desk.document
    shown.do("new-inch")
    page = shown.window.page
    assert page is not None
    assert shown.window.pages.currentWidget() is page
    assert not shown.enabled("undo")
    assert not shown.enabled("save")
    assert shown.enabled("open")
    QTest.keyClick(page.questions.across, Qt.Key.Key_Escape)
    assert shown.window.page is None
    assert shown.desk.document == before
    assert shown.enabled("undo")
    assert shown.asked.questions == []


@pytest.mark.parametrize("answer", [Leave.CANCEL, Leave.DISCARD])
def test_unsaved_work_is_asked_about_when_the_new_room_begins(shown: Shown, answer: Leave) -> None:
    shown.move()
    shown.asked.leaves = answer
    shown.do("new-inch")
    assert shown.window.page is not None
    shown.window.page.begin()
    begun = answer is Leave.DISCARD
    assert shown.asked.questions == ["leave loft"]
    assert (shown.window.page is None, shown.desk.project.name == "New room") == (begun, begun)
    shown.asked.leaves = Leave.DISCARD


def test_a_room_that_was_answered_is_unsaved_work_and_one_step_of_undo(shown: Shown) -> None:
    shown.do("new-inch")
    page = shown.window.page
    assert page is not None
    QTest.keyClicks(page.questions.across, "20'")
    QTest.keyClick(page.questions.across, Qt.Key.Key_Return)
    page.begin()
    assert shown.desk.letter is None
    assert shown.desk.project.room.width.mm == 240 * INCH
    assert shown.text("undo") == "&Undo: setting up the room"
    assert not shown.desk.is_clean
    assert shown.window.middle.paper.hasFocus()


@pytest.mark.parametrize(
    ("answer", "closes"), [(Leave.CANCEL, False), (Leave.DISCARD, True), (Leave.SAVE, True)]
)
def test_closing_asks_before_answers_are_lost(
    shown: Shown, answer: Leave, closes: bool, tmp_path: Path
) -> None:
    shown.do("new-inch")
    page = shown.window.page
    assert page is not None
    QTest.keyClicks(page.questions.across, "20'")
    QTest.keyClick(page.questions.across, Qt.Key.Key_Return)
    shown.asked.leaves = answer
    assert shown.window.close() is closes
    assert shown.asked.questions[0] == "leave New room"
    if answer is Leave.SAVE:
        assert load(tmp_path / "mine.eave").project.room.width.mm == 240 * INCH
    shown.asked.leaves = Leave.DISCARD


def test_another_new_room_begins_its_questions_anew(shown: Shown) -> None:
    shown.do("new-inch")
    first = shown.window.page
    shown.do("new-metric")
    second = shown.window.page
    assert second is not None
    assert second is not first
    assert second.questions.across.text() == "7 m"
    assert shown.window.pages.count() == 2


def test_what_the_page_has_to_say_stands_at_the_foot(shown: Shown) -> None:
    shown.do("new-inch")
    assert shown.window.page is not None
    shown.window.page.desk.said.emit("Left eave 48")
    assert shown.window.foot.text() == "Left eave 48"
    shown.do("night")
    assert shown.window.page.section.theme.dark


def test_day_turns_to_night_and_back(shown: Shown) -> None:
    assert not shown.window.theme.dark
    before = shown.window.grab().toImage().pixelColor(5, 400)
    shown.do("night")
    assert shown.window.theme.dark
    assert shown.window.menus.actions["action.night"].isChecked()
    assert shown.window.grab().toImage().pixelColor(5, 400).lightness() < before.lightness()
    shown.do("night")
    assert shown.window.grab().toImage().pixelColor(5, 400) == before


def test_the_paper_is_chosen_in_the_menu(shown: Shown) -> None:
    names = {paper.value: action for paper, action in shown.window.menus.papers.items()}
    assert names["letter"].isChecked()
    names["a3"].trigger()
    assert shown.window.files.paper_used.value == "a3"
    assert not names["letter"].isChecked()


def test_about_says_that_nothing_is_judged(shown: Shown, monkeypatch: pytest.MonkeyPatch) -> None:
    texts: list[str] = []
    monkeypatch.setattr(
        QMessageBox, "exec", lambda box: texts.append(box.text() + box.informativeText())
    )
    shown.do("about")
    assert "judges no structure" in texts[0]
    assert "Never cut, notch or move a rafter" in texts[0]


def test_zoom_and_fit_come_from_the_menu(shown: Shown) -> None:
    start = shown.window.sheet.camera
    shown.do("zoom-in")
    assert shown.window.sheet.camera.scale > start.scale
    shown.do("zoom-out")
    assert shown.window.sheet.camera.scale == pytest.approx(start.scale)
    shown.do("zoom-in")
    shown.do("fit")
    assert shown.window.sheet.camera == start


def test_undo_reaches_the_window_from_a_field_after_enter(shown: Shown, qtbot: QtBot) -> None:
    shown.window.activateWindow()
    shown.desk.hold(DOOR)
    field = shown.window.held.forms.opening.left
    field.setFocus()
    field.selectAll()
    QTest.keyClicks(field, "68")
    QTest.keyClick(field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: shown.enabled("undo"))
    assert field.text() == "68 in"
    QTest.keyClick(field, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: field.text() == "60 in")


def test_escape_in_a_field_gives_the_keys_back_to_the_sheet(shown: Shown) -> None:
    shown.window.activateWindow()
    shown.desk.hold(DOOR)
    field = shown.window.held.forms.opening.left
    field.setFocus()
    QTest.keyClick(field, Qt.Key.Key_Escape)
    assert shown.desk.held is None
    assert shown.window.sheet.hasFocus()


def test_delete_in_a_field_deletes_letters_and_nothing_else(shown: Shown) -> None:
    shown.window.activateWindow()
    shown.desk.hold(BOX)
    field = shown.window.held.forms.box.box_height
    field.setFocus()
    field.selectAll()
    QTest.keyClick(field, Qt.Key.Key_Delete)
    assert field.text() == ""
    assert shown.desk.wall is not None
    assert len(shown.desk.wall.boxes) == 1


@pytest.mark.parametrize("size", [(1000, 640), (1900, 1000)])
@pytest.mark.parametrize("key", [None, STUD, DOOR, BOX])
def test_nothing_in_the_panels_is_clipped(
    shown: Shown, qtbot: QtBot, size: tuple[int, int], key: str | None
) -> None:
    shown.window.resize(*size)
    shown.desk.hold(key)
    qtbot.waitUntil(lambda: clipped(shown.window.held) == [])


@pytest.mark.parametrize("more", [(), ("--metric",)], ids=["inch", "metric"])
def test_nothing_of_the_demo_is_clipped(
    shown: Shown, qtbot: QtBot, tmp_path: Path, more: tuple[str, ...]
) -> None:
    path = tmp_path / "demo.eave"
    assert main(["demo", *more, "--out", str(path)]) == 0
    assert shown.window.files.open_path(path)
    held = shown.window.held
    for section in held.findChildren(Section):
        section.button.click()
    shown.desk.show_room()
    held.refresh()
    qtbot.waitUntil(lambda: clipped(shown.window.held) == [])
    for wall in shown.desk.project.walls:
        shown.desk.show_wall(wall.letter)
        ids = ("layout/1", *(o.id for o in wall.openings), *(b.id for b in wall.boxes))
        for key in (None, *(f"{wall.letter}/{name}" for name in ids)):
            shown.desk.hold(key)
            held.refresh()
            qtbot.waitUntil(lambda: clipped(shown.window.held) == [])
