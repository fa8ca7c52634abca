"""The strip at the foot follows the wall and the job, ten times a second at most."""

from __future__ import annotations

import msgspec
import pytest
from pytestqt.qtbot import QtBot

from core.job import Totals
from core.lengths import Length
from core.model import AddedStud
from gui.strip import Strip, cautions
from gui.theme import Theme
from gui.wordings import wording_of
from loft import INCH, desk_of, loft


@pytest.fixture
def strip(qtbot: QtBot) -> Strip:
    made = Strip(desk_of(), Theme.day())
    made._desk.show_wall("B")
    made.refresh()
    qtbot.addWidget(made)
    return made


def said(strip: Strip) -> str:
    return strip.accessibleDescription()


def test_of_the_wall_and_of_the_job(strip: Strip) -> None:
    assert said(strip) == "Wall B: 7 studs, no cautions; Job: 7 studs, no cautions"
    assert strip.toolTip() == "B 7 = 7"


def test_in_the_room_only_of_the_job(strip: Strip) -> None:
    strip._desk.show_room()
    strip.refresh()
    assert said(strip) == "Job: 7 studs, no cautions"


def test_it_follows_an_edit(strip: Strip, qtbot: QtBot) -> None:
    wall = loft().wall("B")
    more = msgspec.structs.replace(wall, added=(AddedStud("stud-1", Length(24 * INCH)),))
    strip._desk.commit("add a stud", loft().with_wall(more))
    qtbot.waitUntil(lambda: "Wall B: 8 studs" in said(strip))


def test_while_previews_come_it_is_written_ten_times_a_second_at_most(
    strip: Strip, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    qtbot.wait(150)
    written: list[str] = []
    monkeypatch.setattr(strip, "setText", written.append)
    for _ in range(40):
        strip._desk.preview(loft())
        strip._desk.changed.emit()
    # One at once; the next has to wait for the pause to be over.
    assert len(written) == 1


def test_what_cannot_be_built_is_in_the_warning_tone(strip: Strip) -> None:
    wall = loft().wall("B")
    high = msgspec.structs.replace(wall.openings[0], head=Length(200 * INCH))
    strip._desk.commit("raise", loft().with_wall(msgspec.structs.replace(wall, openings=(high,))))
    strip.refresh()
    assert Theme.day().warning.name() in strip.text()
    strip.set_theme(Theme.night())
    assert Theme.night().warning.name() in strip.text()


@pytest.mark.parametrize(
    ("totals", "text"),
    [
        (Totals(3, 0, 0), "no cautions"),
        (Totals(3, 1, 0), "1 caution"),
        (Totals(3, 4, 0), "4 cautions"),
        (Totals(3, 4, 2), "4 cautions, 2 cannot be built"),
    ],
)
def test_cautions_in_words(totals: Totals, text: str) -> None:
    assert cautions(totals, wording_of(loft())) == text
