"""What keys stand for."""

from __future__ import annotations

import pytest

from gui.edits import add_fixture, add_stud
from gui.things import Kind, Thing, thing_of
from loft import loft

WALL = add_fixture(add_stud(loft(), "B", 500.0), "B").wall("B")


@pytest.mark.parametrize(
    ("key", "thing"),
    [
        ("B/layout/12", Thing(Kind.STUD, "12")),
        ("B/stud-1", Thing(Kind.STUD, "stud-1")),
        ("B/end/left", Thing(Kind.END, "end/left")),
        ("B/top/1/1", Thing(Kind.PLATE, "top/1/1")),
        ("B/sole", Thing(Kind.PLATE, "sole")),
        ("B/door-1", Thing(Kind.OPENING, "door-1")),
        ("B/door-1/king/left", Thing(Kind.OPENING, "door-1")),
        ("B/door-1/trimmer/right", Thing(Kind.OPENING, "door-1")),
        ("B/door-1/header/1", Thing(Kind.OPENING, "door-1")),
        ("B/door-1/sill/1", Thing(Kind.OPENING, "door-1")),
        ("B/door-1/above/4", Thing(Kind.CRIPPLE, "4")),
        ("B/door-1/below/stud-1", Thing(Kind.CRIPPLE, "stud-1")),
        ("B/box-1", Thing(Kind.BOX, "box-1")),
        ("B/backing-1", Thing(Kind.FIXTURE, "backing-1")),
        ("B/backing-1/layout/2", Thing(Kind.FIXTURE, "backing-1")),
        ("B/blocking/row-1/end/left", Thing(Kind.BLOCK, "blocking/row-1/end/left")),
        ("B/meets/C/left/flat", Thing(Kind.BLOCK, "meets/C/left/flat")),
        ("B/door-9/king/left", None),
        ("C/layout/1", None),
        ("B", None),
        ("", None),
    ],
)
def test_a_key_stands_for_a_thing(key: str, thing: Thing | None) -> None:
    assert thing_of(WALL, key) == thing


@pytest.mark.parametrize(
    ("thing", "place"),
    [
        (Thing(Kind.STUD, "3"), 3),
        (Thing(Kind.CRIPPLE, "4"), 4),
        (Thing(Kind.STUD, "stud-1"), None),
        (Thing(Kind.OPENING, "7"), None),
    ],
)
def test_the_place_in_the_layout(thing: Thing, place: int | None) -> None:
    assert thing.place == place
