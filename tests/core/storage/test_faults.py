"""Faults, where they are, and the one sentence that tells them."""

from __future__ import annotations

import pickle

import pytest

from core.storage.faults import (
    Fault,
    Faults,
    StorageError,
    TooManyFaults,
    item_place,
    key_place,
    printable,
    quoted,
)

ROOM = Fault("project.room", "the roof has no slope", "state one")
WALL = Fault("project.walls[0].letter", "“b” is no letter", "write B")
FILE = Fault("", "the file is empty", "open a copy")


@pytest.mark.parametrize(
    ("path", "faults", "sentence"),
    [
        ("a.eave", (ROOM,), "a.eave, project.room: the roof has no slope; state one."),
        ("a.eave", (FILE,), "a.eave: the file is empty; open a copy."),
        (
            "/jobs/loft.eave",
            (WALL, ROOM),
            "/jobs/loft.eave, project.walls[0].letter: “b” is no letter; write B"
            " (and 1 more fault).",
        ),
        (
            "a.eave",
            (ROOM, WALL, FILE),
            "a.eave, project.room: the roof has no slope; state one (and 2 more faults).",
        ),
        ("", (FILE,), "the file: the file is empty; open a copy."),
        ("a\nb\udcff.eave", (FILE,), "a\ufffdb\ufffd.eave: the file is empty; open a copy."),
    ],
)
def test_error_is_one_sentence(path: str, faults: tuple[Fault, ...], sentence: str) -> None:
    error = StorageError(path, faults)
    assert str(error) == sentence
    assert (error.path, error.faults) == (path, faults)


def test_error_crosses_to_another_process() -> None:
    error = pickle.loads(pickle.dumps(StorageError("a.eave", (ROOM, WALL))))
    assert (error.path, error.faults) == ("a.eave", (ROOM, WALL))


def test_fault_alone_is_a_sentence_without_its_place() -> None:
    assert str(WALL) == "“b” is no letter; write B."


@pytest.mark.parametrize(
    ("place", "key", "whole"),
    [
        ("", "project", "project"),
        ("project.room", "width", "project.room.width"),
        ("project", "a b", 'project["a b"]'),
        ("", "a b", '["a b"]'),
        ("project", "", 'project[""]'),
        ("project", "1st", 'project["1st"]'),
        ("project", "a\nb\x00", 'project["a b\ufffd"]'),
        # 61 letters are one too many: 59 of them and an ellipsis stay.
        ("project", "k" * 61, f'project["{"k" * 59}…"]'),
    ],
)
def test_place_of_a_key(place: str, key: str, whole: str) -> None:
    assert key_place(place, key) == whole


def test_place_of_an_item_counts_from_nought() -> None:
    assert item_place("project.walls", 0) == "project.walls[0]"


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("16 in", "16 in"),
        ("two\nlines  and\ttabs", "two lines and tabs"),
        ("bell \x07", "bell \ufffd"),
        ("x" * 60, "x" * 60),
        ("x" * 61, "x" * 59 + "…"),
        ("x" * 10_000_000, "x" * 59 + "…"),
        ("", ""),
    ],
)
def test_quoted_text_stays_on_one_short_line(text: str, shown: str) -> None:
    assert quoted(text) == shown


def test_printable_keeps_letters_of_all_sorts() -> None:
    assert printable("Dachböden/łódź.eave") == "Dachböden/łódź.eave"


def test_one_fault_for_a_place_the_first() -> None:
    faults = Faults(limit=10)
    for fault in (ROOM, WALL, Fault("project.room", "something else", "mend it")):
        faults.add(fault)
    assert faults.found == (ROOM, WALL)
    assert (len(faults), faults.told) == (2, 3)


def test_looking_for_faults_ends_at_the_limit() -> None:
    faults = Faults(limit=2)
    faults.add(ROOM)
    with pytest.raises(TooManyFaults):
        faults.add(WALL)
    assert faults.found == (ROOM, WALL)
