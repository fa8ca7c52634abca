"""Keys of plates and of their pieces."""

from __future__ import annotations

import pytest

from core.framing import keys


@pytest.mark.parametrize(
    ("key", "run", "layer", "uppermost", "stretch"),
    [
        ("B/top/1/1", "B/top/1", "B/top/1/1", True, "B/top/1/1"),
        ("B/top/1/2", "B/top/1", "B/top/1/2", False, "B/top/1/2"),
        ("B/top/1/2/layout/9", "B/top/1", "B/top/1/2", False, "B/top/1/2"),
        (
            "B/top/1/1/past/purlin-1/layout/9",
            "B/top/1",
            "B/top/1/1",
            True,
            "B/top/1/1/past/purlin-1",
        ),
    ],
)
def test_of_which_plate(key: str, run: str, layer: str, uppermost: bool, stretch: str) -> None:
    assert keys.plate_run(key) == run
    assert keys.layer(key) == layer
    assert keys.is_uppermost(key) is uppermost
    assert keys.stretch(key) == stretch
