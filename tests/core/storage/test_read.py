"""Reading a file: what a hand-written one states, and every fault of one that was spoilt."""

from __future__ import annotations

import json
from typing import Any

import msgspec
import pytest

from core.lengths import Length, System, Unit
from core.model import BoxHeight, HeaderKind, LineEdge, Point, PrintedLabel, Side
from core.storage import Document, StorageError, limits, read_document, text_of


def faults_of(text: str) -> dict[str, str]:
    """The sentence of each fault by its place."""
    with pytest.raises(StorageError) as refused:
        read_document(text.encode(), "loft.eave")
    assert "\n" not in str(refused.value)
    return {fault.place: str(fault) for fault in refused.value.faults}


def spoilt(text: str, old: str, new: str) -> str:
    """The text with the only `old` in it made `new`."""
    assert text.count(old) == 1
    return text.replace(old, new)


def test_hand_written_file_states_what_is_in_it(loft: Document) -> None:
    project, wall = loft.project, loft.project.wall("B")
    assert (project.name, project.system) == ("The sail loft", System.INCH)
    assert project.room.width == Length.of_inches(288, Unit.FEET)
    assert project.room.right is not None
    assert project.room.right.pitch.tangent == 0.75
    assert wall.left_end == Point(Length.of_inches(0), Length.of_inches(120, Unit.FEET))
    assert wall.top_plate.timber.width == Length(89.0)
    assert (wall.layout.start, wall.layout.hung_board.mm) == (Side.RIGHT, 12.7)
    assert wall.opening("door-1").header.kind is HeaderKind.ON_EDGE
    assert wall.box("switch").to is BoxHeight.CENTRE
    assert (wall.moved[0].place, wall.added[0].id, wall.left_out) == (3, "rail", (5, 7))
    assert (project.habits.line_edge, project.habits.tape.feet) == (LineEdge.UPHILL, True)
    assert loft.site.printed == (PrintedLabel("B/end/left", "B1"),)


def test_written_again_it_states_the_same(loft: Document, loft_text: str) -> None:
    again = text_of(loft)
    assert read_document(again.encode(), "again.eave") == loft
    assert _keys(json.loads(again)) == _keys(json.loads(loft_text))


def _keys(data: Any) -> Any:
    """Only the keys and the numbers of items of plain data."""
    if isinstance(data, dict):
        return {key: _keys(item) for key, item in data.items()}
    return [_keys(item) for item in data] if isinstance(data, list) else None


@pytest.mark.parametrize(
    ("old", "new", "place", "sentence"),
    [
        # Keys
        (
            '"flat_ceiling"',
            '"flat_celing"',
            "project.room.flat_celing",
            "this key is not known here; write “flat_ceiling” if that is meant.",
        ),
        (
            '"hung_board": "1/2 in"',
            '"hung_board": "1/2 in", "colour": "red"',
            "project.walls[0].layout.colour",
            "this key is not known here; take it out, or write one of spacing, start, hung_board,"
            " origin.",
        ),
        # The key that it is nearest to is there already, so that one cannot be meant.
        (
            '"spacing": "16 in"',
            '"spacing": "16 in", "spacng": "16 in"',
            "project.walls[0].layout.spacng",
            "this key is not known here; take it out, or write one of spacing, start, hung_board,"
            " origin.",
        ),
        (
            ', "hung_board": "1/2 in"',
            "",
            "project.walls[0].layout.hung_board",
            'this key is missing; add it, as in “hung_board”: "0 mm".',
        ),
        (
            '"left": "100 in",',
            "",
            "project.walls[0].openings[0].left",
            'this key is missing; add it, as in “left”: "16 in".',
        ),
        (
            '"spacing": "16 in"',
            '"spacing": "16 in", "spacing": "24 in"',
            "project.walls[0].layout.spacing",
            "this key is there more than once; keep the one that is meant.",
        ),
        (
            '"site": {',
            '"site": {"": 1, ',
            'site[""]',
            "this key is not known here; take it out, or write one of printed, cut, sheets.",
        ),
        # Types
        (
            '"7\'-10\\""',
            "94",
            "project.room.flat_ceiling",
            'a number is here instead of a length with its unit; write it as in "16 in".',
        ),
        (
            '"9 in 12"',
            "[9, 12]",
            "project.room.left.pitch",
            'a list is here instead of a pitch; write it as in "9 in 12".',
        ),
        (
            '"plies": 2',
            '"plies": "2"',
            "project.walls[0].openings[0].header.plies",
            "a text is here instead of a whole number; write it as in 1.",
        ),
        (
            '"plies": 2',
            '"plies": 2.0',
            "project.walls[0].openings[0].header.plies",
            "a number is here instead of a whole number; write it as in 1.",
        ),
        (
            '"plies": 2',
            '"plies": true',
            "project.walls[0].openings[0].header.plies",
            "true or false is here instead of a whole number; write it as in 1.",
        ),
        (
            '"feet": true',
            '"feet": 1',
            "project.habits.tape.feet",
            "a number is here instead of true or false; write it as in false.",
        ),
        (
            '"name": "The sail loft"',
            '"name": null',
            "project.name",
            'null is here instead of a text; write it as in "text".',
        ),
        (
            '["0 in", "10\'"]',
            '{"across": "0 in", "along": "10\'"}',
            "project.walls[0].left_end",
            'an object is here instead of a list; write it as in ["16 in", "16 in"].',
        ),
        (
            '["0 in", "10\'"]',
            '["0 in"]',
            "project.walls[0].left_end",
            'a list of 1 is here instead of one of 2; write it as in ["16 in", "16 in"].',
        ),
        (
            '[{"key": "B/end/left", "label": "B1"}]',
            '["B1"]',
            "site.printed[0]",
            'a text is here instead of an object; write it as in {"key": …}.',
        ),
        # Values
        (
            '["0 in", "10\'"]',
            '["0", "10\'"]',
            "project.walls[0].left_end[0]",
            "“0” has no unit; write 0 in or 0 mm.",
        ),
        (
            '"system": "inch",\n    "room"',
            '"system": "imperial",\n    "room"',
            "project.system",
            "“imperial” is no choice here; write “inch” or “metric”.",
        ),
        (
            "[5, 7]",
            "[5, NaN]",
            "project.walls[0].left_out[1]",
            "“NaN” is not a number; write the number out, as in 16.",
        ),
        (
            '"1/16 in"',
            '"1/7 in"',
            "project.habits.tape",
            "a tape in the inch system has no step of 1/7 in; write a step such as 1/16 in.",
        ),
        # Sense, asked for once the form is right
        (
            '"count": 2',
            '"count": 3',
            "project.walls[0].top_plate.count",
            "3 is not from 0 to 2; write 0 to 2.",
        ),
    ],
)
def test_one_fault_is_told_with_its_place(
    loft_text: str, old: str, new: str, place: str, sentence: str
) -> None:
    assert faults_of(spoilt(loft_text, old, new)) == {place: sentence}


