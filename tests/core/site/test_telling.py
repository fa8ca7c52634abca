"""What is said of a wall going up, in inches."""

from __future__ import annotations

import msgspec

from core.job import work_out
from core.lengths import System, Tape
from core.model import ClearKind, KeptClear, Room, SiteRecord, Wall
from core.site import conditions, gaps, order, verdict, weighed, weights
from core.wording import Message, Wording
from raising import job, raised
from walls import US, frame_of, in_12

GABLE = US.room(264, (12, in_12(9)), (12, in_12(9)))
WORDS = Wording("us", Tape.usual(System.INCH))
STEP = 25.4 / 16


def said(messages: tuple[Message, ...]) -> list[str]:
    return [WORDS.say(message) for message in messages]


def test_a_wall_built_short() -> None:
    # 0.1278 is needed: 3/16, rounded up to sixteenths.
    up = raised(GABLE, US.wall((48, 200), (216, 200)))
    assert WORDS.say(verdict(up)) == (
        'Frame it flat, 3/16" short, tilt it up and shim it: laid down on the side of face A, it'
        " turns on the lower edge of its sole plate at face A."
    )
    assert conditions(up) == ()
    # 168 long; the roof is 111 at the ridge. It is tightest at atan(48 / 3.5) = 85.8 degrees.
    assert said(gaps(up, STEP)) == [
        'From the side of face A it needs a gap of 3/16" over its top, and has 0"; it is tightest'
        " at 86° from the floor.",
        'From the side of the far face it needs a gap of 3/16" over its top, and has 0"; it is'
        " tightest at 86° from the floor.",
        'Laid out flat it takes 168" by 111" of floor.',
    ]


def test_a_knee_wall_with_another_wall_to_come_later() -> None:
    knee = US.wall((48, 100), (48, 300))
    other = msgspec.structs.replace(US.wall((48, 200), (216, 200)), letter="C")
    up = raised(GABLE, knee, other)
    assert WORDS.say(verdict(up)).startswith("Frame it flat and tilt it up: laid down on the side")
    assert said(conditions(up)) == ["Put it up before C: what stands there would be in its way."]
    assert "From the side of face A it needs no gap over its top." in said(gaps(up, STEP))
    # The eave is 44.5 from the far face, and the wall 48 high.
    assert 'On the side of the far face the room is 3 1/2" short of floor to lay it out.' in said(
        gaps(up, STEP)
    )


def test_panels_are_told_one_by_one() -> None:
    room = US.room(264, (12, in_12(9)), (12, in_12(9)), flat=60)
    up = raised(room, US.wall((30, 50), (234, 254)))
    assert WORDS.say(verdict(up)) == "It cannot be tilted up whole; framed flat in panels it can."
    told = said(conditions(up))
    assert told[0].startswith('Panel 1, from 0" to ')
    assert told[-1] == 'Build the panels 1/8" short and shim them.'


def test_in_place_with_the_labels_of_its_pieces() -> None:
    room = US.room(264, (12, in_12(9)), (12, in_12(9)), length=30)
    wall = US.wall((48, 15), (96, 15))
    up, labels = raised(room, wall), labels_of(room, wall)
    assert WORDS.say(verdict(up)).startswith("It cannot be tilted up: build it in place")
    # 0, 15.25, 31.25, 46.5 from left to right, then the top and the sole plate.
    assert said(order(up, labels)) == [
        "nail down the sole plate, B6",
        "nail up the top plates, B5",
        "end studs, B1, B4",
        "studs, B2, B3",
    ]


def test_the_weight_in_pounds() -> None:
    # 2x4 at 35 lb/ft3 weighs 5.25 * 35 / 1728 = 0.10634 lb an inch. Level at 96, 48 long: plates
    # 2 * 48, four studs of 93: 468 in. and 49.8 lb; a stud is 9.9.
    room, wall = US.room(264, (96, in_12(0))), US.wall((48, 100), (96, 100))
    labels = labels_of(room, wall)
    told = WORDS.say(weighed(weights(frame_of(room, wall), None), labels))
    assert told == "It weighs about 50 lb; its heaviest piece, B1, about 9.9 lb."
    metric = Wording("metric", Tape.usual(System.METRIC))
    # 49.8 * 0.45359 = 22.6; 9.89 * 0.45359 = 4.5.
    told = metric.say(weighed(weights(frame_of(room, wall), None), labels))
    assert told == "It weighs about 23 kg; its heaviest piece, B1, about 4.5 kg."


def labels_of(room: Room, wall: Wall) -> dict[str, str]:
    return work_out(job(room, wall), SiteRecord()).wall(wall.letter).label_of


def test_a_chimney_where_it_would_lie() -> None:
    """A knee wall 48 high that lies from u = 96 on, with a chimney there from 60 to 84."""
    chimney = KeptClear("chimney-1", ClearKind.CHIMNEY, *map(US.length, (60, 200, 24, 24, 2)))
    room = msgspec.structs.replace(GABLE, kept_clear=(chimney,))
    up = raised(room, US.wall((48, 100), (48, 300)))
    assert up.laid is None
    told = said(gaps(up, STEP))
    assert "On the side of face A, chimney 1 is where it would lie." in told
