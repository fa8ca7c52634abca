"""Headers built up through the wall: spacers, thickness, and those that stand out of it."""

from __future__ import annotations

import msgspec
import pytest

from core.framing import header_depth, spacers, thickest_spacer
from core.model import Header, HeaderKind
from walls import US, Pair, in_12, member, result

FLAT = US.room(264, left=(96, in_12(0)))
ON_EDGE, LIES_FLAT, NONE = HeaderKind.ON_EDGE, HeaderKind.FLAT, HeaderKind.NONE


def built(kind: HeaderKind, timber: Pair, plies: int, spacer: float | None) -> Header:
    between = None if spacer is None else US.length(spacer)
    return msgspec.structs.replace(US.header(kind, timber, plies), spacer=between)


@pytest.mark.parametrize(
    ("kind", "plies", "spacer", "count", "depth"),
    [
        (ON_EDGE, 2, None, 0, 3.0),
        # Two 2x4 and a half inch between: 3 1/2 (NAVEDTRA 14044, fig. 1-35).
        (ON_EDGE, 2, 0.5, 1, 3.5),
        (ON_EDGE, 2, 0.0, 0, 3.0),
        # Three of 1 1/2 and two spacers of 1/2: flush with a 2x6.
        (ON_EDGE, 3, 0.5, 2, 5.5),
        (ON_EDGE, 1, 0.5, 0, 1.5),
        # Flat plies lie on each other: nothing stands between them.
        (LIES_FLAT, 2, 0.5, 0, 3.5),
        (NONE, 2, 0.5, 0, 0.0),
    ],
)
def test_thickness(
    kind: HeaderKind, plies: int, spacer: float | None, count: int, depth: float
) -> None:
    header = built(kind, (1.5, 3.5), plies, spacer)
    assert spacers(header) == count
    assert US.of(header_depth(header)) == pytest.approx(depth)


@pytest.mark.parametrize(
    ("plies", "wall", "spacer"), [(2, 3.5, 0.5), (3, 5.5, 0.5), (3, 3.5, None), (1, 3.5, None)]
)
def test_the_spacer_that_makes_it_flush(plies: int, wall: float, spacer: float | None) -> None:
    found = thickest_spacer(US.header(ON_EDGE, (1.5, 3.5), plies), US.length(wall).mm)
    assert (found if found is None else round(US.of(found), 9)) == spacer


def test_plies_and_spacers_are_one_member() -> None:
    door = US.opening("d", 40, 20, 80, header=built(ON_EDGE, (1.5, 5.5), 2, 0.5))
    found = result(FLAT, US.wall((0, 9), (120, 9), openings=(door,)))
    assert found.frame is not None
    header = member(found.frame, "d/header/1")
    assert (header.count, US.of(header.spacer)) == (2, 0.5)
    assert found.cautions == ()


@pytest.mark.parametrize(
    ("plies", "spacer", "told"),
    [
        (2, 0.5, []),
        (2, 0.625, ["header.thick-spacer"]),
        (3, None, ["header.thick"]),
        (3, 0.5, ["header.thick"]),
    ],
)
def test_one_that_stands_out_is_warned_of(
    plies: int, spacer: float | None, told: list[str]
) -> None:
    door = US.opening("d", 40, 20, 80, header=built(ON_EDGE, (1.5, 3.5), plies, spacer))
    found = result(FLAT, US.wall((0, 9), (120, 9), openings=(door,)))
    assert [c.message.id for c in found.cautions] == told
    for caution in found.cautions:
        values = dict(caution.message.values)
        if told == ["header.thick-spacer"]:
            assert US.of(values["spacer"].mm) == pytest.approx(0.5)  # type: ignore[union-attr]
