"""What is kept clear of chimneys and ducts; walls on rafters with openings; millimetres."""

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
    return [SAY.say(message) for message in found if message.id.startswith("clear.")]


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
    assert found == ([f"clear.{id_}"] if id_ else [])


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
