"""One way out of each gesture: an edit, or nothing."""

from __future__ import annotations

import msgspec
import pytest

from core.framing.moving import Grip
from gui.desk import Desk
from gui.sketcher.gestures import Drag, Nudge
from gui.sketcher.keyboard import hold_next
from loft import BOX, DOOR, INCH, STUD, desk_of, loft

GRIP = Grip(INCH / 16, 0.5 * INCH)

pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of()


@pytest.fixture
def sayings(desk: Desk) -> list[str]:
    heard: list[str] = []
    desk.said.connect(heard.append)
    return heard


def drag_of(desk: Desk, key: str) -> Drag:
    drag = Drag.of(desk, key)
    assert drag is not None
    return drag


def test_a_drag_previews_and_its_release_commits(desk: Desk) -> None:
    shown: list[float] = []
    desk.changed.connect(lambda: shown.append(desk.project.wall("B").opening("door-1").left.mm))
    drag = drag_of(desk, DOOR)
    for inches in (2.0, 5.0, 8.0):
        drag.pull((inches * INCH, 0.0), GRIP)
    assert [left / INCH for left in shown] == pytest.approx([62.0, 65.0, 68.0])
    assert desk.undo_text is None
    drag.release()
    assert desk.undo_text == "Move door 1"


def test_a_dropped_drag_has_never_been(desk: Desk, sayings: list[str]) -> None:
    drag = drag_of(desk, DOOR)
    drag.pull((8.0 * INCH, 0.0), GRIP)
    drag.drop()
    assert desk.project == loft()
    assert desk.undo_text is None
    assert sayings[-1] == ""


def test_a_released_drag_that_came_back_is_no_edit(desk: Desk) -> None:
    drag = drag_of(desk, DOOR)
    drag.pull((8.0 * INCH, 0.0), GRIP)
    drag.pull((0.0, 0.0), GRIP)
    drag.release()
    assert desk.project == loft()
    assert desk.undo_text is None


def test_the_same_place_is_shown_once(desk: Desk) -> None:
    changes: list[None] = []
    desk.changed.connect(lambda: changes.append(None))
    drag = drag_of(desk, DOOR)
    for _ in range(5):
        drag.pull((8.0 * INCH, 0.0), GRIP)
    assert len(changes) == 1


def test_a_box_is_not_let_into_a_doorway(desk: Desk) -> None:
    drag = drag_of(desk, BOX)
    # Inside the door stands no wall for a box: its trimmers are at 58 1/2 and 90.
    for inches in range(20, 60):
        drag.pull((inches * INCH, 0.0), GRIP)
        assert desk.result is not None
        (box,) = (b for b in desk.result.boxes if b.key == BOX)
        assert box.blocked_by is None
        assert box.right <= 58.5 * INCH or box.left >= 90.0 * INCH
    drag.release()


@pytest.mark.parametrize("key", ["B/sole", "B/end/left", "B/nowhere"])
def test_what_stays_has_no_drag(desk: Desk, key: str) -> None:
    assert Drag.of(desk, key) is None


def test_without_a_wall_there_is_nothing_to_drag_push_or_hold() -> None:
    desk = desk_of(msgspec.structs.replace(loft(), walls=()))
    assert Drag.of(desk, STUD) is None
    assert Nudge.of(desk) is None
    hold_next(desk, 1)
    assert desk.held is None


def test_a_nudge_needs_something_held_that_moves(desk: Desk) -> None:
    assert Nudge.of(desk) is None
    desk.hold("B/sole")
    assert Nudge.of(desk) is None
    desk.hold(STUD)
    assert Nudge.of(desk) is not None


def test_a_run_of_pushes_is_one_edit(desk: Desk) -> None:
    desk.hold(DOOR)
    nudge = Nudge.of(desk)
    assert nudge is not None
    for right in (1, 1, 1, -1):
        nudge.push(right, 0, INCH)
    # Up and down mean nothing to an opening.
    nudge.push(0, 1, INCH)
    nudge.release()
    assert desk.project.wall("B").opening("door-1").left.mm == pytest.approx(62 * INCH)
    desk.undo()
    assert desk.project == loft()


def test_a_dropped_run_of_pushes_has_never_been(desk: Desk) -> None:
    desk.hold(BOX)
    nudge = Nudge.of(desk)
    assert nudge is not None
    nudge.push(1, 0, INCH)
    nudge.push(0, 1, INCH)
    assert desk.project != loft()
    nudge.drop()
    assert desk.project == loft()
    assert desk.undo_text is None
