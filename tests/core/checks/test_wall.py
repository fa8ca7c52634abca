"""Each caution from a wall that provokes it: how grave it is, what about, and what it says."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.checks import Caution, Severity
from core.job import WallResult, work_out
from core.lengths import System, Tape
from core.model import BoxHeight, HeaderKind, Project, Room, Side, SiteRecord, Wall
from core.wording import Wording
from strategies import projects
from walls import UK, US, at_degrees, in_12, result

US_WORDS = Wording("us", Tape.usual(System.INCH))
METRIC = Wording("metric", Tape.usual(System.METRIC))

FLAT = US.room(288, (96, in_12(9)), flat=96, length=400)
"""Under a ceiling of 96 in. everywhere."""

SLOPE = US.room(288, (12, in_12(9)))
"""Rising 9 in 12 from 12 in. at the left eave."""

_VERBS = (
    "move|make|choose|put|take|raise|set|lower|add|measure|ask|state|leave"
    "|it fits|it has at|it stands clear|stand|clamp|draw|run|plane|nail"
)
MENDS = re.compile(rf"(: |, or |\. )({_VERBS})\b|\bwould (carry|make)\b", re.IGNORECASE)
"""How a sentence goes on once it has said what is wrong."""


def cautions(room: Room, wall: Wall) -> list[Caution]:
    return list(result(room, wall).cautions)


def said(caution: Caution) -> str:
    return US_WORDS.say(caution.message)


def only(room: Room, wall: Wall) -> Caution:
    """The one caution that a wall gives."""
    (caution,) = cautions(room, wall)
    return caution


def test_a_sound_wall_gives_none() -> None:
    door = US.opening("door-1", 40, 34, 82.5)
    wall = US.wall((60, 0), (60, 120), openings=(door,))
    assert cautions(FLAT, wall) == []


def test_an_opening_that_does_not_fit_where_it_is() -> None:
    """A door 34 wide in a wall of 120: end stud, king and trimmer on either side leave lefts from
    4 1/2 to 120 - 4 1/2 - 34 = 81 1/2."""
    wall = US.wall((60, 0), (60, 120), openings=(US.opening("door-1", 100, 34, 82.5),))
    caution = only(FLAT, wall)
    assert (caution.severity, caution.key) == (Severity.UNBUILDABLE, "B/door-1")
    for part in ("wall B", "door 1", '100"', 'from 4 1/2" to 81 1/2"'):
        assert part in said(caution)


def test_all_places_where_it_fits_are_told() -> None:
    """Beside a door from 50 to 84, whose kings reach 3 in. past it: 4 1/2 to 50 - 3 - 3 - 20 = 24,
    and 84 + 3 + 3 = 90 to 150 - 4 1/2 - 20 = 125 1/2."""
    first, second = US.opening("door-1", 50, 34, 82.5), US.opening("door-2", 60, 20, 82.5)
    caution = only(FLAT, US.wall((60, 0), (60, 150), openings=(first, second)))
    assert caution.key == "B/door-2"
    assert 'from 4 1/2" to 24" or from 90" to 125 1/2"' in said(caution)


def test_an_opening_that_fits_nowhere() -> None:
    wall = US.wall((60, 0), (60, 120), openings=(US.opening("door-1", 40, 34, 95),))
    caution = only(FLAT, wall)
    assert (caution.severity, caution.key) == (Severity.UNBUILDABLE, "B/door-1")
    for part in ("wall B", "door 1", "lower"):
        assert part in said(caution)


def test_a_sill_in_the_sole_plate() -> None:
    """Its timber lies on the sole plate: both are 1 1/2, so it is 3 in. high or more."""
    window = US.opening("window-1", 40, 34, 82.5, sill=2)
    caution = only(FLAT, US.wall((60, 0), (60, 120), openings=(window,)))
    assert (caution.severity, caution.key) == (Severity.UNBUILDABLE, "B/window-1")
    for part in ("wall B", "window 1", '3"'):
        assert part in said(caution)


def test_a_stated_stud_without_room() -> None:
    """An added stud at 16 in. stands in the stud of the layout at 15 1/4 to 16 3/4."""
    caution = only(FLAT, US.wall((60, 0), (60, 120), added=(("extra-1", 16.0),)))
    assert (caution.severity, caution.key) == (Severity.UNBUILDABLE, "B/extra-1")
    for part in ("wall B", '16"', "move it"):
        assert part in said(caution)


def test_a_stud_under_too_low_a_roof() -> None:
    """At the eave of 2 in. there is no room between plates of 1 1/2 plumb 1 7/8 and 1 1/2."""
    room = US.room(288, (2, in_12(9)))
    caution = only(room, US.wall((0, 100), (96, 100), plate=(1.5, 3.5)))
    assert (caution.severity, caution.key) == (Severity.UNBUILDABLE, "B/end/left")
    for part in ("wall B", '0"', "move"):
        assert part in said(caution)


def test_a_box_without_a_stud() -> None:
    box = US.box("box-1", "B/layout/99", Side.LEFT, 12)
    caution = only(FLAT, US.wall((60, 0), (60, 120), boxes=(box,)))
    assert (caution.severity, caution.key) == (Severity.UNBUILDABLE, "B/box-1")
    for part in ("wall B", "box 1", "stud"):
        assert part in said(caution)


@pytest.mark.parametrize("height", [200, 0.5])
def test_a_box_past_the_ends_of_its_stud(height: float) -> None:
    """Over the top of its stud, or down in the sole plate."""
    box = US.box("box-1", "B/layout/2", Side.LEFT, height, BoxHeight.BOTTOM)
    wall = US.wall((60, 0), (60, 120), boxes=(box,))
    assert {c.key for c in cautions(FLAT, wall)} == {"B/box-1"}


def test_a_box_that_timber_stands_in_the_way_of() -> None:
    """The end stud of a wall stands beside the stud of place 1, 1 1/2 in. away."""
    wall = US.wall((60, 0), (60, 34.25), boxes=(US.box("box-1", "B/layout/2", Side.RIGHT, 12),))
    assert result(FLAT, wall).boxes[0].blocked_by is not None
    caution = only(FLAT, wall)
    assert (caution.severity, caution.key) == (Severity.UNBUILDABLE, "B/box-1")
    for part in ("wall B", "box 1", "other side"):
        assert part in said(caution)


def test_a_tilted_plate_that_is_too_narrow() -> None:
    """Under 9 in 12 a 2x4 stud end is 3 1/2 * 1.25 = 4 3/8 in. wide."""
    caution = only(SLOPE, US.wall((96, 0), (96, 120)))
    assert (caution.severity, caution.key) == (Severity.WARNING, "B")
    for part in ("wall B", '4 3/8"', '3 1/2"', "wider plate"):
        assert part in said(caution)


@pytest.mark.parametrize(
    ("room", "wall"),
    [
        # As wide as it has to be, to the hair.
        (SLOPE, US.wall((96, 0), (96, 120), plate=(1.5, 4.375))),
        # Up the slope the plate does not tilt.
        (SLOPE, US.wall((96, 100), (200, 100))),
        (FLAT, US.wall((60, 0), (60, 120))),
    ],
    ids=["wide", "up the slope", "level"],
)
def test_a_plate_that_is_wide_enough(room: Room, wall: Wall) -> None:
    assert cautions(room, wall) == []


def test_a_ridge_inside_the_wall() -> None:
    """Under two slopes of 9 in 12 over 288 the ridge stands over 144: between the faces at 146 and
    142 1/2 of a wall along it."""
    room = US.room(288, (33, in_12(9)), (33, in_12(9)))
    found = cautions(room, US.wall((146, 0), (146, 120), plate=(1.5, 5.5)))
    (caution,) = [c for c in found if c.severity is Severity.UNBUILDABLE]
    assert caution.key == "B"
    for part in ("wall B", "ridge", "move the wall"):
        assert part in said(caution)


@pytest.mark.parametrize("at", [152, 139])
def test_a_wall_beside_the_ridge(at: float) -> None:
    room = US.room(288, (33, in_12(9)), (33, in_12(9)))
    assert cautions(room, US.wall((at, 0), (at, 120), plate=(1.5, 5.5))) == []


def test_the_gravest_come_first() -> None:
    """Whatever they are about: here a ridge inside a wall whose plate is too narrow as well."""
    room = US.room(288, (33, in_12(9)), (33, in_12(9)))
    found = cautions(room, US.wall((146, 0), (146, 120)))
    assert [c.message.id for c in found] == ["wall.ridge-inside", "plate.narrow"]
    assert [c.severity for c in found] == [Severity.UNBUILDABLE, Severity.WARNING]


def test_in_metric_words() -> None:
    """A lintel, a cill, a head plate, and millimetres with their unit."""
    room = UK.room(7000, (2400, at_degrees(40)), flat=2400)
    high = UK.opening("door-1", 1000, 838, 2400, header=UK.header(HeaderKind.FLAT))
    low = UK.opening("window-1", 2500, 600, 2000, sill=50)
    wall = UK.wall((1000, 0), (1000, 5000), openings=(high, low))
    sentences = [METRIC.say(c.message) for c in cautions(room, wall)]
    assert any("lower lintel" in sentence for sentence in sentences)
    assert any("cill" in sentence and "76 mm" in sentence for sentence in sentences)


@settings(max_examples=50)
@given(projects(most_walls=2), st.sampled_from(["us", "metric"]))
def test_every_caution_says_what_where_and_how_to_mend_it(project: Project, words: str) -> None:
    """It names its wall, says what is wrong and goes on with what to do, in one or two lines."""
    wording = Wording(words, project.habits.tape)
    for wall in work_out(project, SiteRecord()).walls:
        assert list(wall.cautions) == sorted(wall.cautions, key=_gravity)
        for caution in wall.cautions:
            sentence = wording.say(caution.message)
            assert re.search(rf"\b[Ww]all {wall.wall.letter}\b", sentence)
            assert MENDS.search(sentence), sentence
            assert sentence.endswith(".")
            assert caution.key == wall.wall.letter or caution.key.startswith(f"{wall.wall.letter}/")


def _gravity(caution: Caution) -> int:
    return list(Severity).index(caution.severity)


def test_nothing_is_drawn_where_there_is_no_frame() -> None:
    """A wall without length has the one caution that there is no frame."""
    wall: WallResult = result(FLAT, US.wall((60, 0), (60, 0)))
    assert [c.message.id for c in wall.cautions] == ["wall.no-roof"]
    assert said(wall.cautions[0]).startswith("Wall B is not under the roof")
