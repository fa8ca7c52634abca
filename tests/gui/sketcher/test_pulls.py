"""Where things come to stand when they are pulled, and what is said of it."""

from __future__ import annotations

import pytest

from core.framing.moving import Grip
from core.job import work_out
from core.lengths import Length, System, Tape, Unit
from core.model import Habits, LineEdge, MovedStud, Project, Side, SiteRecord
from gui.sketcher.pulls import Hold, Pulled, beside, grip_of, pull, step_of, take
from gui.things import name_of
from gui.wordings import wording_of
from loft import BOX, CRIPPLE, DOOR, INCH, STUD, loft
from walls import US

SIXTEENTH = INCH / 16
GRIP = Grip(SIXTEENTH, 0.5 * INCH)
FREE = Grip(SIXTEENTH, 0.5 * INCH, free=True)


def held(key: str, project: Project | None = None) -> Hold:
    project = project or loft()
    hold = take(project, work_out(project, SiteRecord()).walls[0], key)
    assert hold is not None
    return hold


def said(pulled: Pulled) -> str:
    return wording_of(pulled.project).say(pulled.said)


@pytest.mark.parametrize(
    ("by", "grip", "left", "words"),
    [
        # Place 2 stands at 31 1/4; 3 1/32 in. further is 34 9/32, rounded to the tape 34 5/16.
        (3.04, GRIP, 34.3125, 'B3: left edge at 34 5/16", to the nearest 1/16"'),
        (3.04, FREE, 34.29, 'B3: left edge at 34 5/16", snapping to nothing'),
        # Back within half an inch of its own place it returns there: no longer a moved stud.
        (-0.3, GRIP, None, 'B3: left edge at 31 1/4", on the layout'),
        # Place 3 stands at 47 1/4: 14 3/8 brings it to 45 5/8, 1/8 short of the face at 45 3/4.
        (14.375, GRIP, 45.75, 'B3: left edge at 45 3/4", against B4'),
        # It may pass other studs but not the door: the left king stands at 57.
        (26.0, GRIP, 55.5, 'B3: left edge at 55 1/2", as far as it goes: door 1 stands there'),
        # The left end stud ends at 1 1/2.
        (-99.0, GRIP, 1.5, 'B3: left edge at 1 1/2", as far as it goes: B1 stands there'),
    ],
)
def test_a_stud(by: float, grip: Grip, left: float | None, words: str) -> None:
    pulled = pull(held(STUD), (by * INCH, 99.0), grip)
    moved = pulled.project.wall("B").moved
    wanted = () if left is None else (MovedStud(2, Length.of_inches(left)),)
    assert [m.place for m in moved] == [m.place for m in wanted]
    assert [m.left.mm for m in moved] == [pytest.approx(m.left.mm) for m in wanted]
    assert said(pulled) == words


@pytest.mark.parametrize(
    ("by", "grip", "left", "words"),
    [
        (8.0, GRIP, 68.0, 'door 1: left edge at 68", to the nearest 1/16"'),
        # Its left king, 3 in. before it, would stand on place 4 (63 1/4) at 66 1/4.
        (6.0, GRIP, 66.25, 'door 1: left edge at 66 1/4", on the layout'),
        (6.0, FREE, 66.0, 'door 1: left edge at 66", snapping to nothing'),
        # From the left the slope: a header's top at 81 1/2 passes under plates (of 1 1/2 by sqrt 2)
        # from x = 81 1/2 + 2 1/8 - 60, a trimmer's 1 1/2 before the opening.
        (-70.0, GRIP, 25.1213, 'door 1: left edge at 25 1/8", as far as it goes: LOW'),
        # From the right end 120: end stud, king and trimmer are 4 1/2, the opening 30: 85 1/2.
        (80.0, GRIP, 85.5, 'door 1: left edge at 85 1/2", as far as it goes: the wall ends there'),
    ],
)
@pytest.mark.parametrize("key", [DOOR, "B/door-1/king/left", "B/door-1/header/1"])
def test_an_opening_is_held_by_all_that_stands_around_it(
    key: str, by: float, grip: Grip, left: float, words: str
) -> None:
    pulled = pull(held(key), (by * INCH, -50.0), grip)
    assert pulled.project.wall("B").opening("door-1").left.mm == pytest.approx(left * INCH)
    assert pulled.project.wall("B").opening("door-1").left.unit is Unit.INCH
    # Whatever is taken hold of, what is named is the opening.
    assert said(pulled) == words.replace("LOW", "the slope is too low beyond")


def test_a_cripple_stays_over_its_header() -> None:
    # The header runs from 58 1/2 to 91 1/2; the next cripple (place 5) begins at 79 1/4.
    pulled = pull(held(CRIPPLE), (-30.0 * INCH, 0.0), GRIP)
    assert pulled.project.wall("B").moved == (MovedStud(4, Length.of_inches(58.5)),)


