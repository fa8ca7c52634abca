"""The shapes that the types of the model have in the file."""

from __future__ import annotations

import enum

import msgspec
import pytest
from msgspec import NODEFAULT

from core.lengths import Length, Pitch
from core.model import Point, Side, Timber
from core.storage.document import Document
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
    shape_of,
)


class Peg(msgspec.Struct, frozen=True):
    """A struct with every kind of default."""

    needed: str
    count: int = 1
    note: str | None = None
    holes: tuple[int, ...] = ()
    letter: str = ""


@pytest.mark.parametrize(
    ("annotation", "shape"),
    [
        (str, Text()),
        (int, Whole()),
        (bool, YesNo()),
        (Length, LengthText()),
        (Pitch, PitchText()),
        (Side, Choice(Side)),
        (Length | None, Maybe(LengthText())),
        (None | Side, Maybe(Choice(Side))),
        (tuple[int, ...], Several(Whole())),
        (tuple[Side, ...], Several(Choice(Side))),
        (tuple[int, ...] | None, Maybe(Several(Whole()))),
    ],
)
def test_shape_of_a_type(annotation: object, shape: Shape) -> None:
    assert shape_of(annotation) == shape


def test_struct_is_an_object_of_its_fields_in_their_order() -> None:
    fields = (
        Field("thickness", LengthText(), True, NODEFAULT),
        Field("width", LengthText(), True, NODEFAULT),
    )
    assert shape_of(Timber) == Record(Timber, fields)


def test_point_is_a_list_of_two() -> None:
    fields = (
        Field("across", LengthText(), True, NODEFAULT),
        Field("along", LengthText(), True, NODEFAULT),
    )
    assert shape_of(Point) == Row(Point, fields)


def test_only_none_and_the_empty_tuple_may_be_left_out() -> None:
    shape = shape_of(Peg)
    assert isinstance(shape, Record)
    assert {field.name: (field.needed, field.has_default) for field in shape.fields} == {
        "needed": (True, False),
        "count": (True, True),
        "note": (False, True),
        "holes": (False, True),
        "letter": (True, True),
    }


@pytest.mark.parametrize(
    "annotation",
    [float, bytes, dict[str, int], list[int], tuple[int, str], int | str, int | str | None, None],
)
def test_type_without_a_form_in_the_file_is_refused(annotation: object) -> None:
    with pytest.raises(TypeError, match="no form for"):
        shape_of(annotation)


def test_choice_lists_its_values() -> None:
    class Way(enum.Enum):
        UP = "up"
        DOWN = "down"

    assert Choice(Way).values == ("up", "down")


def test_the_whole_model_has_a_form() -> None:
    shape = shape_of(Document)
    assert isinstance(shape, Record)
    assert [field.name for field in shape.fields] == ["project", "site"]