def test_all_faults_are_told_in_the_order_of_the_file(loft_text: str) -> None:
    text = loft_text
    for old, new in [
        ('"The sail loft"', "7"),
        ('"24\'-0\\""', '"24 foo"'),
        ('"letter": "B"', '"leter": "B"'),
        ('"plies": 2', '"plies": []'),
        ('"uphill"', '"downhill"'),
        ('"label": "B1"', '"label": 1'),
    ]:
        text = spoilt(text, old, new)
    assert list(faults_of(text)) == [
        "project.name",
        "project.room.width",
        "project.walls[0].leter",
        "project.walls[0].openings[0].header.plies",
        "project.habits.line_edge",
        "site.printed[0].label",
    ]


def test_error_counts_what_it_does_not_tell(loft_text: str) -> None:
    text = spoilt(spoilt(loft_text, '"The sail loft"', "7"), '"uphill"', "7")
    with pytest.raises(StorageError) as refused:
        read_document(text.encode(), "loft.eave")
    assert str(refused.value) == (
        "loft.eave, project.name: a number is here instead of a text; write it as in"
        ' "text" (and 1 more fault).'
    )


def test_mistyped_key_does_not_make_its_right_spelling_missing(loft_text: str) -> None:
    assert list(faults_of(spoilt(loft_text, '"spacing": "16 in"', '"spacng": "16 in"'))) == [
        "project.walls[0].layout.spacng"
    ]


def test_sense_is_asked_for_beside_a_key_that_is_there_twice(loft_text: str) -> None:
    text = spoilt(loft_text, '"letter": "B"', '"letter": "B", "letter": "b"')
    text = spoilt(text, '"count": 2', '"count": 3')
    assert list(faults_of(text)) == [
        "project.walls[0].letter",
        "project.walls[0].top_plate.count",
    ]


def test_repeated_key_with_a_bad_value_makes_no_struct_of_it(loft_text: str) -> None:
    """The place has its one fault already when the value turns out to be bad as well."""
    text = spoilt(loft_text, '"step": "1/16 in"', '"step": "1/16 in", "step": 3')
    assert list(faults_of(text)) == ["project.habits.tape.step"]


def test_every_key_but_the_optional_ones_must_be_there() -> None:
    text = '{"format": "eavewright/1", "project": {"walls": [{}]}}'
    assert list(faults_of(text)) == [
        "site",
        "project.name",
        "project.system",
        "project.room",
        "project.habits",
        "project.walls[0].letter",
        "project.walls[0].name",
        "project.walls[0].left_end",
        "project.walls[0].right_end",
        "project.walls[0].stud",
        "project.walls[0].sole_plate",
        "project.walls[0].top_plate",
        "project.walls[0].layout",
    ]


def test_optional_things_may_be_null_or_left_out(loft: Document, loft_text: str) -> None:
    nulled = spoilt(loft_text, '"7\'-10\\""', "null")
    left_out = spoilt(loft_text, ',\n      "flat_ceiling": "7\'-10\\""', "")
    for text in (nulled, left_out):
        room = read_document(text.encode(), "loft.eave").project.room
        assert room == msgspec.structs.replace(loft.project.room, flat_ceiling=None)


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ('{"format": "eavewright/1"}', "project"),
        ('{"format": "eavewright/1", "project": [], "site": {}}', "project"),
        ('{"format": "eavewright/1", "project": null, "site": {}}', "project"),
        ('{"project": {}, "site": {}}', "format"),
        ("[]", "format"),
        ("null", "format"),
    ],
)
def test_what_is_no_project_at_all(text: str, place: str) -> None:
    assert next(iter(faults_of(text))) == place


def test_looking_for_faults_ends_somewhere() -> None:
    items = ",".join("{}" for _ in range(9_000))
    text = f'{{"format": "eavewright/1", "project": {{"walls": [{items}]}}, "site": {{}}}}'
    assert len(faults_of(text)) == limits.FAULTS
    many = ",".join(f'"key{n}": 1' for n in range(9_000))
    assert len(faults_of(f'{{"format": "eavewright/1", {many}}}')) == limits.FAULTS


def test_newer_file_is_refused_before_it_is_looked_into() -> None:
    assert list(faults_of('{"format": "eavewright/2", "rooms": []}')) == ["format"]
