"""An opening sized by its leaf: sums stay true whichever number is changed. In inches."""

from __future__ import annotations

import msgspec
import pytest

from core.lengths import Length, System
from core.model import Hanging, HeaderKind, Leaf, Opening, OpeningKind, Project, Side, Swing
from core.storage.sense import project_faults
from gui.edits import Refusal, add_opening, set_opening
from gui.edits.leaf import leaf_within, sized_by
from gui.wordings import wording_of
from loft import loft

inches = Length.of_inches


def leafed() -> Project:
    """The loft's door of 30 by 80 as a leaf of 28 by 77 1/2."""
    door = loft().wall("B").opening("door-1")
    return set_opening(loft(), "B", "door-1", leaf=leaf_within(loft(), door))


def door(project: Project) -> Opening:
    return project.wall("B").opening("door-1")


def numbers(opening: Opening) -> tuple[float, ...]:
    leaf = opening.leaf
    assert leaf is not None
    sizes = (leaf.width, leaf.wider, opening.width, leaf.height, leaf.higher, opening.head)
    return tuple(round(x.mm / 25.4, 6) for x in sizes)


def test_the_leaf_within_a_rough_opening() -> None:
    assert numbers(door(leafed())) == (28, 2, 30, 77.5, 2.5, 80)


def test_a_leaf_that_is_all_rough_opening() -> None:
    small = msgspec.structs.replace(door(loft()), width=inches(1.5))
    assert leaf_within(loft(), small).wider.mm == 0


@pytest.mark.parametrize(
    ("part", "value", "expected"),
    [
        ("width", 26, (26, 2, 28, 77.5, 2.5, 80)),
        ("wider", 2.5, (28, 2.5, 30.5, 77.5, 2.5, 80)),
        ("height", 78, (28, 2, 30, 78, 2.5, 80.5)),
        ("higher", 2, (28, 2, 30, 77.5, 2, 79.5)),
    ],
)
def test_its_parts_size_the_opening(part: str, value: float, expected: tuple[float, ...]) -> None:
    project = leafed()
    leaf = door(project).leaf
    assert leaf is not None
    changed = msgspec.structs.replace(leaf, **{part: inches(value)})
    after = set_opening(project, "B", "door-1", **sized_by(project, door(project), changed))
    assert numbers(door(after)) == expected
    assert list(project_faults(after)) == []


@pytest.mark.parametrize(
    ("field", "value", "expected"),
    [
        ("width", 31, (28, 3, 31, 77.5, 2.5, 80)),
        ("head", 81, (28, 2, 30, 77.5, 3.5, 81)),
        # A raised sill takes the head with it.
        ("sill", 12, (28, 2, 30, 77.5, 2.5, 92)),
    ],
)
def test_rough_sizes_keep_the_sums_true(
    field: str, value: float, expected: tuple[float, ...]
) -> None:
    after = set_opening(leafed(), "B", "door-1", **{field: inches(value)})
    assert numbers(door(after)) == expected
    assert list(project_faults(after)) == []


@pytest.mark.parametrize(
    ("field", "value", "words"),
    [
        ("width", 27, 'cannot be narrower than its leaf: 28" is the least.'),
        ("head", 77, 'cannot be lower than its leaf: a head at 77 1/2" is the lowest.'),
    ],
)
def test_less_than_the_leaf_is_refused(field: str, value: float, words: str) -> None:
    with pytest.raises(Refusal) as refused:
        set_opening(leafed(), "B", "door-1", **{field: inches(value)})
    assert wording_of(loft()).say(refused.value.message).endswith(words)


def test_nothing_hangs_in_a_cased_opening() -> None:
    hung = set_opening(loft(), "B", "door-1", hung=Hanging(Side.LEFT, Swing.AWAY))
    assert door(hung).hung == Hanging(Side.LEFT, Swing.AWAY)
    assert door(set_opening(hung, "B", "door-1", kind=OpeningKind.CASED)).hung is None


@pytest.mark.parametrize(
    ("kind", "name"),
    [(OpeningKind.PASS_THROUGH, "pass-through-1"), (OpeningKind.CASED, "cased-opening-1")],
)
def test_new_kinds_are_added(kind: OpeningKind, name: str) -> None:
    bare = loft().with_wall(msgspec.structs.replace(loft().wall("B"), openings=(), boxes=()))
    added = add_opening(bare, "B", kind).wall("B").openings[-1]
    assert (added.id, added.kind, added.header.kind) == (name, kind, HeaderKind.FLAT)


def test_a_new_door_in_inches_is_a_leaf_of_32_by_80() -> None:
    bare = loft().with_wall(msgspec.structs.replace(loft().wall("B"), openings=(), boxes=()))
    assert bare.system is System.INCH
    new = add_opening(bare, "B", OpeningKind.DOOR).wall("B").openings[-1]
    assert new.leaf == Leaf(inches(32), inches(80), inches(2), inches(2.5))
    assert (new.width, new.head) == (inches(34), inches(82.5))
