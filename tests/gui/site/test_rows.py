"""The rows of a walk."""

from __future__ import annotations

import itertools

from core.framing import cutting_order
from core.job import work_out
from core.lengths import System, Tape
from core.model import SiteRecord
from core.wording import Wording
from gui.site.rows import Heading, PieceRow, counts, rows_of
from gui.site.ticks import tick_cut, tick_nailed
from loft import STUD, loft

WORDS = Wording("us", Tape.usual(System.INCH))


def rows(site: SiteRecord) -> list[PieceRow | Heading]:
    return list(rows_of(work_out(loft(), site).wall("B"), site, WORDS))


def test_every_piece_has_one_row_in_the_order_of_cutting() -> None:
    frame = work_out(loft(), SiteRecord()).wall("B").frame
    assert frame is not None
    keys = [row.key for row in rows(SiteRecord()) if isinstance(row, PieceRow)]
    assert keys == [member.key for member in cutting_order(frame.members)]


def test_a_heading_stands_where_the_setting_changes() -> None:
    made = rows(SiteRecord())
    headings = [row.text for row in made if isinstance(row, Heading)]
    assert isinstance(made[0], Heading)
    assert all(a != b for a, b in itertools.pairwise(headings))
    # 12 in 12 is a bevel of 45 degrees.
    assert any("45" in heading for heading in headings)


def test_a_row_says_what_the_piece_is() -> None:
    """The stud at 31 1/4 to 32 3/4: the roof over its right edge is 60 + 32.75 = 92.75, less
    1.5 * sqrt 2 = 2.1213 and 1.5: 89.1287; its left edge is 1.5 less."""
    (row,) = [r for r in rows(SiteRecord()) if isinstance(r, PieceRow) and r.key == STUD]
    assert (row.what, row.long, row.short) == ("stud", '89 1/8"', '87 5/8"')
    assert not (row.cut)
    assert not (row.nailed)
    assert not (row.stale)


def test_ticks_are_counted() -> None:
    result = work_out(loft(), SiteRecord()).wall("B")
    site = tick_nailed(tick_cut(SiteRecord(), result, STUD), result, "B/end/left")
    whole, cut, nailed = counts(rows_of(result, site, WORDS))
    assert (cut, nailed) == (2, 1)
    assert result.frame is not None
    assert whole == len(result.frame.members)
