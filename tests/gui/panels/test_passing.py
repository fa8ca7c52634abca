"""Each wall passes a purlin in its own way, chosen beside the cautions that tell of the purlin."""

from __future__ import annotations

import msgspec
import pytest
from pytestqt.qtbot import QtBot

from core.model import PassesPurlin, Passing, Project
from gui.desk import Desk
from gui.edits.roof_parts import add_part, remove_part
from gui.fields import Choice, Field
from gui.held import Held
from gui.panels.passing import PassingForm
from loft import desk_of, loft


def with_purlin(project: Project) -> Project:
    """The loft with a purlin a quarter across, at 60: through wall B at 48 along it."""
    return add_part(project, ("purlins",))


@pytest.fixture
def desk(qapp: object) -> Desk:
    assert qapp is not None
    return desk_of(with_purlin(loft()))


@pytest.fixture
def form(desk: Desk, qtbot: QtBot) -> PassingForm:
    made = PassingForm(desk, desk.wording)
    qtbot.addWidget(made)
    made.refresh()
    return made


def choose(box: Choice, text: str) -> None:
    box.setCurrentText(text)
    box.activated.emit(box.currentIndex())


def enter(field: Field, text: str) -> None:
    field.setText(text)
    field.setModified(True)
    field.editingFinished.emit()


def plates(desk: Desk) -> int:
    assert desk.result is not None
    assert desk.result.frame is not None
    return sum(m.key.startswith("B/top/") for m in desk.result.frame.members)


def test_a_wall_goes_its_own_way_and_back(desk: Desk, form: PassingForm) -> None:
    assert form.way.currentText() == "as all walls do"
    through = plates(desk)
    choose(form.way, "pass under it")
    assert desk.project.wall("B").passes == (PassesPurlin("purlin-1", Passing.UNDER),)
    assert desk.undo_text == "This wall of purlin 1"
    assert plates(desk) != through
    choose(form.way, "as all walls do")
    assert desk.project.wall("B").passes == ()


def test_what_follows_is_told_beside_the_choice(form: PassingForm) -> None:
    assert form.told.isHidden()
    choose(form.way, "notch studs round it")
    assert form.told.text().startswith("purlin 1: plates in its way stop")
    assert "notch" in form.told.text()


@pytest.mark.parametrize(
    ("text", "kept"), [("60", 60), ("60 %", 60), ("", None), ("0", None), ("half", None)]
)
def test_the_share_that_a_stud_keeps(
    desk: Desk, form: PassingForm, text: str, kept: int | None
) -> None:
    enter(form.least, text)
    assert desk.project.wall("B").goes_by.least_left == kept
    assert form.least.refused is (text in ("0", "half"))


def test_the_purlin_chosen_is_the_one_set(desk: Desk, form: PassingForm) -> None:
    desk.commit("more", with_purlin(desk.project))
    form.refresh()
    assert [form.which.itemText(n) for n in range(2)] == ["purlin 1", "purlin 2"]
    choose(form.which, "purlin 2")
    choose(form.way, "pass under it")
    assert desk.project.wall("B").passes == (PassesPurlin("purlin-2", Passing.UNDER),)
    assert form.which.currentText() == "purlin 2"


def test_a_purlin_taken_away_is_passed_by_no_wall(desk: Desk, form: PassingForm) -> None:
    choose(form.way, "pass under it")
    gone = remove_part(desk.project, ("purlins",), 0)
    assert gone.wall("B").passes == ()


@pytest.mark.parametrize("there", [True, False])
def test_it_stands_under_the_cautions_only_where_there_is_a_purlin(
    qtbot: QtBot, there: bool
) -> None:
    held = Held(desk_of(with_purlin(loft()) if there else loft()))
    qtbot.addWidget(held)
    assert ("passing" in held.stands) is there


def test_a_purlin_that_ends_before_the_wall_is_not_met(desk: Desk, form: PassingForm) -> None:
    room = desk.project.room
    short = msgspec.structs.replace(room.purlins[0], end=room.rafter.spacing)
    room = msgspec.structs.replace(room, purlins=(short,))
    desk.commit("short", msgspec.structs.replace(desk.project, room=room))
    assert not form.meets_any
