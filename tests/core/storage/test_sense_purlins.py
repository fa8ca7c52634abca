"""How walls pass purlins, as a file may tell it: each once, and of purlins that are there."""

from __future__ import annotations

import msgspec
import pytest

from core.model import PassesPurlin, Passing, Purlin
from core.storage.sense_purlins import purlins_passed
from walls import UK, at_degrees

ROOM = msgspec.structs.replace(
    UK.room(6000, (900, at_degrees(40)), None, length=8000),
    purlins=(
        Purlin(
            "purlin-1",
            UK.length(1500),
            UK.timber((75, 175)),
            UK.length(1100),
            Passing.UNDER,
            UK.length(5),
        ),
    ),
)


@pytest.mark.parametrize(
    ("names", "reasons"),
    [
        ((), []),
        (("purlin-1",), []),
        (("purlin-2",), ["“purlin-2” is no purlin of this room"]),
        (("purlin-1", "purlin-1"), ["“purlin-1” is in this list already"]),
    ],
)
def test_each_purlin_is_there_and_told_of_once(names: tuple[str, ...], reasons: list[str]) -> None:
    passes = tuple(PassesPurlin(name, Passing.THROUGH) for name in names)
    wall = msgspec.structs.replace(UK.wall((1000, 0), (1000, 3000)), passes=passes)
    assert [fault.reason for fault in purlins_passed(wall, ROOM, "w")] == reasons
