"""The cross-section of a top plate: what is drawn, in inches, and what is said beside it."""

from __future__ import annotations

import math

import msgspec
import pytest

from core.drawing import Dimension, Fill, Pen, Text, View
from core.drawing.extent import extent
from core.drawing.plate_detail import plate_detail, section_notes, section_picture, steepest
from core.framing import PlateSection
from core.lengths import System, Tape
from core.model import PlateLie
from core.wording import Wording
from walls import US, Pair, in_12, result

WORDS = Wording("us", Tape.usual(System.INCH))
VIEW = View(1 / 6)
ROOM = US.room(264, (12, in_12(9)), (12, in_12(9)))


def section(
    lie: PlateLie | None, plate: Pair = (1.5, 5.5), plates: int = 1, *, behind: bool = False
) -> PlateSection:
    ends = ((48, 0), (48, 288))
    wall = US.wall(*(ends[::-1] if behind else ends), plate=plate, plates=plates)
    top_plate = msgspec.structs.replace(wall.top_plate, lie=lie)
    found = steepest(result(ROOM, msgspec.structs.replace(wall, top_plate=top_plate)).frame)
    assert found is not None
    return found


@pytest.mark.parametrize("lie", [None, *PlateLie])
@pytest.mark.parametrize("plates", [1, 2])
@pytest.mark.parametrize("behind", [False, True])
def test_plates_and_stud_are_drawn_where_they_lie(
    lie: PlateLie | None, plates: int, behind: bool
) -> None:
    found = section(lie, plates=plates, behind=behind)
    fills = [e for e in section_picture(found, VIEW, WORDS) if isinstance(e, Fill)]
    assert [f.outline for f in fills if f.pen is Pen.TOP_PLATE] == list(found.layers)
    (stud,) = (f.outline for f in fills if f.pen is Pen.STUD)
    # The stud is 3 1/2 wide and its head lies along the underside of the lowest plate.
    assert [round(US.of(x), 6) for x, _ in stud] == [0, 0, 3.5, 3.5]
    (x0, y0), (x1, y1), *_ = found.layers[-1]
    for x, y in stud[1:3]:
        assert y == pytest.approx(y0 + (x - x0) * (y1 - y0) / (x1 - x0))


@pytest.mark.parametrize(
    ("lie", "plate", "figures"),
    [
        # The broad face, the stud, and the eave-side edge: 4.4 + 0.9 - 3.5 = 1.8 = 1 13/16.
        (None, (1.5, 5.5), ['5 1/2"', '3 1/2"', '1 13/16"']),
        # 2.8 + 0.9 - 3.5 = 0.2.
        (None, (1.5, 3.5), ['3 1/2"', '3 1/2"', '3/16"']),
        (PlateLie.RIPPED, (1.5, 5.5), ['4 3/8"', '3 1/2"']),
        (PlateLie.LEVEL, (1.5, 3.5), ['3 1/2"']),
        (PlateLie.LEVEL, (1.5, 5.5), ['3 1/2"', '2"']),
    ],
)
def test_the_figures_measure_what_they_say(
    lie: PlateLie | None, plate: Pair, figures: list[str]
) -> None:
    picture = section_picture(section(lie, plate), VIEW, WORDS)
    dimensions = [e for e in picture if isinstance(e, Dimension)]
    assert [d.text for d in dimensions] == figures
    for d in dimensions:
        assert WORDS.length(math.dist(d.start, d.end)) == d.text


@pytest.mark.parametrize(
    ("lie", "plate", "behind", "notes"),
    [
        (
            None,
            (1.5, 5.5),
            False,
            [
                "Tilted 36.9° through the wall, edges square.",
                "Uphill edge: underside flush with the studs, top 7/8\" back from the studs' face.",
                'Eave-side edge: underside 7/8" proud of the studs, top 1 13/16" proud of the'
                " studs.",
                'Stock needs 4 3/8", is 5 1/2".',
            ],
        ),
        (
            PlateLie.RIPPED,
            (1.5, 4.5),
            True,
            [
                "Tilted 36.9° through the wall. Rip both edges with the blade at 36.9°, the same"
                ' way, each broad face 4 3/8" wide.',
                "Uphill edge: flush with the studs.",
                "Eave-side edge: flush with the studs.",
                'Stock needs 5 1/2", is 4 1/2".',
            ],
        ),
        (
            PlateLie.LEVEL,
            (1.5, 5.5),
            True,
            [
                "Level under a slope of 36.9°, its eave-side corner just clear of the roof; studs"
                " cut square through the wall.",
                "Uphill edge: flush with the studs.",
                'Eave-side edge: 2" proud of the studs.',
                'Stock needs 3 1/2", is 5 1/2".',
            ],
        ),
    ],
)
def test_notes(lie: PlateLie | None, plate: Pair, behind: bool, notes: list[str]) -> None:
    assert section_notes(section(lie, plate, behind=behind), WORDS) == notes


@pytest.mark.parametrize("lie", [None, *PlateLie])
def test_words_stand_clear_to_the_right_of_the_picture(lie: PlateLie | None) -> None:
    found = section(lie)
    picture, detail = section_picture(found, VIEW, WORDS), plate_detail(found, VIEW, WORDS)
    right = extent(picture, VIEW.scale)[2]
    words = [e for e in detail[len(picture) :] if isinstance(e, Text)]
    assert detail[: len(picture)] == picture
    assert words[0].text == "Top plate, cut across"
    assert min(e.at[0] for e in words) > right


def test_there_is_none_without_a_slope_through_the_wall() -> None:
    assert steepest(result(ROOM, US.wall((48, 9), (120, 9))).frame) is None
    assert steepest(None) is None
