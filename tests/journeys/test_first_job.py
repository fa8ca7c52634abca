"""A first job through a real window: move the door, think again, save, reopen, print.

At every step the numbers on the screen are those of the figures, rounded to the tape.
"""

from __future__ import annotations

import io
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from asked import Asked
from core.drawing import Pen, Text
from core.output.figures import figures
from core.storage import load
from gui.asking import Leave
from gui.commands import main
from gui.desk import Desk
from gui.sketcher.camera import Camera
from gui.theme import Theme
from gui.window import Window
from settling import settle

INCH = 25.4
SCALE = 100 / (8 * INCH)
"""px for each mm, so that 8 in. are 100 px and every step of 1/8 in. is more than one."""

LEFT = Qt.MouseButton.LeftButton


class Job:
    """A window on the demo's file, shown offscreen, with the answers it will be given."""

    def __init__(self, path: Path, qtbot: QtBot) -> None:
        self.qtbot, self.path = qtbot, path
        self.asked = Asked(saves=path.with_suffix(".pdf"), leaves=Leave.DISCARD)
        self.desk = Desk(load(path))
        self.window = Window(self.desk, Theme.day(), path, self.asked)
        qtbot.addWidget(self.window)
        self.window.resize(1500, 950)
        with qtbot.waitExposed(self.window):
            self.window.show()
        self.desk.show_wall("C")
        self.window.sheet.look(Camera(SCALE, 40.0, self.window.sheet.height() - 140.0))

    def do(self, name: str) -> None:
        self.window.menus.actions[f"action.{name}"].trigger()

    def point(self, across: float, up: float) -> QPoint:
        """Where a point of the wall, in inches, stands on the sheet."""
        x, y = self.window.sheet.camera.to_screen((across * INCH, up * INCH))
        return QPoint(round(x), round(y))

    def drag(self, start: QPoint, by: QPoint, end: Qt.Key | None = None) -> None:
        """Presses, moves in ten steps, and lets go or presses a key first."""
        sheet, none = self.window.sheet, Qt.KeyboardModifier.NoModifier
        QTest.mousePress(sheet, LEFT, none, start)
        for step in range(1, 11):
            QTest.mouseMove(sheet, start + by * step / 10)
            self.agrees()
        if end is not None:
            QTest.keyClick(sheet, end)
        QTest.mouseRelease(sheet, LEFT, none, start + by)

    def door_left(self) -> float:
        assert self.desk.wall is not None
        return self.desk.wall.opening("door-1").left.mm / INCH

    def wall_figures(self) -> dict[str, Any]:
        found = figures(self.desk.results, self.desk.wording)["walls"]
        return next(wall for wall in found if wall["letter"] == "C")

    def texts(self, pen: Pen) -> set[tuple[str, str]]:
        """The keys and texts that the sheet shows with a pen."""
        drawing = self.window.sheet.scene().drawing
        return {(e.key, e.text) for e in drawing if isinstance(e, Text) and e.pen is pen}

    def agrees(self) -> None:
        """The numbers on the screen are those of the figures, rounded to the tape."""
        wall, tape = self.wall_figures(), self.desk.project.habits.tape
        members = {m["key"]: m for m in wall["members"]}
        lengths = self.texts(Pen.LENGTH)
        assert len(lengths) > 12
        for key, text in lengths:
            assert text == tape.text(members[key]["long_point"])
        for key, text in self.texts(Pen.LABEL):
            assert text == members[key]["label"]
        plates = {key for key in members if key.endswith("/sole") or "/top/" in key}
        wanted = set()
        for mark in wall["marks"]:
            if mark["plate"] in plates:
                top = mark["along_top"]
                along = mark["along_sole"] if top is None else top
                wanted.add((mark["member"], frozenset((tape.text(along), mark["letter"]))))
        shown = {(key, _parts(text)) for key, text in self.texts(Pen.MARK)}
        assert shown == wanted

    def close(self) -> None:
        assert self.window.close()


def _parts(text: str) -> frozenset[str]:
    """The number and the letter of a mark, whichever stands first."""
    head, _, tail = text.partition(" ")
    if head.isalpha():
        return frozenset((tail, head))
    number, _, letter = text.rpartition(" ")
    return frozenset((number, letter))


@pytest.fixture
def job(tmp_path: Path, qtbot: QtBot) -> Job:
    path = tmp_path / "sail-loft.eave"
    assert main(["demo", "--out", str(path)]) == 0
    return Job(path, qtbot)


def test_the_first_job(job: Job, qtbot: QtBot) -> None:
    assert job.door_left() == 64
    job.agrees()

    # The middle of the doorway, 8 in. to the right.
    job.drag(job.point(81, 30), QPoint(100, 0))
    assert job.door_left() == 72
    assert job.desk.held == "C/door-1"
    job.agrees()
    qtbot.waitUntil(lambda: job.window.held.forms.opening.left.text() == "72 in")
    assert job.window.isWindowModified()

    job.do("undo")
    assert job.door_left() == 64
    job.agrees()
    job.do("redo")
    assert job.door_left() == 72
    job.agrees()

    job.do("save")
    assert load(job.path).project.wall("C").opening("door-1").left.mm == pytest.approx(72 * INCH)
    qtbot.waitUntil(lambda: not job.window.isWindowModified())
    before = job.wall_figures()
    job.close()

    again = Job(job.path, qtbot)
    assert again.wall_figures() == before
    again.agrees()

    again.do("print")
    settle(again.window)
    text = _printed(again.path.with_suffix(".pdf"))
    tape = again.desk.project.habits.tape
    for member in before["members"]:
        assert tape.text(member["long_point"]) in text, member["label"]
    printed = {p.key: p.label for p in again.desk.site.printed}
    assert {m["key"]: m["label"] for m in before["members"]}.items() <= printed.items()
    again.do("save")
    assert load(again.path).site == again.desk.site
    again.close()


def test_escape_takes_the_drag_back(job: Job) -> None:
    before = job.desk.document
    job.drag(job.point(81, 30), QPoint(100, 0), Qt.Key.Key_Escape)
    assert job.door_left() == 64
    assert job.desk.document == before
    assert job.desk.undo_text is None
    job.agrees()
    job.close()


def test_printed_labels_outlive_a_stud_that_is_taken_out(job: Job) -> None:
    job.do("print")
    settle(job.window)
    labels = job.desk.results.wall("C").label_of
    QTest.mouseClick(job.window.sheet, LEFT, pos=job.point(16, 30))
    assert job.desk.held == "C/layout/1"
    job.do("delete")
    after = job.desk.results.wall("C").label_of
    assert after == {key: label for key, label in labels.items() if key != "C/layout/1"}
    job.agrees()
    job.close()


def test_a_door_too_near_the_slope_stops_where_it_fits(job: Job) -> None:
    # The header's top at 84 passes under the plates from 36 on, to the left by 28 in.
    job.drag(job.point(81, 30), QPoint(-400, 0))
    assert job.door_left() == pytest.approx(36, abs=1 / 16)
    frame = job.desk.result.frame if job.desk.result else None
    assert frame is not None
    assert [placed.fit.fits for placed in frame.openings] == [True]
    job.agrees()
    job.close()


def _printed(path: Path) -> str:
    reader = PdfReader(io.BytesIO(path.read_bytes()))
    return "\n".join(page.extract_text() for page in reader.pages)
