"""What of the section can be taken hold of, and what its numbers are called; inches."""

from __future__ import annotations

import msgspec
import pytest

from core.model import PitchBreak, Room
from gui.section.handles import Ways, handles
from gui.section.numbers import name_of, text_of, told
from gui.wordings import plain_wording
from loft import loft
from walls import US, in_12

INCH = 25.4
WORDS = plain_wording()


def gambrel() -> Room:
    room = US.room(240, (40, in_12(20)), (40, in_12(20)))
    assert room.left is not None
    change = PitchBreak(US.length(36), in_12(6))
    return msgspec.structs.replace(room, left=msgspec.structs.replace(room.left, breaks=(change,)))


def places(room: Room) -> dict[str, tuple[float, float]]:
    return {h.key: (round(h.at[0] / INCH, 3), round(h.at[1] / INCH, 3)) for h in handles(room)}


def test_the_handles_of_a_gable_from_left_to_right() -> None:
    # The ridge at 120, 168 high; the ceiling at 108 is level from 60 to 180.
    assert places(loft().room) == {
        "eave/left": (0, 48),
        "pitch/left/0": (60, 108),
        "ridge": (120, 168),
        "pitch/right/0": (180, 108),
        "eave/right": (240, 48),
        "ceiling": (60 + 120 * 0.32, 108),
        "width": (240, 0),
    }
    assert list(places(loft().room))[:5] == [
        "eave/left",
        "pitch/left/0",
        "ridge",
        "pitch/right/0",
        "eave/right",
    ]


def test_a_shed_has_no_ridge_to_hold() -> None:
    keys = list(places(US.room(200, (60, in_12(3)))))
    assert keys == ["eave/left", "pitch/left/0", "ceiling", "width"]


def test_a_room_without_a_flat_ceiling_offers_one() -> None:
    # Three quarters of 110 is 82.5; 60 + u/4 is that high from 90 on, to 200.
    shed = US.room(200, (60, in_12(3)))
    ceiling = next(h for h in handles(shed) if h.key == "ceiling")
    assert ceiling.missing
    assert places(shed)["ceiling"] == (90 + 110 * 0.32, 82.5)
    assert WORDS.say(told(shed, "ceiling")) == "No flat ceiling"
    assert text_of(shed, "ceiling", WORDS) == ""
    assert not any(h.missing for h in handles(loft().room))


def test_each_stretch_of_a_broken_slope_has_its_handle() -> None:
    # 40 + 20/12 * 36 = 100 at the change.
    found = places(gambrel())
    assert list(found)[:6] == [
        *("eave/left", "pitch/left/0", "break/left/1", "pitch/left/1", "ridge", "pitch/right/0"),
    ]
    assert found["break/left/1"] == (36, 100)


def test_only_the_ridge_goes_both_ways() -> None:
    ways = {h.key: h.ways for h in handles(loft().room)}
    assert ways.pop("ridge") is Ways.BOTH
    assert ways.pop("width") is Ways.ACROSS
    assert set(ways.values()) == {Ways.UP}


@pytest.mark.parametrize(
    ("key", "name", "text"),
    [
        ("eave/left", "Left eave", '48"'),
        ("pitch/right/0", "Right pitch", "12 in 12"),
        ("ridge", "Ridge height", '168"'),
        ("run/left", "Left run to the ridge", '120"'),
        ("run/right", "Right run to the ridge", '120"'),
        ("ceiling", "Flat ceiling", "108 in"),
        ("width", "Room width", "240 in"),
    ],
)
def test_every_number_has_its_name_and_reads_back(key: str, name: str, text: str) -> None:
    room = loft().room
    assert WORDS.say(name_of(key)) == name
    assert text_of(room, key, WORDS) == text
    assert WORDS.say(told(room, key)).startswith(name)


def test_an_upper_pitch_goes_by_its_number() -> None:
    assert WORDS.say(told(gambrel(), "pitch/left/1")) == "Pitch 2 on the left 6 in 12"
    assert WORDS.say(told(gambrel(), "break/left/1")) == 'Run to change 1 on the left 36"'


def test_the_high_side_of_a_shed_follows_from_its_slope() -> None:
    # 60 + 3/12 * 200 = 110.
    assert text_of(US.room(200, (60, in_12(3))), "high/right", WORDS) == '110"'
