"""What a sheet says of a wall going up, and that the drawing never gives way to it."""

from __future__ import annotations

import pytest

from core.drawing.elements import Text
from core.drawing.paper import Paper
from core.drawing.sheet import sheets
from core.drawing.site_notes import site_notes
from core.job import work_out
from core.lengths import System, Tape
from core.model import SiteRecord
from core.wording import Wording
from raising import job
from walls import US, in_12

WORDS = Wording("us", Tape.usual(System.INCH))
RESULTS = work_out(job(US.room(264, (96, in_12(0))), US.wall((48, 100), (96, 100))), SiteRecord())


def test_the_notes_of_a_wall() -> None:
    notes = site_notes(RESULTS, "B", WORDS)
    assert notes[0].startswith('Frame it flat, 1/8" short')
    assert notes[1] == "It weighs about 50 lb; its heaviest piece, B1, about 9.9 lb."
    # Four studs at both ends, 2 each: 16; the sole plate 48 long, 48 / 16 = 3 steps and one: 4.
    assert notes[2] == "Nails: 20 × 16d common"


@pytest.mark.parametrize("paper", [Paper.LETTER, Paper.A4, Paper.TABLOID])
def test_a_sheet_says_them_where_there_is_room(paper: Paper) -> None:
    assert "Nails: 20 × 16d common" in words_on(paper)


def test_the_elevation_does_not_give_way_to_them() -> None:
    # On A3 a wall 96 high just fits at 1 1/2 in. to the foot, and stays at that scale.
    assert "Nails:" not in words_on(Paper.A3)
    assert '1 1/2" = 1\'-0"' in words_on(Paper.A3)


def words_on(paper: Paper) -> str:
    (page,) = sheets(RESULTS, WORDS, paper)
    texts = [e.text for placed in page.placed for e in placed.drawing if isinstance(e, Text)]
    return " ".join(texts)
