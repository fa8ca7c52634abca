"""Labels and keys: short names that last."""

from __future__ import annotations

import pytest

from core.framing import keys, labels
from core.framing.member import Member, Role
from core.framing.sticks import lying
from core.lengths import Length
from core.model import Side, Timber

STICK = Timber(Length(38.0), Length(89.0))


def pieces(*causes: str) -> tuple[Member, ...]:
    return tuple(lying(f"B/{c}", Role.SILL, STICK, 0.0, 9.0, 0.0, 38.0) for c in causes)


@pytest.mark.parametrize(
    ("causes", "printed", "expected"),
    [
        pytest.param("abc", {}, {"a": "B1", "b": "B2", "c": "B3"}, id="in order"),
        pytest.param("", {}, {}, id="nothing"),
        pytest.param("abc", {"a": "B1", "b": "B2"}, {"a": "B1", "b": "B2", "c": "B3"}, id="kept"),
        pytest.param("xabc", {"a": "B1"}, {"x": "B2", "a": "B1", "b": "B3", "c": "B4"}, id="new"),
        pytest.param("b", {"a": "B1", "b": "B2"}, {"b": "B2"}, id="one is gone"),
        pytest.param("bx", {"a": "B1", "b": "B2"}, {"b": "B2", "x": "B3"}, id="never given again"),
        pytest.param("ab", {"a": "B7"}, {"a": "B7", "b": "B1"}, id="from an earlier sheet"),
    ],
)
def test_labels(causes: str, printed: dict[str, str], expected: dict[str, str]) -> None:
    kept = {f"B/{cause}": label for cause, label in printed.items()}
    found = labels("B", pieces(*causes), kept)
    assert {key.removeprefix("B/"): label for key, label in found.items()} == expected


@pytest.mark.parametrize(
    ("key", "text"),
    [
        (keys.sole("B"), "B/sole"),
        (keys.top("B", 0, 0), "B/top/1/1"),
        (keys.top("B", 2, 1), "B/top/3/2"),
        (keys.end("AB", Side.LEFT), "AB/end/left"),
        (keys.layout("B", 3), "B/layout/3"),
        (keys.added("B", "extra-1"), "B/extra-1"),
        (keys.opening("B", "door-1"), "B/door-1"),
        (keys.beside("B", "door-1", "king", Side.RIGHT), "B/door-1/king/right"),
        (keys.across("B", "door-1", "header", 0), "B/door-1/header/1"),
        (keys.cripple("B", "door-1", "above", "4"), "B/door-1/above/4"),
        (keys.box("B", "switch-1"), "B/switch-1"),
    ],
)
def test_keys(key: str, text: str) -> None:
    assert key == text
