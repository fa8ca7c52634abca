"""The sense of leaves and spacers."""

from __future__ import annotations

from typing import Any

import msgspec
import pytest

from core.lengths import Length
from core.model import Leaf, Opening
from core.storage.sense_leaf import leaf_adds_up, leaf_faults, leaf_size
from walls import US

DOOR = US.opening("door-1", 40, 34, 82.5)


def leafed(width: float, height: float, wider: float, higher: float, sill: float = 0) -> Opening:
    leaf = Leaf(*(US.length(x) for x in (width, height, wider, higher)))
    return msgspec.structs.replace(DOOR, leaf=leaf, sill=US.length(sill))


def places(faults: Any) -> list[str]:
    return [fault.place for fault in faults]


@pytest.mark.parametrize(
    ("opening", "expected"),
    [
        (DOOR, []),
        # 32 + 2 = 34 and 80 + 2 1/2 = 82 1/2.
        (leafed(32, 80, 2, 2.5), []),
        (leafed(30, 80, 2, 2.5), ["o.width"]),
        (leafed(32, 80, 2, 2), ["o.head"]),
        # Over a sill at 36: 36 + 44 1/2 + 2 = 82 1/2.
        (leafed(32, 44.5, 2, 2, sill=36), []),
        (leafed(32, 80, 2, 2.5, sill=36), ["o.head"]),
    ],
)
def test_it_adds_up(opening: Opening, expected: list[str]) -> None:
    assert places(leaf_adds_up(opening, "o")) == expected


@pytest.mark.parametrize(
    ("sizes", "expected"),
    [
        ((32, 80, 0, 0), []),
        ((0, 80, 2, 2), ["l.width"]),
        ((32, -1, 2, 2), ["l.height"]),
        ((32, 80, -1, 2), ["l.wider"]),
        ((32, 80, 2, 40), ["l.higher"]),
    ],
)
def test_sizes(sizes: tuple[float, float, float, float], expected: list[str]) -> None:
    assert places(leaf_size(leafed(*sizes), "l")) == expected


def test_what_would_do_is_told() -> None:
    (fault,) = leaf_adds_up(leafed(30, 80, 2, 2.5), "o")
    assert "32" in fault.remedy


def test_a_spacer() -> None:
    header = msgspec.structs.replace(DOOR.header, spacer=Length(-1.0))
    opening = msgspec.structs.replace(DOOR, header=header)
    assert places(leaf_faults(opening, "o")) == ["o.header.spacer"]
