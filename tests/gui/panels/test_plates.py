"""The panel of the top plates: their lie is one edit, and the section follows it."""

from __future__ import annotations

import msgspec
import pytest
from pytestqt.qtbot import QtBot

from core.lengths import System
from core.model import PlateLie, Project
from gui.desk import Desk
from gui.panels.plates import PlatesForm
from loft import desk_of
from walls import US, in_12


def knee_wall() -> Project:
    """A knee wall at u = 48 under 9 in 12, its plate a 2x6."""
    room = US.room(264, (12, in_12(9)), (12, in_12(9)))
    return Project("loft", System.INCH, room, (US.wall((48, 0), (48, 288), plate=(1.5, 5.5)),))


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of(knee_wall())


@pytest.fixture
def form(desk: Desk, qtbot: QtBot) -> PlatesForm:
    made = PlatesForm(desk, desk.wording)
    qtbot.addWidget(made)
    made.refresh()
    return made


def choose(form: PlatesForm, text: str) -> None:
    form.lie.setCurrentText(text)
    form.lie.activated.emit(form.lie.currentIndex())


@pytest.mark.parametrize(
    ("text", "lie", "note"),
    [
        ("tilted, ripped plumb", PlateLie.RIPPED, 'each broad face 4 3/8" wide.'),
        ("level", PlateLie.LEVEL, 'Eave-side edge: 2" proud of the studs.'),
    ],
)
def test_the_lie_is_one_edit(
    form: PlatesForm, desk: Desk, text: str, lie: PlateLie, note: str
) -> None:
    assert form.lie.currentText() == "tilted, square edges"
    tilted = form.picture.sizeHint()
    choose(form, text)
    assert desk.wall is not None
    assert desk.wall.top_plate.lie is lie
    assert desk.undo_text == "Top plate lies of wall B"
    assert note in form.notes.text()
    assert form.picture.sizeHint() != tilted
    desk.undo()
    form.refresh()
    assert form.lie.currentText() == "tilted, square edges"
    assert form.picture.sizeHint() == tilted


def test_there_is_nothing_to_choose_under_a_level_roof(form: PlatesForm, desk: Desk) -> None:
    room = US.room(264, left=(96, in_12(0)))
    desk.commit("flat", msgspec.structs.replace(desk.project, room=room))
    form.refresh()
    assert not form.lie.isEnabled()
    assert form.picture.isHidden()
    assert form.notes.text().startswith("The roof is level through this wall")


def test_the_picture_is_painted_by_day_and_by_night(form: PlatesForm) -> None:
    form.resize(360, 400)
    shades = []
    for ink in ("#2a2724", "#ece5d5"):
        form.setStyleSheet(f"* {{ color: {ink}; }}")
        form.show()
        image = form.picture.grab().toImage()
        middle = image.pixelColor(image.width() // 2, image.height() // 2)
        shades.append(middle.lightness())
    assert shades[0] > shades[1]
