"""The strip at the foot of a sheet."""

import msgspec
import pytest

from core.checks import Caution, Severity
from core.drawing import Stroke, Text
from core.drawing.title import PAD, ROW_HEIGHT, SCALE_WIDTH, SheetFacts, TitleBlock, title_block
from core.drawing.typeface import text_width
from core.drawing.writing import LINE
from core.job import WallResult
from core.lengths import System, Tape
from core.model import FloorSeen, Habits, Letters, LineEdge, Project, RoofBuilt, Side, WallFace
from core.wording import Wording, message
from walls import UK, US, at_degrees, in_12, result

ROOM = US.room(288, (33, in_12(9)), (33, in_12(9)))
PROJECT = Project("The sail loft", System.INCH, ROOM)
US_WORDS = Wording("us", Tape.usual(System.INCH))
RAKE = result(ROOM, US.wall((36, 100), (100, 100)))
KNEE = result(ROOM, US.wall((36, 0), (36, 300), plate=(1.5, 5.5)))


def strip(
    wall: WallResult = RAKE, width: float = 279.4, project: Project = PROJECT, date: str = ""
) -> TitleBlock:
    metric = project.system is System.METRIC
    words = Wording("metric", Tape.usual(System.METRIC)) if metric else US_WORDS
    facts = SheetFacts(project, date, 2, 5)
    return title_block(wall, words, width, 8.0, facts, '1/4" = 1\'-0"')


def lines(block: TitleBlock) -> list[str]:
    return [e.text for e in block.drawing if isinstance(e, Text)]


def said(block: TitleBlock) -> str:
    """All that the strip says, its lines joined."""
    return " ".join(lines(block))


@pytest.mark.parametrize(
    "part",
    [
        "B partition",
        "Sheet 2 of 5",
        "Seen from the room side, face A",
        "2025-03-14",
        "The sail loft",
        '1/4" = 1\'-0"',
        "figures govern, do not scale",
        "the line is the edge nearer to the tape's hook, the X lies ahead",
        "Letters: X stud · K king · T trimmer · C cripple",
        "Stock: 2x4 where nothing else is said",
        "Tapes: sole plate from the left end",
        "Lengths to the nearest 1/16 in",
        "Not a structural design",
        "do not lift a wall alone",
        "Never cut a rafter, truss or tie",
        "follow the local code",
    ],
)
def test_the_strip_says(part: str) -> None:
    assert part in " ".join(said(strip(date="2025-03-14")).split())


def test_trusses_and_a_floor_nobody_looked_at_stand_on_every_sheet() -> None:
    room = msgspec.structs.replace(ROOM, roof_built=RoofBuilt.TRUSSES, floor_seen=FloorSeen.NOBODY)
    found = said(strip(project=msgspec.structs.replace(PROJECT, room=room)))
    assert "Never cut, drill, move or load a member of a truss" in found
    assert "Have somebody qualified look at the floor" in found
    assert "a member of a truss" not in said(strip())


def test_without_a_date_nothing_stands_in_its_place() -> None:
    assert "Sheet 2 of 5 · Seen from the room side, face A · The sail loft" in lines(strip())


def test_the_studs_to_check_first() -> None:
    """Wall up the slope from 36 in.: 64 in. of 9 in 12.

    The roof is 33 + 27 = 60 in. over its left end, so the first stud is 57 3/4 long (see the rake
    wall of test_table), the last 3/4 * 62 1/2 = 46 7/8 longer: 104 5/8.
    """
    assert 'longest stud B5 104 5/8", shortest B1 57 3/4"' in said(strip())


def test_one_stud_to_check_where_all_are_alike() -> None:
    """Under a knee wall's level line; its timber lies toward the eave, so face A has the long
    point: 60 - 1 7/8 - 1 1/2 = 56 5/8 in."""
    assert 'Check first: stud B1 56 5/8";' in said(strip(KNEE))
    assert "longest" not in said(strip(KNEE))


def test_a_wall_without_studs_has_none_to_check() -> None:
    bare = msgspec.structs.replace(RAKE, frame=None)
    assert "Check first" not in said(strip(bare))


def with_habits(**changes: object) -> WallResult:
    habits = msgspec.structs.replace(Habits(), **changes)
    return msgspec.structs.replace(RAKE, inputs=msgspec.structs.replace(RAKE.inputs, habits=habits))


def test_the_strip_follows_the_habits() -> None:
    letters = Letters(stud="S", king="D", trimmer="J", cripple="P")
    block = strip(with_habits(line_edge=LineEdge.UPHILL, letters=letters))
    assert "the line is the uphill edge, the X lies downhill" in said(block)
    assert "Letters: S stud · D king · J trimmer · P cripple" in said(block)


