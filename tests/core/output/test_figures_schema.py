"""The packaged schema of the figures."""

import json
from importlib.resources import files
from typing import Any

import pytest
from jsonschema import Draft202012Validator

import resources
from core.output.figures_schema import FILE, write_figures_schema


def packaged() -> str:
    return files(resources).joinpath("schemas", FILE).read_text("utf-8")


def definitions() -> dict[str, Any]:
    found: dict[str, Any] = json.loads(packaged())["$defs"]
    return found


def test_the_packaged_schema_is_the_one_the_code_makes() -> None:
    """After a change to the form: write the text of write_figures_schema() to this file."""
    assert packaged() == write_figures_schema()


def test_it_is_a_valid_schema() -> None:
    Draft202012Validator.check_schema(json.loads(packaged()))


def test_no_object_takes_a_key_that_is_not_described() -> None:
    objects = {name: d for name, d in definitions().items() if d.get("type") == "object"}
    assert len(objects) >= 15
    for name, definition in objects.items():
        assert definition["additionalProperties"] is False, name
        assert set(definition["required"]) == set(definition["properties"]), name


@pytest.mark.parametrize(
    ("part", "key", "says"),
    [
        ("MemberFigures", "bottom_cut", "Of a lying member: the left end."),
        ("MemberFigures", "top_cut", "the right end"),
        ("MemberFigures", "edges", "near left, near right, far left, far right"),
        ("MemberFigures", "overall", "mm"),
        ("FacetFigures", "bevel", "Degrees"),
        ("FacetFigures", "mitre", "Degrees"),
        ("MarkFigures", "along_top", "null on the sole plate"),
        ("MarkFigures", "from", "the tape hooks on"),
        ("WallFigures", "length", "mm"),
    ],
)
def test_it_says_what_a_figure_means(part: str, key: str, says: str) -> None:
    assert says in definitions()[part]["properties"][key]["description"]


def test_every_number_has_its_unit_said() -> None:
    """Lengths, angles and weights alike, but for the count of pieces."""
    unsaid = [
        (name, key)
        for name, definition in definitions().items()
        for key, value in definition.get("properties", {}).items()
        if value.get("type") == "number"
        and not any(unit in value["description"] for unit in ("mm", "Degrees", "kg"))
    ]
    assert unsaid == []
