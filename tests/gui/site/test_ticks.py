"""Ticking pieces off as cut and nailed."""

from __future__ import annotations

import msgspec
import pytest

from core.job import WallResult, work_out
from core.lengths import Length
from core.model import PrintedLabel, SiteRecord
from gui.site.ticks import tick_cut, tick_nailed
from loft import STUD, loft

KEPT = "B/layout/3"


@pytest.fixture
def result() -> WallResult:
    return work_out(loft(), SiteRecord()).wall("B")


def done(site: SiteRecord) -> dict[str, bool]:
    return {cut.piece.key: cut.nailed for cut in site.cut}


@pytest.mark.parametrize(
    ("ticks", "expected"),
    [
        ("", {}),
        ("c", {STUD: False}),
        ("n", {STUD: True}),
        ("cn", {STUD: True}),
        ("cc", {}),
        ("nn", {STUD: False}),
        ("cnn", {STUD: False}),
        # No longer cut, so no longer nailed either.
        ("nc", {}),
    ],
)
def test_what_is_nailed_is_cut(ticks: str, expected: dict[str, bool], result: WallResult) -> None:
    site = SiteRecord()
    for tick in ticks:
        site = (tick_cut if tick == "c" else tick_nailed)(site, result, STUD)
    assert done(site) == expected


def test_other_pieces_keep_their_ticks(result: WallResult) -> None:
    site = tick_cut(tick_nailed(SiteRecord(), result, KEPT), result, STUD)
    assert done(tick_cut(site, result, STUD)) == {KEPT: True}


def test_a_label_is_on_the_wood_once_it_is_cut(result: WallResult) -> None:
    site = tick_cut(SiteRecord(), result, STUD)
    assert site.printed == (PrintedLabel(STUD, result.label_of[STUD]),)
    assert tick_nailed(site, result, STUD).printed == site.printed


def test_a_piece_that_no_longer_serves_is_cut_anew(result: WallResult) -> None:
    """A piece cut 10 mm too short by now: the tick takes the new length, and nothing is stale."""
    site = tick_cut(SiteRecord(), result, STUD)
    (cut,) = site.cut
    less = Length(cut.piece.long_point.mm - 10)
    short = msgspec.structs.replace(cut.piece, long_point=less)
    old = msgspec.structs.replace(site, cut=(msgspec.structs.replace(cut, piece=short),))
    stale = work_out(loft(), old).wall("B")
    assert [change.key for change in stale.changes] == [STUD]
    anew = tick_cut(old, stale, STUD)
    assert anew.cut == site.cut
    assert work_out(loft(), anew).wall("B").changes == ()
