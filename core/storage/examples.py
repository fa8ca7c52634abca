"""What belongs in a place of the file: its name, and a piece of JSON to write there."""

import json
from typing import Final

from core.storage.plain import plain
from core.storage.shapes import (
    Choice,
    Field,
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
)

_SIMPLE: Final = {
    LengthText: ("a length with its unit", '"16 in"'),
    PitchText: ("a pitch", '"9 in 12"'),
    Text: ("a text", '"text"'),
    Whole: ("a whole number", "1"),
    YesNo: ("true or false", "false"),
}


def wanted(shape: Shape) -> str:
    """What belongs where this shape does, in words.

    >>> wanted(LengthText())
    'a length with its unit'
    """
    match shape:
        case Maybe():
            return wanted(shape.inner)
        case Choice():
            return "a text"
        case Several() | Row():
            return "a list"
        case Record():
            return "an object"
    return _SIMPLE[type(shape)][0]


def example(shape: Shape) -> str:
    """A piece of JSON that may stand where this shape does; objects are only hinted at.

    >>> example(LengthText()), example(Whole())
    ('"16 in"', '1')
    """
    match shape:
        case Maybe():
            return example(shape.inner)
        case Choice():
            return json.dumps(shape.values[0])
        case Several():
            return f"[{example(shape.item)}]"
        case Row():
            return f"[{', '.join(example(field.shape) for field in shape.fields)}]"
        case Record():
            return f'{{"{shape.fields[0].name}": …}}'
    return _SIMPLE[type(shape)][1]


def field_example(field: Field) -> str:
    """A piece of JSON for a field that is missing: its default where that is a scalar."""
    scalar = not isinstance(field.shape, Record | Row | Several)
    if scalar and field.has_default:
        return json.dumps(plain(field.shape, field.default), ensure_ascii=False)
    return example(field.shape)


def found(data: object) -> str:
    """What a piece of JSON is, in words."""
    match data:
        case None:
            return "null"
        case bool():
            return "true or false"
        case int() | float():
            return "a number"
        case str():
            return "a text"
        case list():
            return "a list"
    return "an object"
