"""What is kept clear of chimneys and ducts, plumb or leaning; walls on rafters; millimetres."""

from __future__ import annotations

import msgspec
import pytest

from core.lengths import System, Tape
from core.model import ClearKind, KeptClear, StandsOn
from core.wording import Wording
from walls import UK, Pair, at_degrees, result

ROOM = UK.room(6000, (2500, at_degrees(10)), None, length=8000)
SAY = Wording("metric", Tape.usual(System.METRIC))


def chimney(across: float, along: float, gap: float = 50) -> KeptClear:
    size = UK.length(400)
    at = UK.length(across), UK.length(along)
    return KeptClear("chimney-1", ClearKind.CHIMNEY, *at, size, size, UK.length(gap))


def cautions(left: Pair, right: Pair, kept: KeptClear) -> list[str]:
    room = msgspec.structs.replace(ROOM, kept_clear=(kept,))
    found = [c.message for c in result(room, UK.wall(left, right)).cautions]
    return [SAY.say(message) for message in found if message.id in ("clear.near", "clear.through")]


@pytest.mark.parametrize(
    ("across", "along", "id_"),
    [
        # The wall's timber takes up 1000 to 3000 across and 2000 to 2089 along.
        pytest.param(1500, 2139, "", id="50 away from its far face"),
        pytest.param(1500, 2138, "near", id="49 away"),
        pytest.param(1500, 1550, "", id="50 in front of face A"),
        pytest.param(1500, 1551, "near", id="49 in front"),
        pytest.param(1500, 2050, "through", id="its corner in the timber"),
        pytest.param(1500, 1800, "through", id="right through"),
        # Past the end by 30 and 40: 50 apart; by 30 and 39: less.
        pytest.param(3030, 2129, "", id="cornerwise 50"),
        pytest.param(3030, 2128, "near", id="cornerwise less"),
    ],
)
def test_distance(across: float, along: float, id_: str) -> None:
    room = msgspec.structs.replace(ROOM, kept_clear=(chimney(across, along),))
    made = result(room, UK.wall((1000, 2000), (3000, 2000)))
    found = [c.message.id for c in made.cautions if c.message.id.startswith("clear.")]
    assert [name for name in found if "stud" not in name] == ([f"clear.{id_}"] if id_ else [])


def test_the_distance_lacking_is_said() -> None:
    (said,) = cautions((1000, 2000), (3000, 2000), chimney(1500, 2119))
    assert "comes within 30 mm of chimney 1: that is 20 mm less than the 50 mm stated" in said


def test_a_wall_aslant() -> None:
    # Its face A runs along u = v; the corner (2000, 1900) is 100 / root 2 = 70.7 in front of it.
    kept = chimney(2000, 1500, gap=71)
    assert len(cautions((1000, 1000), (4000, 4000), kept)) == 1
    assert cautions((1000, 1000), (4000, 4000), chimney(2000, 1500, gap=70)) == []


def test_no_opening_is_framed_on_rafters() -> None:
    window = UK.opening("window-1", left=800, width=400, head=900, sill=400)
    wall = UK.wall((1000, 2000), (3000, 2000), openings=(window,))
    made = result(ROOM, msgspec.structs.replace(wall, stands_on=StandsOn.BESIDE_RAFTERS))
    assert "opening.on-rafters" in [c.message.id for c in made.cautions]


def leaning(across: float, along: float, up: Pair, gap: float = 50) -> KeptClear:
    """A chimney of 400 whose corner is at `up` at 1000 high."""
    there = {"up_to": 1000, "up_across": up[0], "up_along": up[1]}
    lean = {name: UK.length(value) for name, value in there.items()}
    return msgspec.structs.replace(chimney(across, along, gap), **lean)


# Under a roof of 2500 at the left eave wall, rising 10 degrees.
WALL = UK.wall((1000, 2000), (3000, 2000))


@pytest.mark.parametrize(
    ("along", "up_along", "id_"),
    [
        # Its face toward the wall is 400 beyond its corner: at 1550 it stands 50 from face A.
        pytest.param(1550, 1550, "", id="plumb after all"),
        pytest.param(1550, 1551, "near", id="leans toward the wall"),
        pytest.param(1550, 1500, "", id="leans away"),
        # The roof is 2835 high beside it: 100 on the floor are 43 there, or 58 at 15 in 1000.
        pytest.param(1500, 1520, "near", id="near only high up"),
        pytest.param(1500, 1515, "", id="not near even there"),
        pytest.param(1200, 1400, "through", id="clear at the floor, in it at 2000"),
    ],
)
def test_one_that_leans_keeps_its_gap_all_the_way_up(
    along: float, up_along: float, id_: str
) -> None:
    room = msgspec.structs.replace(
        ROOM, kept_clear=(leaning(1500, along, (1500, up_along), gap=50),)
    )
    found = [c.message.id for c in result(room, WALL).cautions if "clear" in c.message.id]
    assert [name for name in found if "stud" not in name] == ([f"clear.{id_}"] if id_ else [])


def test_the_gap_is_square_to_the_leaning_face() -> None:
    # 3 in 4 toward a wall 2500 high: from 2000 - 400 - 50 - 1875 on the floor it comes to 50 from
    # face A at the wall's top, which is 50 x 4/5 = 40 square to its face, and 10 are lacking.
    level = UK.room(6000, (2500, at_degrees(0)), None, length=8000)
    room = msgspec.structs.replace(level, kept_clear=(leaning(1500, -325, (1500, 425)),))
    (said,) = [SAY.say(c.message) for c in result(room, WALL).cautions if c.key == "B"]
    assert "comes within 40 mm of chimney 1: that is 10 mm less than the 50 mm stated" in said


def test_one_that_leans_along_a_wall_meets_its_end() -> None:
    # It stands 300 past the right end, in line with the wall, and leans 200 toward it for every
    # 1000: at 1500 high it is at the end, and the wall is over 3000 high there.
    room = msgspec.structs.replace(ROOM, kept_clear=(leaning(3300, 1850, (3100, 1850)),))
    ids = [c.message.id for c in result(room, WALL).cautions if c.key == "B"]
    assert ids == ["clear.through"]


def test_each_stud_within_the_gap_is_told() -> None:
    # The chimney takes up 1500 to 1900 across, 500 to 900 along the wall, and 40 from face A:
    # studs stand at 381 (101 off its side: clear), 781 (right behind it), 1181 (281 off).
    room = msgspec.structs.replace(ROOM, kept_clear=(chimney(1500, 1560, 50),))
    found = [c for c in result(room, WALL).cautions if "clear.stud" in c.message.id]
    assert [c.key for c in found] == ["B/layout/2"]
    assert SAY.say(found[0].message) == (
        "In wall B, the stud with its left edge at 781 mm comes within 40 mm of chimney 1, 10 mm"
        " less than the 50 mm stated: move it 10 mm away."
    )
    through = msgspec.structs.replace(ROOM, kept_clear=(chimney(1500, 1800, 50),))
    ids = [c.message.id for c in result(through, WALL).cautions if c.key == "B/layout/2"]
    assert ids == ["clear.stud-through"]


@pytest.mark.parametrize(
    ("height", "corner"), [(0, (1500, 1550)), (1000, (1500, 800)), (2000, (1500, 50))]
)
def test_it_goes_on_as_it_leans(height: float, corner: Pair) -> None:
    assert leaning(1500, 1550, (1500, 800)).corner_at(height) == pytest.approx(corner)
