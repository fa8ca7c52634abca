"""Which formats a file may state."""

from __future__ import annotations

import pytest

from core.storage.document import format_text, version_of


@pytest.mark.parametrize(
    ("text", "version"),
    [
        ("eavewright/1", 1),
        ("eavewright/2", 2),
        ("eavewright/12", 12),
        ("eavewright/999999", 999_999),
        ("eavewright/0", None),
        ("eavewright/01", None),
        ("eavewright/-1", None),
        ("eavewright/1.0", None),
        ("eavewright/1000000", None),
        ("eavewright/١", None),
        ("eavewright/1\n", None),
        ("eavewright/", None),
        ("eavewright", None),
        ("Eavewright/1", None),
        ("eavewright-figures/1", None),
        ("", None),
    ],
)
def test_version_that_a_format_states(text: str, version: int | None) -> None:
    assert version_of(text) == version


@pytest.mark.parametrize("version", [1, 2, 10])
def test_format_states_its_version(version: int) -> None:
    assert version_of(format_text(version)) == version