@pytest.mark.parametrize(
    ("by", "grip", "stud", "side", "height"),
    [
        # Straight up by 6 in.
        ((0.0, 6.0), GRIP, STUD, Side.RIGHT, 20.0),
        ((0.0, 6.03), FREE, STUD, Side.RIGHT, 20.03),
        # Over to the left side of the next stud: from 32 3/4 to 47 1/4 - 2 = 45 1/4.
        ((12.0, 0.0), GRIP, "B/layout/3", Side.LEFT, 14.0),
        # To the left side of its own stud, 3 1/2 in. away.
        ((-3.0, 0.0), GRIP, STUD, Side.LEFT, 14.0),
        # Never under the sole plate: the box is 4 in. tall, its middle 2 over the plate's 1 1/2.
        ((0.0, -30.0), GRIP, STUD, Side.RIGHT, 3.5),
    ],
)
def test_a_box_goes_from_stud_to_stud(
    by: tuple[float, float], grip: Grip, stud: str, side: Side, height: float
) -> None:
    pulled = pull(held(BOX), (by[0] * INCH, by[1] * INCH), grip)
    box = pulled.project.wall("B").box("box-1")
    assert (box.stud, box.side) == (stud, side)
    assert box.height.mm == pytest.approx(height * INCH)


def test_what_is_said_of_a_box_names_its_stud() -> None:
    assert said(pull(held(BOX), (0.0, 6.0 * INCH), GRIP)) == 'box 1: 20" high, on the right of B3'


@pytest.mark.parametrize(
    ("direction", "stud", "side"),
    [(1, "B/layout/3", Side.LEFT), (-1, STUD, Side.LEFT)],
)
def test_a_box_is_pushed_to_the_next_side(direction: int, stud: str, side: Side) -> None:
    box = beside(held(BOX), direction).project.wall("B").box("box-1")
    assert (box.stud, box.side) == (stud, side)


def test_a_box_is_pushed_on_to_the_last_stud_and_no_farther() -> None:
    project, pushes = loft(), 0
    while (pushed := beside(held(BOX, project), 1)).project != project:
        project, pushes = pushed.project, pushes + 1
    assert project.wall("B").box("box-1").stud == "B/end/right"
    # Nine studs, kings and trimmers lie ahead, each with a side or two that has room.
    assert 8 <= pushes <= 18
    assert said(pushed) == "box 1: no other stud that way has room for it"


@pytest.mark.parametrize("key", ["B/end/left", "B/sole", "B/top/1/1", "B/nothing", "C/layout/1"])
def test_what_stays_cannot_be_taken(key: str) -> None:
    project = loft()
    assert take(project, work_out(project, SiteRecord()).walls[0], key) is None


def test_nothing_can_be_taken_of_a_wall_without_a_frame() -> None:
    project = loft()
    too_short = US.wall((12.0, 100.0), (13.0, 100.0))
    project = project.with_wall(too_short)
    assert take(project, work_out(project, SiteRecord()).walls[0], STUD) is None


def test_a_pull_depends_on_where_it_began_alone() -> None:
    hold = held(STUD)
    pull(hold, (20.0 * INCH, 0.0), GRIP)
    assert pull(hold, (3.0 * INCH, 0.0), GRIP) == pull(held(STUD), (3.0 * INCH, 0.0), GRIP)


@pytest.mark.parametrize(
    ("tape", "scale", "step"),
    [
        # At 1 px a mm a sixteenth (1.6 mm) is more than a px.
        (Tape.usual(System.INCH), 1.0, INCH / 16),
        # At 1 px for 5 mm a quarter inch (6.35 mm) is the least that is a px.
        (Tape.usual(System.INCH), 0.2, INCH / 4),
        # At 1 px for 100 mm not even an inch is: an inch it is.
        (Tape.usual(System.INCH), 0.01, INCH),
        (Tape.usual(System.METRIC), 1.0, 1.0),
        (Tape.usual(System.METRIC), 0.3, 5.0),
        (Tape(System.METRIC, Length(0.5)), 4.0, 0.5),
    ],
)
def test_a_px_is_never_less_than_a_step(tape: Tape, scale: float, step: float) -> None:
    assert grip_of(tape, scale).step == pytest.approx(step)
    assert grip_of(tape, scale).reach * scale == pytest.approx(5.0)
    assert grip_of(tape, scale, free=True).free


@pytest.mark.parametrize(
    ("tape", "small", "large"),
    [
        (Tape.usual(System.INCH), INCH / 16, INCH),
        (Tape.usual(System.METRIC), 1.0, 10.0),
        (Tape(System.METRIC, Length(10.0)), 10.0, 10.0),
    ],
)
def test_steps_of_the_arrow_keys(tape: Tape, small: float, large: float) -> None:
    assert step_of(tape) == pytest.approx(small)
    assert step_of(tape, large=True) == pytest.approx(large)


@pytest.mark.parametrize(
    ("key", "name"),
    [(STUD, "B3"), (DOOR, "door 1"), ("B/door-1/king/left", "door 1"), (BOX, "box 1")],
)
def test_names(key: str, name: str) -> None:
    assert name_of(work_out(loft(), SiteRecord()).walls[0], key) == name


def test_the_mark_convention_changes_nothing_of_a_pull() -> None:
    uphill = loft().__class__(
        "loft", System.INCH, loft().room, loft().walls, Habits(line_edge=LineEdge.UPHILL)
    )
    pulled = pull(held(STUD, uphill), (3.0 * INCH, 0.0), GRIP)
    assert pulled.project.wall("B").moved == (MovedStud(2, Length.of_inches(34.25)),)
