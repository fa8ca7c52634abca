"""What stops an opening on its way, and how high it can go."""

from __future__ import annotations

import pytest

from core.framing.stopping import Stop, highest_sill, opening_stop
from core.model import Opening, Room, Wall
from walls import US, frame_of, in_12

INCH = 25.4
RAKE = US.room(264, left=(24, in_12(9)))
"""Over a wall from u = 60: 69 in. high at x = 0, rising 9 in 12 from there to the ridge."""

DOOR = US.opening("door-1", 70, 30, 80)
OTHER = US.opening("door-2", 110, 30, 80)


def wall_with(*openings: Opening) -> Wall:
    return US.wall((60, 9), (240, 9), openings=openings)


def stop_at(wall: Wall, left: float, room: Room = RAKE) -> tuple[Stop | None, str]:
    frame = frame_of(room, wall)
    others = tuple(o for o in wall.openings if o.id != "door-1")
    over = (frame.near, frame.far)
    return opening_stop(wall, wall.opening("door-1"), over, others, left * INCH)


@pytest.mark.parametrize(
    ("left", "expected"),
    [
        # Plates 1 1/2 thick come down by 1 7/8 on 9 in 12: at 67 1/8 + 3/4 x the header's top,
        # 81 1/2, passes from x = 19 1/6, and the opening begins a trimmer later at 20 2/3.
        (20.5, (Stop.SLOPE, "")),
        (20.75, (None, "")),
        # The other's kings and trimmers and its own are 6 in.: 110 - 6 - 30 = 74, 140 + 6 = 146.
        (74.0, (None, "")),
        (75.0, (Stop.THING, "door-2")),
        (145.0, (Stop.THING, "door-2")),
        # End stud, king, trimmer are 4 1/2, so 180 - 4 1/2 - 30 = 145 1/2 is the last at that end.
        (145.75, (Stop.END, "")),
    ],
)
def test_an_opening_is_stopped(left: float, expected: tuple[Stop | None, str]) -> None:
    assert stop_at(wall_with(DOOR, OTHER), left) == expected


def test_the_highest_sill_lets_the_header_pass_at_its_low_end() -> None:
    # The header begins at 68 1/2: 67 1/8 + 51 3/8 = 118 1/2, less its 1 1/2 and 40 of window.
    window = US.opening("window-1", 70, 30, 80, sill=40)
    wall = wall_with(window)
    frame = frame_of(RAKE, wall)
    assert highest_sill(wall, window, (frame.near, frame.far)) == pytest.approx(77 * INCH)
