"""A document as plain data, and plain data as a text for people."""

from __future__ import annotations

import json

import msgspec
import pytest

from core.lengths import Length, Pitch, System, Tape, Unit
from core.model import Layout, Point, Room, Side, SiteRecord, Slope, Timber
from core.storage import Document, read_document, text_of
from core.storage.plain import Plain, json_text, plain, plain_document
from core.storage.shapes import LengthText, PitchText, Several, Shape, Text, Whole, shape_of

STUD = Timber(Length.of_inches(1.5), Length.of_inches(3.5))


@pytest.mark.parametrize(
    ("value", "data"),
    [
        (Length.of_inches(63.5), "63 1/2 in"),
        (Length.of_inches(63.5, Unit.FEET), "5' 3 1/2\""),
        (Length(2438.0), "2438 mm"),
        (Length(1600.0, Unit.M), "1.6 m"),
        (Pitch(0.75, "9 in 12"), "9 in 12"),
        (Side.LEFT, "left"),
        ("B", "B"),
        (3, 3),
        (True, True),
        (Point(Length.of_inches(36), Length.of_inches(240, Unit.FEET)), ["36 in", "20'"]),
        (STUD, {"thickness": "1 1/2 in", "width": "3 1/2 in"}),
        (
            Tape.usual(System.INCH),
            {"system": "inch", "step": "1/16 in", "feet": False},
        ),
    ],
)
def test_plain_data_of_a_value(value: object, data: Plain) -> None:
    kind: object = type(value)
    assert plain(shape_of(kind), value) == data


def test_defaults_are_written_so_that_a_later_one_changes_no_project() -> None:
    assert plain(shape_of(Layout), Layout(Length.of_inches(16))) == {
        "spacing": "16 in",
        "start": "left",
        "hung_board": "0 mm",
    }


def test_none_and_empty_lists_are_left_out(loft: Document) -> None:
    room = loft.project.room
    bare = msgspec.structs.replace(room, left=None, flat_ceiling=None)
    assert "flat_ceiling" in _keys(room)
    assert _keys(bare) == ["width", "length", "rafter", "right"]
    assert plain(shape_of(SiteRecord), SiteRecord()) == {}


def _keys(room: Room) -> list[str]:
    data = plain(shape_of(Room), room)
    assert isinstance(data, dict)
    return list(data)


def test_document_begins_with_its_format(loft: Document) -> None:
    data = plain_document(loft)
    assert list(data) == ["format", "project", "site"]
    assert data["format"] == "eavewright/1"


@pytest.mark.parametrize(
    ("shape", "value"),
    [
        (LengthText(), "16 in"),
        (LengthText(), None),
        (PitchText(), Length(16.0)),
        (Whole(), 1.5),
        (Text(), Side.LEFT),
        (Several(Whole()), [1, 2]),
    ],
)
def test_value_of_another_shape_is_the_programs_own_mistake(shape: Shape, value: object) -> None:
    with pytest.raises(TypeError, match=type(shape).__name__):
        plain(shape, value)


@pytest.mark.parametrize(
    ("data", "text"),
    [
        ({}, "{}"),
        ([], "[]"),
        ("a", '"a"'),
        (1, "1"),
        (None, "null"),
        (True, "true"),
        ({"a": 1}, '{"a": 1}'),
        ({"a": 1, "b": [2]}, '{\n  "a": 1,\n  "b": [2]\n}'),
        (["36 in", "20'"], '["36 in", "20\'"]'),
        ([1, 5, 7], "[1, 5, 7]"),
        ([["1 in", "2 in"], []], '[\n  ["1 in", "2 in"],\n  []\n]'),
        ({"a": {"b": [{}]}}, '{\n  "a": {\n    "b": [\n      {}\n    ]\n  }\n}'),
        ({"ä": "½\n\u2028\x07"}, '{"ä": "½\\n\u2028\\u0007"}'),
        # 24 numbers with ", " between them and brackets: 72 characters fit on a line, 73 do not.
        ([1] * 24, f"[{'1, ' * 23}1]"),
        ([1] * 23 + [11], "[\n" + "  1,\n" * 23 + "  11\n]"),
    ],
)
def test_text_for_people(data: Plain, text: str) -> None:
    assert json_text(data) == text
    assert json.loads(text) == data


def test_number_that_json_has_not_is_never_written() -> None:
    with pytest.raises(ValueError, match="JSON"):
        json_text([float("nan")])


def test_same_document_same_text(loft: Document, loft_text: str) -> None:
    again = read_document(loft_text.encode(), "again.eave")
    assert text_of(again) == text_of(loft)
    assert text_of(loft).endswith("}\n")
    assert "\r" not in text_of(loft)


def test_text_of_a_small_document() -> None:
    text = json_text(plain(shape_of(Slope), Slope(Length.of_inches(33), Pitch(0.75, "9 in 12"))))
    assert text == '{"eave_height": "33 in", "pitch": "9 in 12"}'
