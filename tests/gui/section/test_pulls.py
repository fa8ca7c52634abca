"""Pulling handles: where they come to rest, what is said, and what stops them; inches.

The room of the loft: 240 wide, 12 in 12 from eaves 48 high, ridge at 120, 168 high, ceiling 108.
"""

from __future__ import annotations

import msgspec
import pytest

from core.framing.moving import Grip
from core.lengths import System, Tape
from core.model import Habits, PitchBreak, Project, Side
from core.roof import section_of
from gui.edits.beyond import Beyond
from gui.edits.shaping import set_ridge_across
from gui.section.pulls import nudge, pull, take
from gui.wordings import wording_of
from loft import loft
from walls import UK, US, at_degrees, in_12

INCH = 25.4
INCHES = Grip(INCH, 3 * INCH)
"""Steps of an inch, drawn to places within three."""

FREE = Grip(INCH, 3 * INCH, free=True)


def pulled(
    key: str, by: tuple[float, float], grip: Grip = INCHES, project: Project | None = None
) -> tuple[Project, str]:
    project = project or loft()
    across = abs(by[0]) > abs(by[1])
    shaped = pull(take(project, key, across=across), (by[0] * INCH, by[1] * INCH), grip)
    return shaped.project, wording_of(project).say(shaped.said)


@pytest.mark.parametrize(
    ("key", "by", "grip", "said"),
    [
        ("eave/left", (0, 10.3), INCHES, 'Left eave 58".'),
        ("eave/left", (0, 10.3), FREE, 'Left eave 58 5/16".'),
        ("eave/left", (0, 2.4), INCHES, 'Left eave 48": level with the other eave.'),
        # Over 60 the slope rises 60; 60 - 18 = 42: 8.4 in 12, drawn to 8 1/2.
        ("pitch/left/0", (0, -18), INCHES, "Left pitch 8 1/2 in 12: a whole pitch."),
        # Freely to the sixteenth: 8.4 = 8 6.4/16.
        ("pitch/left/0", (0, -18), FREE, "Left pitch 8 3/8 in 12."),
        # 90 over 120 is 9 in 12; 88 is near it.
        ("ridge", (0, -32), INCHES, 'Ridge height 138": a pitch of 9 in 12 on both sides.'),
        ("ridge", (0, -32), FREE, 'Ridge height 136".'),
        ("ridge", (2, 0), INCHES, 'Left run to the ridge 120": in the middle of the room.'),
        # 120 over 80 is 18 in 12 on the left.
        (
            "ridge",
            (-39.7, 1),
            INCHES,
            'Left run to the ridge 80": a pitch of 18 in 12 on the left.',
        ),
        ("ridge", (-38.5, 1), FREE, 'Left run to the ridge 81 1/2".'),
        ("ceiling", (30, -8.2), INCHES, 'Flat ceiling 100".'),
        ("width", (12.2, 30), INCHES, 'Room width 252".'),
    ],
)
def test_where_a_pull_comes_to_rest(
    key: str, by: tuple[float, float], grip: Grip, said: str
) -> None:
    assert pulled(key, by, grip)[1] == said


def test_pulling_the_ridge_across_keeps_its_height() -> None:
    project, _ = pulled("ridge", (-39.7, 0))
    at = section_of(project.room).ridge
    assert at == pytest.approx((80 * INCH, 168 * INCH))


@pytest.mark.parametrize(
    ("key", "by", "said"),
    [
        ("eave/left", (0, -60), 'is 0"'),
        ("ridge", (0, -100), 'is 108"'),
        ("ceiling", (0, 80), 'is 168"'),
        ("width", (-120, 0), 'is 132"'),
    ],
)
def test_what_stops_a_pull_is_told_with_the_nearest(
    key: str, by: tuple[float, float], said: str
) -> None:
    with pytest.raises(Beyond) as beyond:
        pulled(key, by)
    assert said in wording_of(loft()).say(beyond.value.message)


def test_a_metric_room_is_drawn_to_whole_degrees_and_tens_of_mm() -> None:
    room = UK.room(6000, (800, at_degrees(40)), (800, at_degrees(40)))
    habits = Habits(Tape.usual(System.METRIC))
    project = Project("metric", System.METRIC, room, habits=habits)
    grip = Grip(10.0, 50.0)
    # The handle stands over 1500 of run, 1500 tan 40 = 1258.6 up; 58 less is 1200: 38.66 degrees.
    shaped = pull(take(project, "pitch/left/0"), (0.0, -58.6), grip)
    assert wording_of(project).say(shaped.said) == "Left pitch 39°: a whole pitch."
    shaped = pull(take(project, "eave/right"), (0.0, 104.0), grip)
    assert wording_of(project).say(shaped.said) == "Right eave 900 mm."


@pytest.mark.parametrize(
    ("key", "across", "way", "large", "said"),
    [
        ("eave/left", False, 1, False, 'Left eave 48 1/16".'),
        ("eave/left", False, -1, True, 'Left eave 47".'),
        ("pitch/left/0", False, 1, False, "Left pitch 12 1/2 in 12."),
        ("pitch/left/0", False, -1, True, "Left pitch 10 in 12."),
        ("ridge", False, 1, True, 'Ridge height 169".'),
        ("ridge", True, -1, True, 'Left run to the ridge 119".'),
        ("width", True, 1, False, 'Room width 240 1/16".'),
    ],
)
def test_arrow_keys_go_by_steps_of_the_tape_or_whole_pitches(
    key: str, across: bool, way: int, large: bool, said: str
) -> None:
    project = loft()
    shaped = nudge(take(project, key, across=across), way, large=large)
    assert wording_of(project).say(shaped.said) == said


def test_a_ridge_off_the_middle_goes_on_from_where_it_is() -> None:
    project = set_ridge_across(loft(), 100 * INCH, Side.LEFT)
    shaped = nudge(take(project, "ridge", across=True), 1, large=True)
    assert wording_of(project).say(shaped.said) == 'Left run to the ridge 101".'


def gambrel() -> Project:
    """20 in 12 from 40 to 100 at 36 in, then 6 in 12 to 142 at 120; both sides alike."""
    room = US.room(240, (40, in_12(20)), (40, in_12(20)))
    assert room.left is not None
    change = PitchBreak(US.length(36), in_12(6))
    slope = msgspec.structs.replace(room.left, breaks=(change,))
    room = msgspec.structs.replace(room, left=slope, right=slope)
    return msgspec.structs.replace(loft(), room=room, walls=())


@pytest.mark.parametrize(
    ("key", "by", "said"),
    [
        ("break/left/1", (6.3, 0), 'Run to change 1 on the left 42".'),
        # On the right farther from the eave wall is to the left.
        ("break/right/1", (-6.3, 0), 'Run to change 1 on the right 42".'),
        ("pitch/left/1", (0, 7), "Pitch 2 on the left 8 in 12: a whole pitch."),
    ],
)
def test_a_change_of_pitch_is_pulled_along_the_width(
    key: str, by: tuple[float, float], said: str
) -> None:
    assert pulled(key, by, project=gambrel())[1] == said


@pytest.mark.parametrize(
    ("far", "said"), [(-60, 'is 1/16"'), (200, "between the eave and the ridge")]
)
def test_a_change_of_pitch_stays_between_eave_and_ridge(far: float, said: str) -> None:
    with pytest.raises(Beyond) as beyond:
        pulled("break/left/1", (far, 0), project=gambrel())
    assert section_of(beyond.value.nearest.room).rise(Side.LEFT, 1) is not None
    assert said in wording_of(loft()).say(beyond.value.message)
