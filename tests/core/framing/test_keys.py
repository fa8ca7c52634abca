"""Keys that are read again: of plates, of their pieces, and whatever the person called things."""

from __future__ import annotations

import pytest

from core.framing import keys
from core.framing.fitted import reaches_plates
from core.storage.sense_wall import RESERVED_IDS
from walls import US, frame_of, in_12

ROOM = US.room(240, (60, in_12(0)))


@pytest.mark.parametrize(
    ("key", "run", "layer", "uppermost", "stretch"),
    [
        ("B/top/1/1", "B/top/1", "B/top/1/1", True, "B/top/1/1"),
        ("B/top/1/2", "B/top/1", "B/top/1/2", False, "B/top/1/2"),
        ("B/top/1/2/layout/9", "B/top/1", "B/top/1/2", False, "B/top/1/2"),
        (
            "B/top/1/1/past/purlin-1/layout/9",
            "B/top/1",
            "B/top/1/1",
            True,
            "B/top/1/1/past/purlin-1",
        ),
    ],
)
def test_of_which_plate(key: str, run: str, layer: str, uppermost: bool, stretch: str) -> None:
    assert keys.plate_run(key) == run
    assert keys.layer(key) == layer
    assert keys.is_uppermost(key) is uppermost
    assert keys.stretch(key) == stretch


def test_words_that_keys_are_read_by_are_kept() -> None:
    """A piece over the king of an opening "past" would read as one beyond a purlin "king".

    The second stud of an added stud "double" ends like any added stud of that name, and pieces
    over a purlin have "over" in the middle of their keys.
    """
    assert keys.piece("B/top/1/2", "B/past/king/left") == "B/top/1/2/past/king/left"
    assert keys.is_double(keys.added("B", "double"))
    assert keys.is_over("B/over/king/left")
    assert {"past", "double", "over"} <= RESERVED_IDS


def test_a_window_called_above() -> None:
    """Its cripples under the sill stand on the sole plate and do not reach the top plates."""
    window = US.opening("above", 40, 40, 48, sill=30)
    wall = US.wall((100, 20), (100, 160), openings=(window,))
    frame = frame_of(ROOM, wall)
    below = [m for m in frame.members if m.key == keys.cripple("B", "above", "below", "3")]
    assert [keys.on_header(m.key) for m in below] == [False]
    assert not any(reaches_plates(m) for m in below)
