"""From a document to plain data, and to the text of its file."""

import enum
import json
from typing import Final, TypeAlias

import msgspec

from core.lengths import Length, Pitch, write, write_pitch
from core.storage.document import Document, format_text
from core.storage.shapes import (
    Choice,
    LengthText,
    Maybe,
    PitchText,
    Record,
    Row,
    Several,
    Shape,
    Text,
    Whole,
    YesNo,
    shape_of,
)

Plain: TypeAlias = "bool | int | float | str | list[Plain] | dict[str, Plain] | None"
"""Data as JSON has it."""

_LINE: Final = 72
"""The longest list or object of scalars that stands on one line, characters."""


def text_of(document: Document) -> str:
    """The text of a document's file; the same for the same document, with a line feed at the end.

    A length or pitch comes out in its own unit, in the one way that `core.lengths` writes it.
    """
    return f"{json_text(plain_document(document))}\n"


def plain_document(document: Document) -> dict[str, Plain]:
    """The plain data of a document, its format first."""
    body = plain(shape_of(Document), document)
    assert isinstance(body, dict)
    return {"format": format_text(), **body}


def plain(shape: Shape, value: object) -> Plain:
    """The plain data of a value that has this shape.

    >>> plain(shape_of(Length), Length.of_inches(16))
    '16 in'
    """
    match shape, value:
        case LengthText(), Length():
            return write(value)
        case PitchText(), Pitch():
            return write_pitch(value)
        case Choice(), enum.Enum():
            return str(value.value)
        case Maybe(), _:
            return None if value is None else plain(shape.inner, value)
        case Several(), tuple():
            return [plain(shape.item, item) for item in value]
        case ((Row() | Record()), msgspec.Struct()):
            return _plain_struct(shape, value)
        case Text(), str():
            return value
        case ((YesNo() | Whole()), int()):
            return value
    raise TypeError(f"{value!r} is no {type(shape).__name__}")


def _plain_struct(shape: Row | Record, value: msgspec.Struct) -> Plain:
    """A struct as a list, or as an object without the fields that may be left out and are."""
    if isinstance(shape, Row):
        return [plain(field.shape, getattr(value, field.name)) for field in shape.fields]
    return {
        field.name: plain(field.shape, getattr(value, field.name))
        for field in shape.fields
        if field.needed or getattr(value, field.name) not in (None, ())
    }


def json_text(data: Plain, margin: str = "") -> str:
    """Plain data as JSON for people: indented by two, what is short and flat on one line.

    >>> print(json_text({"left_end": ["3'", "10'"], "stud": {"width": "3 1/2 in"}}))
    {
      "left_end": ["3'", "10'"],
      "stud": {"width": "3 1/2 in"}
    }
    """
    inner = f"{margin}  "
    if isinstance(data, dict | list) and (line := _one_line(data)) is not None:
        return line
    if isinstance(data, dict) and data:
        lines = [f"{_scalar(key)}: {json_text(item, inner)}" for key, item in data.items()]
        return _block("{", lines, "}", margin)
    if isinstance(data, list):
        return _block("[", [json_text(item, inner) for item in data], "]", margin)
    return _scalar(data)


def _block(first: str, lines: list[str], last: str, margin: str) -> str:
    """Brackets on lines of their own about indented lines."""
    body = f",\n{margin}  ".join(lines)
    return f"{first}\n{margin}  {body}\n{margin}{last}"


def _one_line(data: list[Plain] | dict[str, Plain]) -> str | None:
    """A list or object of scalars alone as one short line; None where it is too much for that."""
    items = data.values() if isinstance(data, dict) else data
    if any(isinstance(item, list | dict) for item in items):
        return None
    line = json.dumps(data, ensure_ascii=False, allow_nan=False)
    return line if len(line) <= _LINE else None


def _scalar(value: Plain) -> str:
    """The JSON of a scalar; letters stand as themselves."""
    return json.dumps(value, ensure_ascii=False, allow_nan=False)
