"""The JSON Schema of the figures, made from their form; a copy is packaged in resources/schemas."""

import inspect
import sys
from typing import Any

import msgspec

from core.output.figures_form import Figures

FILE = "figures-1.schema.json"
"""The name of the packaged copy."""


def write_figures_schema() -> str:
    """The schema as JSON text (draft 2020-12), indented by two spaces."""
    schema = {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "eavewright-figures/1",
        **msgspec.json.schema(Figures),
    }
    encoded = msgspec.json.encode(_cleaned(schema))
    return msgspec.json.format(encoded, indent=2).decode() + "\n"


def _cleaned(schema: Any) -> Any:
    """The schema with the line breaks of its docstrings made plain."""
    if isinstance(schema, dict):
        return {key: _cleaned(value) for key, value in schema.items()}
    if isinstance(schema, list):
        return [_cleaned(value) for value in schema]
    return inspect.cleandoc(schema) if isinstance(schema, str) else schema


if __name__ == "__main__":
    sys.stdout.write(write_figures_schema())
