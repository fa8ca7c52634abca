"""What a sentence suggests can be written, and is read."""

from __future__ import annotations

import json

import pytest

from core.lengths import Length, Pitch
from core.model import Layout, LineEdge, Point, Side, Timber, TopPlate
from core.storage.examples import example, field_example, found, wanted
from core.storage.faults import Faults
from core.storage.read import read
from core.storage.shapes import Record, shape_of


@pytest.mark.parametrize(
    ("annotation", "words"),
    [
        (str, "a text"),
        (int, "a whole number"),
        (bool, "true or false"),
        (Length, "a length with its unit"),
        (Pitch, "a pitch"),
        (LineEdge, "a text"),
        (Length | None, "a length with its unit"),
        (tuple[int, ...], "a list"),
        (Point, "a list"),
        (Timber, "an object"),
    ],
)
def test_what_is_wanted(annotation: object, words: str) -> None:
    assert wanted(shape_of(annotation)) == words


@pytest.mark.parametrize(
    "annotation",
    [str, int, bool, Length, Pitch, Side, Length | None, tuple[int, ...], tuple[Point, ...], Point],
)
def test_example_is_read_without_a_fault(annotation: object) -> None:
    faults = Faults(10)
    shape = shape_of(annotation)
    assert read(shape, json.loads(example(shape)), "", faults) is not None
    assert not faults


def test_example_of_an_object_hints_at_its_first_key() -> None:
    assert example(shape_of(Timber)) == '{"thickness": …}'


@pytest.mark.parametrize(
    ("kind", "examples"),
    [
        (Layout, ['"16 in"', '"left"', '"0 mm"', "null"]),
        (TopPlate, ['{"thickness": …}', "1", "null"]),
    ],
)
def test_example_of_a_missing_field_is_its_default(kind: object, examples: list[str]) -> None:
    shape = shape_of(kind)
    assert isinstance(shape, Record)
    assert [field_example(field) for field in shape.fields] == examples


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (None, "null"),
        (True, "true or false"),
        (1, "a number"),
        (1.5, "a number"),
        ("1", "a text"),
        ([], "a list"),
        ({}, "an object"),
    ],
)
def test_what_is_found(data: object, words: str) -> None:
    assert found(data) == words
