"""The desk: what is shown, held, previewed, committed and taken back."""

from __future__ import annotations

import msgspec
import pytest

from core.model import Project, SiteRecord
from core.storage import Document
from gui.desk import Desk
from gui.edits import add_wall, delete, delete_wall, move_opening, set_habits
from gui.site.prints import printed
from loft import BOX, DOOR, INCH, STUD, desk_of, loft


class Ear:
    """Counts the desk's signals."""

    def __init__(self, desk: Desk) -> None:
        self.changed = self.held = 0
        desk.changed.connect(self._on_changed)
        desk.held_changed.connect(self._on_held)

    def _on_changed(self) -> None:
        self.changed += 1

    def _on_held(self) -> None:
        self.held += 1


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


def moved(left: float) -> Project:
    return move_opening(loft(), "B", "door-1", left * INCH)


def left_of(desk: Desk) -> float:
    result = desk.result
    assert result is not None
    return result.wall.opening("door-1").left.mm / INCH


def test_it_begins_with_the_first_wall_and_nothing_held(desk: Desk) -> None:
    assert (desk.letter, desk.held, desk.is_clean) == ("B", None, True)
    assert desk.undo_text is None


def test_without_walls_the_room_is_shown(qapp: object) -> None:
    assert qapp is not None
    desk = desk_of(msgspec.structs.replace(loft(), walls=()))
    assert (desk.letter, desk.wall, desk.result) == (None, None, None)
    desk.hold(DOOR)
    assert desk.held is None


def test_a_commit_is_one_step_of_undo(desk: Desk) -> None:
    ear = Ear(desk)
    desk.commit("move door 1", moved(68))
    assert (left_of(desk), desk.undo_text, desk.is_clean) == (68, "move door 1", False)
    desk.undo()
    assert (left_of(desk), desk.redo_text, desk.is_clean) == (60, "move door 1", True)
    desk.redo()
    assert left_of(desk) == 68
    assert ear.changed == 3


def test_an_equal_project_is_no_step_and_no_change(desk: Desk) -> None:
    ear = Ear(desk)
    desk.commit("nothing", loft())
    assert (ear.changed, desk.undo_text) == (0, None)


def test_a_preview_shows_but_is_no_step(desk: Desk) -> None:
    desk.preview(moved(68))
    assert (left_of(desk), desk.undo_text, desk.is_clean) == (68, None, True)
    assert desk.document.project == loft()


def test_a_dropped_preview_leaves_all_as_it_was(desk: Desk) -> None:
    ear = Ear(desk)
    desk.preview(moved(68))
    desk.drop_preview()
    assert (left_of(desk), desk.undo_text, ear.changed) == (60, None, 2)
    desk.drop_preview()
    assert ear.changed == 2


def test_a_drag_that_ends_where_it_began_is_no_step(desk: Desk) -> None:
    desk.preview(moved(68))
    desk.commit("move door 1", loft())
    assert (left_of(desk), desk.undo_text) == (60, None)


@pytest.mark.parametrize(
    "key", [STUD, DOOR, BOX, "B/door-1/king/left", "B/end/left", "B/top/1/1", "B/sole"]
)
def test_anything_of_the_wall_can_be_held(desk: Desk, key: str) -> None:
    ear = Ear(desk)
    desk.hold(key)
    desk.hold(key)
    assert (desk.held, ear.held) == (key, 1)


def test_what_the_wall_has_not_cannot_be_held(desk: Desk) -> None:
    desk.hold(STUD)
    desk.hold("B/layout/99")
    assert desk.held is None


def test_what_is_gone_is_let_go(desk: Desk) -> None:
    ear = Ear(desk)
    desk.hold(STUD)
    desk.commit("delete", delete(loft(), "B", STUD))
    assert (desk.held, ear.held) == (None, 2)


def test_an_opening_held_by_its_cripple_is_let_go_with_it(desk: Desk) -> None:
    desk.hold("B/door-1/header/1")
    desk.commit("delete", delete(loft(), "B", DOOR))
    assert desk.held is None