def test_the_strip_explains_dashed_boxes_where_there_are_any() -> None:
    box = US.box("box-1", "B/layout/1", Side.RIGHT, 12)
    far = msgspec.structs.replace(box, face=WallFace.FAR)
    walls = (US.wall((36, 100), (100, 100), boxes=(b,)) for b in (box, far))
    assert ["dashed box" in said(strip(result(ROOM, wall))) for wall in walls] == [False, True]


def test_the_strip_names_the_end_of_the_tapes() -> None:
    from_right = result(ROOM, US.wall((36, 100), (100, 100), start=Side.RIGHT))
    assert "sole plate from the right end" in said(strip(from_right))


def test_in_metric_words() -> None:
    room = UK.room(6400, (850, at_degrees(38)), (850, at_degrees(38)), length=9200)
    wall = result(room, UK.wall((900, 2000), (2400, 2000)))
    block = strip(wall, project=Project("The kite loft", System.METRIC, room))
    assert "Stock: 38 × 89 where nothing else is said" in said(block)
    assert "Bar: 50 mm" in said(block)


@pytest.mark.parametrize(("system", "length"), [(System.INCH, 50.8), (System.METRIC, 50.0)])
def test_the_bar_to_check_the_printer_with(system: System, length: float) -> None:
    """Two inches, or 50 mm, with a tick at its middle."""
    block = strip(project=msgspec.structs.replace(PROJECT, system=system))
    left = 279.4 - 8.0 - SCALE_WIDTH
    strokes = [e.points for e in block.drawing if isinstance(e, Stroke)]
    level = [s for s in strokes if s[0][1] == s[-1][1] and s[0][0] == left and len(s) == 2]
    (bar,) = level
    assert bar[1][0] - bar[0][0] == pytest.approx(length)
    ticks = [s[0][0] for s in strokes if s[0][0] == s[1][0] and s[0][1] == bar[0][1]]
    assert ticks == pytest.approx([left, left + length / 2, left + length])


def test_the_height_of_the_strip() -> None:
    """A row of 16 mm, one line of caution, three of notes, and room over and under both."""
    block = strip()
    notes = [text for text in lines(block) if text.startswith("Marks") or "nearest" in text]
    assert notes
    counted = len(lines(block)) - len(["name", "sheet", "scale", "bar"])
    assert block.height == pytest.approx(ROW_HEIGHT + counted * LINE + 4 * PAD)


def cautioned(*texts: str, severity: Severity = Severity.WARNING) -> WallResult:
    """The rake wall with cautions: each about a box with such a name."""
    cautions = tuple(
        Caution(severity, "B/box", message("box.blocked", box=text, letter="B")) for text in texts
    )
    return msgspec.structs.replace(RAKE, cautions=cautions)


@pytest.mark.parametrize(
    ("severity", "word"),
    [(Severity.UNBUILDABLE, "Cannot be built: "), (Severity.WARNING, "Mind: ")],
)
def test_open_cautions_stand_over_the_one_that_always_stands(severity: Severity, word: str) -> None:
    wall = cautioned("box 7", severity=severity)
    first, second = lines(strip(wall, width=431.8))[:2]
    assert first == word + US_WORDS.say(wall.cautions[0].message)
    assert second.startswith("Not a structural design")


def test_standing_cautions_are_not_said_twice() -> None:
    standing = cautioned("box-7", severity=Severity.STANDING)
    assert lines(strip(standing)) == lines(strip())


def test_no_number_of_cautions_fills_the_page() -> None:
    """Eight lines of them, then how many are left."""
    block = strip(cautioned(*(f"box-{n}" for n in range(1, 41))))
    assert sum(text.startswith("Mind: ") for text in lines(block)) == 8
    assert "And 32 more: do not start before all of them are settled." in lines(block)
    assert block.height < 80


def test_a_caution_is_never_cut_in_half() -> None:
    """On narrow paper each takes two lines; four of them are eight lines."""
    block = strip(cautioned(*(f"box-{n}" for n in range(1, 7))), width=150.0)
    assert "And 2 more:" in said(block)
    assert "box-4" in said(block)
    assert "box-5" not in said(block)


def test_long_names_are_shortened() -> None:
    wall = msgspec.structs.replace(RAKE.wall, name="long " * 90)
    named = msgspec.structs.replace(RAKE, inputs=msgspec.structs.replace(RAKE.inputs, wall=wall))
    block = strip(named, project=msgspec.structs.replace(PROJECT, name="loft " * 90))
    cut = [e for e in block.drawing if isinstance(e, Text) and e.text.endswith("…")]
    assert [text.text[:10] for text in cut] == ["B  long lo", "Sheet 2 of"]
    for text in cut:
        end = text.at[0] + text_width(text.text, text.size, text.bold, narrow=True)
        assert end <= 279.4 - 8 - SCALE_WIDTH
