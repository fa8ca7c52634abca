"""The order of raising: by hand in small rooms, and against every order there is."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import permutations

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.job import raising_order, work_out
from core.lengths import System, Tape
from core.model import Room, SiteRecord, Wall
from core.site import Floor, GoingUp, Laid, Panel, Place, Swing, Turn, Way, in_turn, turn_of, turns
from core.wording import Wording
from raising import job
from walls import US, in_12

WORDS = Wording("us", Tape.usual(System.INCH))
STEP = 25.4 / 16
GABLE = US.room(264, (12, in_12(9)), (12, in_12(9)))


def going(
    near: Sequence[str] | None,
    far: Sequence[str] | None,
    *,
    panels: bool = False,
    area: float = 1.0,
    short: float = 0.0,
) -> GoingUp:
    """A wall with the letters in its way on either side; None where it cannot be laid at all."""
    sides = [
        Swing(laid, 0.0, short, Place(0.0, 1000.0, 0.0), -1.0 if short else 0.0, 1.0)
        for laid in Laid
    ]
    floors = [
        Floor(1000.0 * area, 1000.0, 1.0 if found is None else 0.0, tuple(found or ()))
        for found in (near, far)
    ]
    able = near is not None or far is not None
    split = (Panel(0.0, 500.0, Laid.FACE_A),) if panels else ()
    way = Way.TILT if able else Way.PANELS if panels else Way.IN_PLACE
    return GoingUp(way, (sides[0], sides[1]), (floors[0], floors[1]), None, short, split, 0.0, ())


def letters(found: tuple[Turn, ...]) -> str:
    return "".join(turn.letter for turn in found)


def test_a_wall_whose_place_is_in_the_way_comes_later() -> None:
    """A lies where B and C stand, B where C stands; on its other side it lies on A's."""
    walls = [("A", going("BC", None)), ("B", going("C", "A")), ("C", going("", "AB"))]
    found = turns(walls, STEP)
    assert letters(found) == "ABC"
    assert [turn.before for turn in found] == [("B", "C"), ("C",), ()]
    assert [turn.laid for turn in found] == [Laid.FACE_A] * 3


def test_the_other_side_serves_where_the_first_is_taken() -> None:
    """B has to come after A, which stands on its near side; it lies on its far side."""
    walls = [("A", going("B", None)), ("B", going("A", ""))]
    found = turns(walls, STEP)
    assert letters(found) == "AB"
    assert [turn.laid for turn in found] == [Laid.FACE_A, Laid.FAR_FACE]


def test_where_the_order_is_free_the_larger_goes_first_and_then_the_one_stated_first() -> None:
    walls = [(c, going("", "", area=a)) for c, a in (("A", 1.0), ("B", 3.0), ("C", 1.0))]
    assert letters(turns(walls, STEP)) == "BAC"


def test_what_is_not_tilted_comes_last() -> None:
    walls = [
        ("A", going(None, None, area=9.0)),
        ("B", going(None, None, panels=True)),
        ("C", going("A", "")),
    ]
    found = turns(walls, STEP)
    assert letters(found) == "CBA"
    assert [turn.way for turn in found] == [Way.TILT, Way.PANELS, Way.IN_PLACE]
    assert [turn.blocked for turn in found] == [(), (), ()]


def test_walls_that_stand_in_each_others_way() -> None:
    """A and B need each other's place; B has panels, so it waits and A is tilted."""
    found = turns([("A", going("B", "B")), ("B", going("A", None, panels=True))], STEP)
    assert [(t.letter, t.way, t.blocked) for t in found] == [
        ("A", Way.TILT, ()),
        ("B", Way.PANELS, ("A",)),
    ]


def test_a_wall_too_much_short_is_not_tilted() -> None:
    """Half an inch short may be shimmed; an inch may not."""
    found = turns([("A", going("", "", short=25.4)), ("B", going("", "", short=12.7))], STEP)
    assert [(t.letter, t.way) for t in found] == [("B", Way.SHORT), ("A", Way.IN_PLACE)]


SIDES = st.none() | st.frozensets(st.sampled_from("ABCDE")).map(sorted)
WALLS = st.lists(st.tuples(SIDES, SIDES, st.booleans(), st.floats(1, 9)), min_size=1, max_size=5)


def job_of(stated: list[tuple[list[str] | None, list[str] | None, bool, float]]) -> list[
    tuple[str, GoingUp]
]:  # fmt: skip
    """Walls by letter, none in its own way, nor one that is not there."""
    there = "ABCDE"[: len(stated)]
    made = []
    for letter, (near, far, split, area) in zip(there, stated, strict=True):
        sides = [
            None if side is None else [w for w in side if w in there and w != letter]
            for side in (near, far)
        ]
        made.append((letter, going(sides[0], sides[1], panels=split, area=area)))
    return made


def tilted(order: Sequence[str], up: dict[str, GoingUp]) -> list[bool]:
    """For each wall in this order whether some floor it can lie on is free of those before it."""
    return [
        any(
            floor.enough and not set(floor.in_the_way) & set(order[:n]) for floor in up[wall].floors
        )
        for n, wall in enumerate(order)
    ]


@given(WALLS)
def test_if_any_order_tilts_every_wall_one_is_found(
    stated: list[tuple[list[str] | None, list[str] | None, bool, float]],
) -> None:
    walls = job_of(stated)
    up = dict(walls)
    able = [w for w, one in walls if any(floor.enough for floor in one.floors)]
    found = turns(walls, STEP)
    assert sorted(turn.letter for turn in found) == sorted(up)
    whole = [turn.letter for turn in found if turn.laid is not None]
    # Whoever is said to be tilted finds its floor free, on the side that is named.
    for turn, free in zip(found, tilted(letters(found), up), strict=True):
        assert turn.laid is None or free
    if any(
        all(free for wall, free in zip(order, tilted(order, up), strict=True) if wall in able)
        for order in permutations(up)
    ):
        assert sorted(whole) == sorted(able)
    assert turns(walls, STEP) == found


def two(room: Room, *walls: Wall) -> list[str]:
    results = work_out(job(room, *walls), SiteRecord())
    return [WORDS.say(line) for line in in_turn(raising_order(results))]


def named(letter: str, wall: Wall) -> Wall:
    return msgspec.structs.replace(wall, letter=letter)


def test_a_knee_wall_goes_up_before_the_wall_across_the_room() -> None:
    """The knee wall lies 48 into the room from u = 48, where C stands at v = 200; C needs no place
    of its own but its own floor, and is 3/16 short."""
    knee, across = US.wall((48, 100), (48, 300)), US.wall((48, 200), (216, 200))
    assert two(GABLE, named("C", across), named("A", knee)) == [
        "1. Wall A: tilted up from the side of face A; before C, whose place is where it lies.",
        '2. Wall C: 3/16" short, tilted up from the side of face A; no wall still to come stands'
        " where it lies.",
    ]


@pytest.mark.parametrize(("count", "told"), [(1, []), (2, ["Turn 1 of 2", "Turn 2 of 2"])])
def test_a_sheet_tells_the_turn_of_its_wall(count: int, told: list[str]) -> None:
    walls = [(c, going("", "")) for c in "AB"[:count]]
    found = turns(walls, STEP)
    said = [WORDS.say(text) for c, _ in walls for text in turn_of(found, c)]
    assert [text.split(" in ")[0] for text in said] == told
