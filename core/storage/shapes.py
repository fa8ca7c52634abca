"""Shapes: how every type of the model stands in the file, found from the annotations.

Writing, reading and the schema all go by these shapes, so that they cannot disagree.

    str, int, bool         text, whole number, true or false
    an enum                its value
    Length, Pitch          a text as a person writes it, with the unit
    X | None               X, or left out
    tuple[X, ...]          a list
    Point                  a list of its two lengths
    any other struct       an object with the fields as keys
"""

import enum
import types
import typing
from functools import cache
from typing import Final

import msgspec

from core.lengths import Length, Pitch
from core.model import Point


class Text(msgspec.Struct, frozen=True):
    """A text."""


class Whole(msgspec.Struct, frozen=True):
    """A whole number."""


class YesNo(msgspec.Struct, frozen=True):
    """True or false."""


class LengthText(msgspec.Struct, frozen=True):
    """A length, as a text with its unit."""


class PitchText(msgspec.Struct, frozen=True):
    """A pitch, as a text."""


class Choice(msgspec.Struct, frozen=True):
    """The value of a member of an enum whose values are texts."""

    kind: type[enum.Enum]

    @property
    def values(self) -> tuple[str, ...]:
        """The values that may stand in the file."""
        return tuple(str(member.value) for member in self.kind)


class Maybe(msgspec.Struct, frozen=True):
    """Something that may be left out."""

    inner: "Shape"


class Several(msgspec.Struct, frozen=True):
    """A list of any number of items of one shape."""

    item: "Shape"


class Field(msgspec.Struct, frozen=True):
    """A field of a struct; `needed` tells whether it must stand in the file.

    Only what is None or an empty tuple by default may be left out, so that a later change of any
    other default changes nobody's project.
    """

    name: str
    shape: "Shape"
    needed: bool
    default: object
    """`msgspec.NODEFAULT` where there is none."""

    @property
    def has_default(self) -> bool:
        """Whether the struct has a default for the field."""
        return self.default is not msgspec.NODEFAULT


class Row(msgspec.Struct, frozen=True):
    """A struct that stands as a list of its fields' values."""

    kind: type[msgspec.Struct]
    fields: tuple[Field, ...]


class Record(msgspec.Struct, frozen=True):
    """A struct that stands as an object with its fields as keys, in their order."""

    kind: type[msgspec.Struct]
    fields: tuple[Field, ...]


Shape = Text | Whole | YesNo | LengthText | PitchText | Choice | Maybe | Several | Row | Record

_PLAIN: Final[dict[object, Shape]] = {
    str: Text(),
    int: Whole(),
    bool: YesNo(),
    Length: LengthText(),
    Pitch: PitchText(),
}
_ROWS: Final = (Point,)


@cache
def shape_of(annotation: object) -> Shape:
    """The shape of a type.

    Raises:
        TypeError: when the file format has no form for the type; the model must not use it.
    """
    if annotation in _PLAIN:
        return _PLAIN[annotation]
    if isinstance(annotation, type) and issubclass(annotation, enum.Enum):
        return Choice(annotation)
    if isinstance(annotation, type) and issubclass(annotation, msgspec.Struct):
        form = Row if annotation in _ROWS else Record
        return form(annotation, _fields(annotation))
    return _composed(annotation)


def _composed(annotation: object) -> Shape:
    """The shape of an optional type or of a tuple of any length."""
    origin, parts = typing.get_origin(annotation), typing.get_args(annotation)
    if origin in (types.UnionType, typing.Union):
        inner = [part for part in parts if part is not types.NoneType]
        if len(inner) == 1:
            return Maybe(shape_of(inner[0]))
    if origin is tuple and len(parts) == 2 and parts[1] is Ellipsis:
        return Several(shape_of(parts[0]))
    raise TypeError(f"a project file has no form for {annotation}")


def _fields(kind: type[msgspec.Struct]) -> tuple[Field, ...]:
    """The fields of a struct, in their order."""
    return tuple(
        Field(info.name, shape_of(info.type), not _may_be_left_out(info.default), info.default)
        for info in msgspec.structs.fields(kind)
    )


def _may_be_left_out(default: object) -> bool:
    """Whether a field with this default may be left out of the file when it has it."""
    return default is None or default == ()
