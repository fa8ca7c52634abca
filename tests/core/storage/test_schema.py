"""The JSON Schema: kept with the code, and at one with what is written and read."""

from __future__ import annotations

import copy
import json
import subprocess
import sys
from importlib.resources import files
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

import resources
from core.storage import Document, StorageError, read_document, text_of
from core.storage.plain import plain_document
from core.storage.schema import schema, schema_text
from strategies import projects, site_records

NAME = "eavewright-1.schema.json"
REWRITE = f"python -m core.storage.schema > resources/schemas/{NAME}"
VALIDATOR = Draft202012Validator(schema())


def test_file_is_that_of_the_code() -> None:
    text = files(resources).joinpath("schemas", NAME).read_text(encoding="utf-8")
    assert text == schema_text(), f"the schema is not that of the code; rewrite it with: {REWRITE}"


def test_command_prints_the_schema() -> None:
    command = [sys.executable, "-W", "error", "-m", "core.storage.schema"]
    printed = subprocess.run(command, check=True, capture_output=True, encoding="utf-8")
    assert (printed.stdout, printed.stderr) == (schema_text(), "")


def test_schema_is_one() -> None:
    Draft202012Validator.check_schema(schema())
    assert json.loads(schema_text()) == schema()


def test_hand_written_file_is_valid(loft_text: str) -> None:
    VALIDATOR.validate(json.loads(loft_text))


@given(st.data())
def test_written_documents_are_valid(data: st.DataObject) -> None:
    project = data.draw(projects())
    document = Document(project, data.draw(site_records(project)))
    VALIDATOR.validate(json.loads(text_of(document)))


def objects(data: Any) -> list[dict[str, Any]]:
    """Every object in plain data, outermost first."""
    inner = data.values() if isinstance(data, dict) else data if isinstance(data, list) else ()
    found = [item for part in inner for item in objects(part)]
    return [data, *found] if isinstance(data, dict) else found


def test_unknown_keys_are_not_valid_anywhere(loft: Document) -> None:
    count = len(objects(plain_document(loft)))
    assert count > 20
    for index in range(count):
        data = copy.deepcopy(plain_document(loft))
        objects(data)[index]["colour"] = "red"
        assert not VALIDATOR.is_valid(data), objects(data)[index]


def test_key_that_reading_misses_the_schema_misses_too(loft: Document) -> None:
    """Each key of each object taken out in turn: valid for the schema just where it is read."""
    whole = plain_document(loft)
    keys = [(i, key) for i, found in enumerate(objects(whole)) for key in found]
    for index, key in keys:
        data = copy.deepcopy(whole)
        del objects(data)[index][key]
        assert VALIDATOR.is_valid(data) == is_read(data), key


def is_read(data: Any) -> bool:
    try:
        read_document(json.dumps(data).encode(), "a.eave")
    except StorageError:
        return False
    return True


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ('"format": "eavewright/1"', '"format": "eavewright/2"'),
        ('"letter": "B"', '"letter": "b"'),
        ('"id": "door-1"', '"id": "Door 1"'),
        ('"id": "switch"', '"id": "top"'),
        ('"id": "rail"', '"id": ""'),
        ('"count": 2', '"count": 3'),
        ('"plies": 2', '"plies": 0'),
        ('"place": 3', '"place": 0'),
        ('"place": 3', '"place": 10001'),
        ("[5, 7]", "[5, 5]"),
        ('["0 in", "10\'"]', '["0 in"]'),
        ('["0 in", "10\'"]', '["0 in", "10\'", "1 in"]'),
        ('"start": "right"', '"start": "middle"'),
        ('"spacing": "16 in"', '"spacing": 16'),
        ('"spacing": "16 in"', '"spacing": ""'),
        ('"feet": true', '"feet": "yes"'),
        ('"trimmer": "J"', '"trimmer": ""'),
        ('"trimmer": "J"', '"trimmer": "jack"'),
        ('"name": "The sail loft"', '"name": null'),
    ],
)
def test_what_the_schema_refuses_reading_refuses(loft_text: str, old: str, new: str) -> None:
    assert loft_text.count(old) == 1
    spoilt = loft_text.replace(old, new)
    assert not VALIDATOR.is_valid(json.loads(spoilt))
    with pytest.raises(StorageError):
        read_document(spoilt.encode(), "a.eave")


@pytest.mark.parametrize("name", ["openings", "boxes", "moved", "added"])
def test_lists_of_a_wall_end_at_200(loft: Document, name: str) -> None:
    data: Any = plain_document(loft)
    wall = data["project"]["walls"][0]
    wall[name] = wall[name] * 200
    VALIDATOR.validate(data)
    wall[name] = [*wall[name], wall[name][0]]
    assert not VALIDATOR.is_valid(data)
