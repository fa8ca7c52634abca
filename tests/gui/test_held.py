"""The right side shows the numbers and the fields of what is held, else of the wall or room."""

from __future__ import annotations

import msgspec
import pytest
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


OF_THE_WALL = (
    "wall",
    "leaning",
    "measured",
    "nailed",
    "raising",
    "turns",
    "nails",
    "rules",
    "plates",
    "to-room",
)
OF_BOTH = ("room", "roof-parts", "floor", *OF_THE_WALL, "habits", "plate-rules", "saw")
"""From top to bottom; what both have stands after what the room alone has above it."""

OF_THE_ROOM = ("room", "roof-parts", "floor", "turns", "habits", "plate-rules", "saw")


@pytest.mark.parametrize(
    ("key", "forms", "name"),
    [
        (None, OF_THE_WALL, "B partition"),
        (STUD, ("stud", "measured-stud", "doubled"), "B3 stud"),
        (CRIPPLE, ("stud", "measured-stud"), "B8 cripple"),
        (DOOR, ("opening", "leaf"), "door 1 door"),
        ("B/door-1/king/left", ("opening", "leaf", "measured-stud"), "B5 king stud"),
        (BOX, ("box",), "box 1 box"),
        ("B/end/left", ("measured-stud", "fixed", "doubled"), "B1 stud"),
        ("B/sole", ("fixed",), "B17 sole plate"),
    ],
)
def test_each_thing_has_its_numbers_and_fields(
    desk: Desk, held: Held, key: str | None, forms: tuple[str, ...], name: str
) -> None:
    desk.hold(key)
    assert held.stands == forms
    assert held.numbers.accessibleName() == name


def test_the_numbers_are_said_to_those_who_listen(desk: Desk, held: Held) -> None:
    desk.hold(STUD)
    said = held.numbers.accessibleDescription()
    assert said.startswith('Long point 89 1/8"; Short point 87 5/8"; Cut, set from square bevel')


def test_without_a_wall_the_room_is_shown(qtbot: QtBot) -> None:
    held = Held(desk_of(msgspec.structs.replace(loft(), walls=())))
    qtbot.addWidget(held)
    assert held.stands == OF_THE_ROOM
    assert held.numbers.isHidden()


def test_from_a_wall_one_press_leads_to_the_forms_of_the_room(desk: Desk, held: Held) -> None:
    held.forms.to_room.click()
    held.refresh()
    assert desk.letter is None
    # The wall it came from is held there.
    assert set(held.stands) == {"plan-wall", *OF_THE_ROOM}
    desk.hold(None)
    assert held.stands == OF_THE_ROOM


def test_a_section_unfolds_when_pressed(held: Held) -> None:
    section = held.part("habits")
    assert isinstance(section, Section)
    section.button.click()
    habits = held.forms.habits
    assert habits.parentWidget() is section
    assert not habits.isHidden()
    section.button.click()
    assert habits.isHidden()


def test_what_is_folded_is_not_yet_made(held: Held) -> None:
    """A start has to show no more than the wall's own fields."""
    assert "wall" in vars(held.forms)
    assert not {"rules", "nails", "saw", "opening", "room"} & vars(held.forms).keys()


def test_forms_stand_in_their_order_whenever_they_are_made(desk: Desk, held: Held) -> None:
    desk.hold(DOOR)
    desk.show_room()
    desk.show_wall("B")
    held.refresh()
    at = [held.column.indexOf(held.part(name)) for name in OF_BOTH]
    assert at == sorted(at)
    assert held.stands == OF_THE_WALL


def test_standing_cautions_stand_there_while_nothing_is_held(desk: Desk, held: Held) -> None:
    assert not held.standing.isHidden()
    desk.hold(STUD)
    assert held.standing.isHidden()
