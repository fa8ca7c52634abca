"""The right side shows the numbers and the fields of what is held, else of the wall or room."""

from __future__ import annotations

import msgspec
import pytest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from gui.desk import Desk
from gui.held import Held
from gui.panels.section import Section
from loft import BOX, CRIPPLE, DOOR, STUD, desk_of, loft


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


@pytest.fixture
def held(desk: Desk, qtbot: QtBot) -> Held:
    made = Held(desk)
    qtbot.addWidget(made)
    return made


OF_THE_WALL = [
    "wall",
    "rules",
    "measured",
    "nailed",
    "raising",
    "nails",
    "plates",
    "to_room",
]
OF_THE_ROOM = ["room", "roof_parts", "habits", "plate_rules", "saw"]


def shown(held: Held) -> list[str]:
    names = ("opening", "leaf", "box", "stud", "doubled", "fixture", *OF_THE_WALL, *OF_THE_ROOM)
    return [name for name in names if not _outer(held, name).isHidden()]


def _outer(held: Held, name: str) -> QWidget:
    form: QWidget = getattr(held, name.replace("-", "_"))
    parent = form.parentWidget()
    return parent if isinstance(parent, Section) else form


@pytest.mark.parametrize(
    ("key", "forms", "name"),
    [
        (None, OF_THE_WALL, "B partition"),
        (STUD, ["stud", "doubled"], "B3 stud"),
        (CRIPPLE, ["stud"], "B8 cripple"),
        (DOOR, ["opening", "leaf"], "door 1 door"),
        ("B/door-1/king/left", ["opening", "leaf"], "B5 king stud"),
        (BOX, ["box"], "box 1 box"),
        ("B/end/left", ["doubled"], "B1 stud"),
        ("B/sole", [], "B17 sole plate"),
    ],
)
def test_each_thing_has_its_numbers_and_fields(
    desk: Desk, held: Held, key: str | None, forms: list[str], name: str
) -> None:
    desk.hold(key)
    assert shown(held) == forms
    assert held.numbers.accessibleName() == name


def test_the_numbers_are_said_to_those_who_listen(desk: Desk, held: Held) -> None:
    desk.hold(STUD)
    said = held.numbers.accessibleDescription()
    assert said.startswith('Long point 89 1/8"; Short point 87 5/8"; Cut, set from square bevel')


def test_without_a_wall_the_room_is_shown(qtbot: QtBot) -> None:
    held = Held(desk_of(msgspec.structs.replace(loft(), walls=())))
    qtbot.addWidget(held)
    assert shown(held) == OF_THE_ROOM
    assert held.numbers.isHidden()


def test_from_a_wall_one_press_leads_to_the_forms_of_the_room(desk: Desk, held: Held) -> None:
    held.to_room.click()
    held.refresh()
    assert (desk.letter, shown(held)) == (None, OF_THE_ROOM)


def test_a_section_unfolds_when_pressed(held: Held) -> None:
    section = held.habits.parentWidget()
    assert isinstance(section, Section)
    assert held.habits.isHidden()
    section.button.click()
    assert not held.habits.isHidden()
    section.button.click()
    assert held.habits.isHidden()


def test_standing_cautions_stand_there_while_nothing_is_held(desk: Desk, held: Held) -> None:
    assert not held.standing.isHidden()
    desk.hold(STUD)
    assert held.standing.isHidden()