def test_another_wall_is_shown_with_nothing_held(desk: Desk) -> None:
    desk.commit("add", add_wall(loft(), "Other"))
    desk.hold(STUD)
    desk.show_wall("A")
    assert (desk.letter, desk.held) == ("A", None)
    with pytest.raises(KeyError):
        desk.show_wall("Z")


def test_undo_shows_the_wall_that_it_changes(desk: Desk) -> None:
    desk.commit("add", add_wall(loft(), "Other"))
    desk.commit("move", move_opening(desk.project, "B", "door-1", 68 * INCH))
    desk.show_wall("A")
    desk.undo()
    assert desk.letter == "B"
    desk.show_wall("A")
    desk.redo()
    assert desk.letter == "B"


def test_undo_of_what_no_wall_shows_stays_where_it_is(desk: Desk) -> None:
    desk.commit("add", add_wall(loft(), "Other"))
    letters = msgspec.structs.replace(loft().habits.letters, stud="S")
    desk.commit("habit", set_habits(desk.project, letters=letters))
    desk.show_wall("A")
    desk.undo()
    assert desk.letter == "A"


def test_when_the_wall_shown_is_deleted_the_room_is_shown(desk: Desk) -> None:
    desk.commit("add", add_wall(loft(), "Other"))
    desk.commit("delete", delete_wall(desk.project, "B"))
    assert desk.letter is None
    desk.undo()
    assert desk.letter is None
    desk.show_wall("A")
    desk.redo()
    desk.undo()
    assert desk.letter == "B"


def test_the_room_is_shown_with_the_wall_that_was_shown_held_in_it(desk: Desk) -> None:
    ear = Ear(desk)
    desk.hold(STUD)
    desk.show_room()
    assert (desk.letter, desk.wall, desk.result, desk.held) == (None, None, None, "B")
    assert ear.changed == 1
    desk.show_room()
    desk.hold(STUD)
    assert (desk.held, ear.changed) == (None, 1)
    desk.hold("B")
    desk.commit("delete", delete_wall(desk.project, "B"))
    assert desk.held is None


def test_undo_of_the_room_shows_the_room(desk: Desk) -> None:
    flat = msgspec.structs.replace(loft().room, flat_ceiling=None)
    desk.commit("no ceiling", msgspec.structs.replace(loft(), room=flat))
    desk.undo()
    assert desk.project == loft()
    assert desk.letter is None


def test_saving_makes_it_clean(desk: Desk) -> None:
    desk.commit("move", moved(68))
    desk.saved()
    assert desk.is_clean
    desk.undo()
    assert not desk.is_clean


def test_printed_labels_stay_when_studs_come_and_go(desk: Desk) -> None:
    desk.record(printed(desk.site, desk.results, "2026-03-01"))
    before = dict(desk.results.wall("B").labels)
    assert not desk.is_clean
    desk.commit("delete", delete(loft(), "B", "B/layout/1"))
    after = dict(desk.results.wall("B").labels)
    assert "B/layout/1" not in after
    assert after == {key: label for key, label in before.items() if key != "B/layout/1"}
    desk.undo()
    assert dict(desk.results.wall("B").labels) == before


def test_undo_never_takes_back_what_was_printed(desk: Desk) -> None:
    desk.commit("move", moved(68))
    desk.record(printed(desk.site, desk.results, "2026-03-01"))
    labels = desk.site.printed
    assert labels
    desk.undo()
    assert desk.site.printed == labels
    desk.record(printed(desk.site, desk.results, "2026-03-01"))
    assert set(labels) <= set(desk.site.printed)
    assert len({p.label for p in desk.site.printed}) == len(desk.site.printed)


def test_another_document_begins_anew(desk: Desk) -> None:
    desk.commit("move", moved(68))
    desk.hold(DOOR)
    desk.start(Document(moved(70), SiteRecord()))
    assert (left_of(desk), desk.undo_text, desk.held, desk.is_clean) == (70, None, None, True)
