"""What is said at the foot is read to its end, or ends in dots."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget
from pytestqt.qtbot import QtBot

from gui.foot import Foot

REFUSED = 'door has no place there, because the slope is too low: the nearest is 74 13/16".'


@pytest.fixture
def row(qtbot: QtBot) -> QWidget:
    whole = QWidget()
    qtbot.addWidget(whole)
    line = QHBoxLayout(whole)
    foot, aside = Foot(), QLabel("Wall D: 20 studs, no cautions")
    foot.aside = aside
    line.addWidget(foot, 1)
    line.addWidget(aside)
    whole.resize(1400, 40)
    with qtbot.waitExposed(whole):
        whole.show()
    return whole


def foot_of(row: QWidget) -> Foot:
    found = row.findChild(Foot)
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("width", "sentence", "beside"),
    [(1400, REFUSED, True), (640, REFUSED, False), (640, "", True), (640, "Undone.", True)],
)
def test_the_totals_make_way_for_what_needs_their_place(
    row: QWidget, width: int, sentence: str, beside: bool
) -> None:
    row.resize(width, 40)
    foot = foot_of(row)
    foot.say(sentence)
    assert foot.aside is not None
    assert foot.aside.isVisible() is beside
    foot.say("")
    assert foot.aside.isVisible()


def test_they_come_again_when_the_window_grows(row: QWidget) -> None:
    foot = foot_of(row)
    assert foot.aside is not None
    row.resize(640, 40)
    foot.say(REFUSED)
    assert not foot.aside.isVisible()
    row.resize(1400, 40)
    assert foot.aside.isVisible()


def test_a_sentence_begins_large_and_is_its_own_tip(row: QWidget) -> None:
    foot = foot_of(row)
    foot.say(REFUSED)
    assert foot.text().startswith("Door has")
    assert foot.toolTip() == foot.text()


def test_what_is_too_long_for_the_window_ends_in_dots(row: QWidget) -> None:
    foot = foot_of(row)
    row.resize(200, 40)
    foot.say(REFUSED)
    long = foot.grab().toImage()
    # Another end beyond the dots leaves the picture as it is: nothing of it is cut through.
    foot.say(f"{REFUSED[:-9]}9999999999999999")
    assert foot.grab().toImage() == long
