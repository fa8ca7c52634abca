"""What the list of a walk says: the pieces of a wall in cutting order, under the saw's settings."""

import msgspec

from core.drawing.table import cuts_text, stock_name
from core.framing import Member, cutting_order
from core.job import WallResult, since_cut
from core.model import SiteRecord
from core.wording import Wording


class PieceRow(msgspec.Struct, frozen=True):
    """A piece: its texts, whether it is cut and nailed, and what is wrong with it as cut."""

    key: str
    label: str
    what: str
    long: str
    short: str
    cut: bool
    nailed: bool
    stale: str = ""


class Heading(msgspec.Struct, frozen=True):
    """What all pieces below it share: the stock, and how the saw is set."""

    text: str


Row = PieceRow | Heading


def rows_of(result: WallResult, site: SiteRecord, wording: Wording) -> tuple[Row, ...]:
    """The rows of a wall; a heading stands wherever stock or cuts change."""
    done = {cut.piece.key: cut.nailed for cut in site.cut}
    stale = {change.key: wording.say(since_cut(change)) for change in result.changes}
    rows: list[Row] = []
    above = ""
    for member in cutting_order(result.frame.members if result.frame else ()):
        heading = f"{stock_name(member, wording)} · {cuts_text(member, wording)}"
        if heading != above:
            rows.append(Heading(heading))
            above = heading
        rows.append(_piece(member, result, done, stale, wording))
    return tuple(rows)


def counts(rows: tuple[Row, ...]) -> tuple[int, int, int]:
    """How many pieces there are, how many are cut, and how many nailed."""
    pieces = [row for row in rows if isinstance(row, PieceRow)]
    return len(pieces), sum(p.cut for p in pieces), sum(p.nailed for p in pieces)


def _piece(
    member: Member,
    result: WallResult,
    done: dict[str, bool],
    stale: dict[str, str],
    wording: Wording,
) -> PieceRow:
    long, short = wording.length(member.long_point), wording.length(member.short_point)
    role = wording.word(f"role.{member.role.value.replace(' ', '-')}")
    return PieceRow(
        member.key,
        result.label_of[member.key],
        role if member.count == 1 else f"{member.count} × {role}",
        long,
        "" if short == long else short,
        member.key in done,
        done.get(member.key, False),
        stale.get(member.key, ""),
    )
