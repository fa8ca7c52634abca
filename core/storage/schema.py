"""The JSON Schema of a project file, built from the shapes that reading goes by.

Run as a program, it prints the schema, for `resources/schemas/`. It says all that a schema can say;
how a length is written, and whether ids differ or a head is above its sill, only reading finds out.
"""

import inspect
import sys
from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

import msgspec

from core.model import (
    AddedStud,
    Blocking,
    Box,
    ClearZone,
    Dormer,
    ExistingWall,
    Fixture,
    Header,
    KeptClear,
    Letters,
    MovedStud,
    Nailing,
    Opening,
    Project,
    Purlin,
    Rafter,
    Room,
    Slope,
    StairOpening,
    TopPlate,
    Wall,
    Wing,
)
from core.storage import limits
from core.storage.document import VERSION, Document, format_text
from core.storage.plain import Plain, json_text
from core.storage.sense import WALL_LETTER
from core.storage.sense_wall import ID, RESERVED_IDS
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

DIALECT: Final = "https://json-schema.org/draft/2020-12/schema"

_LENGTH: Final[Plain] = {
    "type": "string",
    "minLength": 1,
    "maxLength": 64,
    "description": "A length as a person writes it, with its unit.",
    "examples": ["16 in", "5' 3 1/2\"", "2438 mm", "1.6 m"],
}
_PITCH: Final[Plain] = {
    "type": "string",
    "minLength": 1,
    "maxLength": 128,
    "description": "A pitch: rise in run, an angle, or two heights, each at a distance.",
    "examples": ["9 in 12", "38°", "33 in at 0 in, 69 in at 48 in"],
}
_SIMPLE: Final[Mapping[type[Shape], Plain]] = MappingProxyType(
    {
        Text: {"type": "string", "maxLength": limits.TEXT_CHARACTERS},
        Whole: {"type": "integer"},
        YesNo: {"type": "boolean"},
        LengthText: {"$ref": "#/$defs/length"},
        PitchText: {"$ref": "#/$defs/pitch"},
    }
)
_ID: Final[dict[str, Plain]] = {
    "pattern": f"^{ID}$",
    "not": {"enum": [*sorted(RESERVED_IDS)]},
}
_FEW: Final[dict[str, Plain]] = {"maxItems": limits.OF_A_WALL}
_PARTS = (Dormer, Wing, Purlin, KeptClear, ClearZone, StairOpening, ExistingWall)
_LISTS = ("dormers", "wings", "purlins", "kept_clear", "stair_openings", "existing_walls")
_PENCIL: Final[dict[str, Plain]] = {"minLength": 1, "maxLength": limits.PENCIL_LETTERS}
_SENSE: Final[Mapping[tuple[type[msgspec.Struct], str], dict[str, Plain]]] = MappingProxyType(
    {
        (Project, "walls"): {"maxItems": limits.WALLS},
        (Wall, "letter"): {"pattern": f"^{WALL_LETTER}$"},
        (Wall, "openings"): _FEW,
        (Wall, "boxes"): _FEW,
        (Wall, "moved"): _FEW,
        (Wall, "added"): _FEW,
        (Wall, "fixtures"): _FEW,
        (Wall, "kept_clear"): _FEW,
        (Blocking, "heights"): _FEW,
        (Rafter, "places"): {"maxItems": limits.RAFTERS},
        (Fixture, "id"): _ID,
        (Wall, "doubled"): _FEW,
        (Wall, "left_out"): {"uniqueItems": True},
        (TopPlate, "count"): {"minimum": 0, "maximum": limits.TOP_PLATES},
        (Header, "plies"): {"minimum": 1, "maximum": limits.PLIES},
        (MovedStud, "place"): {"minimum": 1, "maximum": limits.PLACE},
        (Nailing, "nail"): {"maxLength": limits.NAIL_CHARACTERS},
        (Nailing, "count"): {"minimum": 1, "maximum": limits.NAILS},
        (Opening, "id"): _ID,
        (Box, "id"): _ID,
        (AddedStud, "id"): _ID,
        **{(kind, "id"): _ID for kind in _PARTS},
        **{(Room, name): _FEW for name in _LISTS},
        (Slope, "breaks"): _FEW,
        **{(Letters, name): _PENCIL for name in Letters.__struct_fields__},
    }
)
"""What the rules of sense add to a field, where a schema can say it."""


def schema() -> dict[str, Plain]:
    """The schema of a project file of the version that is written, as plain data."""
    shape = shape_of(Document)
    assert isinstance(shape, Record)
    defs: dict[str, Plain] = {"length": _LENGTH, "pitch": _PITCH}
    body = _record(shape, defs)
    return {
        "$schema": DIALECT,
        "title": f"Eavewright project, version {VERSION}",
        **body,
        "required": ["format", *(field.name for field in shape.fields if field.needed)],
        "properties": {"format": {"const": format_text()}, **_properties(shape, defs)},
        "$defs": dict(sorted(defs.items())),
    }


def _of(shape: Shape, defs: dict[str, Plain]) -> dict[str, Plain]:
    """The schema of a shape; the structs in it are added to `defs` and referred to."""
    match shape:
        case Choice():
            return {"enum": [*shape.values]}
        case Maybe():
            return {"anyOf": [_of(shape.inner, defs), {"type": "null"}]}
        case Several():
            return {
                "type": "array",
                "items": _of(shape.item, defs),
                "maxItems": limits.LIST_ITEMS,
            }
        case Row() | Record():
            name = _name(shape.kind)
            if name not in defs:
                defs[name] = _row(shape, defs) if isinstance(shape, Row) else _record(shape, defs)
            return {"$ref": f"#/$defs/{name}"}
    simple = _SIMPLE[type(shape)]
    assert isinstance(simple, dict)
    return dict(simple)


def _record(shape: Record, defs: dict[str, Plain]) -> dict[str, Plain]:
    return {
        "description": _description(shape.kind),
        "type": "object",
        "additionalProperties": False,
        "required": [field.name for field in shape.fields if field.needed],
        "properties": _properties(shape, defs),
    }


def _properties(shape: Record, defs: dict[str, Plain]) -> dict[str, Plain]:
    return {
        field.name: {**_of(field.shape, defs), **_SENSE.get((shape.kind, field.name), {})}
        for field in shape.fields
    }


def _row(shape: Row, defs: dict[str, Plain]) -> dict[str, Plain]:
    return {
        "description": _description(shape.kind),
        "type": "array",
        "prefixItems": [_of(field.shape, defs) for field in shape.fields],
        "items": False,
        "minItems": len(shape.fields),
    }


def _name(kind: type[msgspec.Struct]) -> str:
    """The name of a struct's schema: `TopPlate` is `top_plate`, as a key would be."""
    return "".join(f"_{c.lower()}" if c.isupper() else c for c in kind.__name__).lstrip("_")


def _description(kind: type[msgspec.Struct]) -> str:
    """The first paragraph of a struct's docstring, on one line."""
    return " ".join((inspect.getdoc(kind) or "").partition("\n\n")[0].split())


def schema_text() -> str:
    """The schema as the text of its file."""
    return f"{json_text(schema())}\n"


if __name__ == "__main__":
    # Bytes, since the file is UTF-8 wherever it is written.
    sys.stdout.buffer.write(schema_text().encode())
