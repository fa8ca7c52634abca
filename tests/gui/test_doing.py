"""What the menus do to the project."""

from __future__ import annotations

import msgspec
import pytest

from core.lengths import Length
from core.model import OpeningKind, PrintedLabel, SiteRecord
from core.storage import Document
from gui.desk import Desk
from gui.doing import Doing
from gui.edits import set_opening
from loft import BOX, DOOR, STUD, desk_of, loft


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


def test_a_stud_is_added_and_held(desk: Desk) -> None:
    Doing(desk).add_stud()
    assert (desk.held, desk.undo_text) == ("B/stud-1", "Add stud")


@pytest.mark.parametrize(
    ("kind", "held", "text"),
    [
        (OpeningKind.DOOR, "A/door-1", "Add door"),
        (OpeningKind.ACCESS_DOOR, "A/access-door-1", "Add access door"),
        (OpeningKind.WINDOW, "A/window-1", "Add window"),
    ],
)
def test_an_opening_is_added_and_held(desk: Desk, kind: OpeningKind, held: str, text: str) -> None:
    doing = Doing(desk)
    doing.add_wall()
    doing.add_opening(kind)
    assert (desk.held, desk.undo_text) == (held, text)


def test_a_box_is_added_to_the_stud_that_is_held(desk: Desk) -> None:
    desk.hold("B/layout/1")
    Doing(desk).add_box()
    assert (desk.held, desk.undo_text) == ("B/box-2", "Add box")
    assert desk.wall is not None
    assert desk.wall.box("box-2").stud == "B/layout/1"


def test_a_wall_is_added_and_shown(desk: Desk) -> None:
    Doing(desk).add_wall()
    assert (desk.letter, desk.undo_text) == ("A", "Add wall")
    assert desk.wall is not None
    assert desk.wall.stud == loft().wall("B").stud


def test_a_letter_on_paper_is_not_given_to_another_wall(qapp: object) -> None:
    assert qapp is not None
    site = SiteRecord((PrintedLabel("A/end/left", "A1"),))
    desk = Desk(Document(loft(), site))
    Doing(desk).add_wall()
    assert desk.letter == "C"


def test_a_wall_is_deleted_and_comes_back(desk: Desk) -> None:
    Doing(desk).delete_wall()
    assert (desk.letter, desk.undo_text) == (None, "Delete wall B")
    desk.undo()
    assert (desk.letter, desk.project) == (None, loft())


def test_in_the_room_the_wall_held_is_the_one_at_hand(desk: Desk) -> None:
    desk.show_room()
    doing = Doing(desk)
    doing.add_wall()
    assert (desk.letter, desk.held, doing.can_delete) == (None, "A", True)
    doing.delete()
    assert (desk.held, doing.can_delete, doing.wall_letter) == (None, False, None)
    doing.delete_wall()
    assert desk.undo_text == "Delete wall A"


def test_what_is_held_is_deleted(desk: Desk) -> None:
    desk.hold(BOX)
    Doing(desk).delete()
    assert desk.wall is not None
    assert desk.wall.boxes == ()


@pytest.mark.parametrize(
    ("key", "can"),
    [
        (STUD, True),
        (DOOR, True),
        (BOX, True),
        ("B/end/left", False),
        ("B/sole", False),
        (None, False),
    ],
)
def test_only_what_can_be_deleted_is_offered(desk: Desk, key: str | None, can: bool) -> None:
    desk.hold(key)
    assert Doing(desk).can_delete is can


def test_studs_left_out_are_put_back(desk: Desk) -> None:
    doing = Doing(desk)
    assert not doing.can_put_back
    for key in (STUD, "B/layout/3"):
        desk.hold(key)
        doing.delete()
    assert doing.can_put_back
    doing.put_back()
    assert (desk.project, desk.undo_text) == (loft(), "Put back studs")
    assert not doing.can_put_back


def test_a_refusal_is_said_and_changes_nothing(qapp: object) -> None:
    assert qapp is not None
    wide = set_opening(loft(), "B", "door-1", width=Length.of_inches(55))
    desk = desk_of(wide)
    said: list[str] = []
    desk.said.connect(said.append)
    Doing(desk).add_opening(OpeningKind.DOOR)
    assert said[0].startswith('No opening 34" wide')
    assert (desk.undo_text, desk.held) == (None, None)
    assert desk.project is wide


def test_without_a_wall_only_a_wall_can_be_added(qapp: object) -> None:
    assert qapp is not None
    desk = desk_of(msgspec.structs.replace(loft(), walls=()))
    doing = Doing(desk)
    assert not doing.can_delete
    doing.add_wall()
    assert (desk.letter, desk.held) == (None, "A")


def test_all_that_moves_is_held_at_once(qapp: object) -> None:
    assert qapp is not None
    desk = desk_of()
    Doing(desk).hold_all()
    assert {"B/door-1", "B/box-1", "B/layout/1"} <= set(desk.holding)
    assert "B/end/left" not in desk.holding
