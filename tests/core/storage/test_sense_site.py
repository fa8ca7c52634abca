"""The sense of the record of the site."""

from __future__ import annotations

import pytest

from core.lengths import Length
from core.model import BoxMade, CutPiece, MarkMade, PieceMade, PrintedWall, SiteRecord
from core.storage.sense_site import site_faults


def piece(key: str = "B/layout/1", long: float = 1700, short: float = 1670) -> PieceMade:
    return PieceMade(key, "B2", Length(long), Length(short))


MARKED = PieceMade("B/sole", "B9", Length(3000.0), Length(3000.0), (MarkMade("x", Length(2e5)),))
FAR_BOX = BoxMade("B/box-1", Length(2e5), Length(0.0))


@pytest.mark.parametrize(
    ("site", "places"),
    [
        (SiteRecord(), []),
        (SiteRecord((), (CutPiece(piece(), True), CutPiece(piece("B/layout/2"), False))), []),
        (
            SiteRecord((), (CutPiece(piece(), True), CutPiece(piece(), False))),
            ["site.cut[1].piece.key"],
        ),
        (SiteRecord((), (CutPiece(piece(long=-1), True),)), ["site.cut[0].piece.long_point"]),
        (SiteRecord((), (CutPiece(piece(short=2e5), True),)), ["site.cut[0].piece.short_point"]),
        (SiteRecord((), (CutPiece(MARKED, True),)), ["site.cut[0].piece.marks[0].along"]),
        (
            SiteRecord((), (), (PrintedWall("B", "2026-03-01"), PrintedWall("B", "2026-03-02"))),
            ["site.sheets[1].letter"],
        ),
        (
            SiteRecord((), (), (PrintedWall("B", "2026-03-01", (piece(), piece())),)),
            ["site.sheets[0].pieces[1].key"],
        ),
        (
            SiteRecord((), (), (PrintedWall("B", "2026-03-01", (), (FAR_BOX,)),)),
            ["site.sheets[0].boxes[0].left"],
        ),
    ],
)
def test_the_record_has_each_thing_once_and_within_bounds(
    site: SiteRecord, places: list[str]
) -> None:
    assert [fault.place for fault in site_faults(site)] == places
