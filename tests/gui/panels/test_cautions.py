"""The column of cautions."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from core.checks import Caution, Severity
from core.model import Project
from core.wording import message
from gui.edits import delete
from gui.panels.cautions import CautionRow, Cautions, grave_first
from loft import BOX, STUD, desk_of, loft


def without_a_stud() -> Project:
    """The box of the loft has lost its stud."""
    return delete(loft(), "B", STUD)


def rows(cautions: Cautions) -> list[CautionRow]:
    return [row for row in cautions.findChildren(CautionRow) if not row.isHidden()]


def test_a_caution_says_how_grave_it_is_and_what_to_do(qtbot: QtBot) -> None:
    desk = desk_of(without_a_stud())
    cautions = Cautions(desk)
    qtbot.addWidget(cautions)
    assert desk.result is not None
    cautions.show_cautions(desk.result.cautions)
    (row,) = rows(cautions)
    assert row.text().startswith("Cannot be built: In wall B, box 1 has no stud")


@pytest.mark.parametrize("press", ["mouse", "key"])
def test_pressing_it_takes_hold_of_the_thing(qtbot: QtBot, press: str) -> None:
    desk = desk_of(without_a_stud())
    cautions = Cautions(desk)
    qtbot.addWidget(cautions)
    assert desk.result is not None
    cautions.show_cautions(desk.result.cautions)
    (row,) = rows(cautions)
    if press == "mouse":
        QTest.mouseClick(row, Qt.MouseButton.LeftButton)
    else:
        QTest.keyClick(row, Qt.Key.Key_Return)
    assert desk.held == BOX


def test_without_cautions_there_is_no_room_taken(qtbot: QtBot) -> None:
    cautions = Cautions(desk_of(), "severity.standing")
    qtbot.addWidget(cautions)
    cautions.show_cautions(desk_of(without_a_stud()).results.all_cautions)
    assert not cautions.isHidden()
    cautions.show_cautions(())
    assert cautions.isHidden()


def test_the_gravest_come_first() -> None:
    made = [Caution(severity, "", message("standing.dust")) for severity in reversed(Severity)]
    assert [c.severity for c in grave_first(tuple(made))] == list(Severity)
