"""Pieces as they were printed or cut, and what of them is no longer as it was."""

from collections import defaultdict
from collections.abc import Iterable

import msgspec

from core.framing import Mark, Member
from core.job.change import Change, What
from core.job.results import Results, WallResult
from core.lengths import Length, Unit
from core.model import BoxMade, CutPiece, MarkMade, PieceMade, PrintedWall, SiteRecord

_DECIMALS = 3
"""Of a millimetre, in the record: far finer than any tape, and still to be read by people."""


def piece_made(result: WallResult, key: str) -> PieceMade:
    """The member with this key as it is now; KeyError if the wall has none."""
    member = result.frame.member(key) if result.frame else None
    if member is None:
        raise KeyError(key)
    marks = tuple(m for m in result.marks if m.plate == key)
    return _made(member, result.label_of[key], marks)


def wall_made(result: WallResult, date: str) -> PrintedWall:
    """All of a wall as a sheet printed on this date (year-month-day) shows it."""
    on: dict[str, list[Mark]] = defaultdict(list)
    for mark in result.marks:
        on[mark.plate].append(mark)
    names, members = result.label_of, result.frame.members if result.frame else ()
    pieces = tuple(_made(m, names[m.key], tuple(on[m.key])) for m in members)
    boxes = tuple(BoxMade(b.key, _length(b.left), _length(b.bottom)) for b in result.boxes)
    return PrintedWall(result.wall.letter, date, pieces, boxes)


def changes_of(pieces: Iterable[PieceMade], result: WallResult | None) -> tuple[Change, ...]:
    """What became of pieces of a wall, one change for each piece; None if the wall is gone."""
    if result is None or result.frame is None:
        return tuple(_gone(piece) for piece in pieces)
    now = {piece.key: piece for piece in wall_made(result, "").pieces}
    near_enough = result.inputs.habits.tape.step_mm / 2
    found = (_change(p, now.get(p.key), near_enough, result.label_of) for p in pieces)
    return tuple(change for change in found if change is not None)


def changes_since_print(sheet: PrintedWall, result: WallResult | None) -> tuple[Change, ...]:
    """What changed on a wall since its sheet was printed; new pieces come last."""
    known = {piece.key for piece in sheet.pieces}
    members = result.frame.members if result and result.frame else ()
    new = (m.key for m in members if m.key not in known)
    names = result.label_of if result else {}
    return (
        *changes_of(sheet.pieces, result),
        *_boxes(sheet.boxes, result),
        *(Change(key, names[key], What.NEW) for key in new),
    )


def cut_changes(site: SiteRecord, results: Results) -> tuple[Change, ...]:
    """Every piece that was cut and is no longer needed as it was cut; those of gone walls last."""
    letters = {result.wall.letter for result in results.walls}
    orphans = [d.piece for d in site.cut if d.piece.key.partition("/")[0] not in letters]
    return (*(c for result in results.walls for c in result.changes), *changes_of(orphans, None))


def with_cut(site: SiteRecord, piece: PieceMade, *, nailed: bool = False) -> SiteRecord:
    """The record with a piece cut, and nailed if so; in place of what it said of it before."""
    others = tuple(done for done in site.cut if done.piece.key != piece.key)
    return msgspec.structs.replace(site, cut=(*others, CutPiece(piece, nailed)))


def without_cut(site: SiteRecord, key: str) -> SiteRecord:
    """The record with this piece not cut."""
    cut = tuple(done for done in site.cut if done.piece.key != key)
    return msgspec.structs.replace(site, cut=cut)


def with_sheet(site: SiteRecord, sheet: PrintedWall) -> SiteRecord:
    """The record with a wall's sheet printed anew."""
    others = tuple(other for other in site.sheets if other.letter != sheet.letter)
    return msgspec.structs.replace(site, sheets=(*others, sheet))


def _made(member: Member, label: str, marks: tuple[Mark, ...]) -> PieceMade:
    lines = tuple(MarkMade(m.member, _length(m.along)) for m in marks)
    long, short = _length(member.long_point), _length(member.short_point)
    return PieceMade(member.key, label, long, short, lines)


def _length(mm: float) -> Length:
    return Length(round(mm, _DECIMALS), Unit.MM)


def _gone(piece: PieceMade) -> Change:
    return Change(piece.key, piece.label, What.GONE, piece.long_point.mm)


def _change(
    was: PieceMade, now: PieceMade | None, near_enough: float, names: dict[str, str]
) -> Change | None:
    """The first thing that is not as it was: its lengths, then its marks."""
    if now is None:
        return _gone(was)
    pairs = (
        (What.LENGTH, was.long_point, now.long_point),
        (What.SHORT_POINT, was.short_point, now.short_point),
    )
    for what, before, after in pairs:
        if abs(before.mm - after.mm) > near_enough:
            return Change(was.key, was.label, what, before.mm, after.mm)
    return _moved_mark(was, now, near_enough, names)


def _moved_mark(
    was: PieceMade, now: PieceMade, near_enough: float, names: dict[str, str]
) -> Change | None:
    """The first mark that stands elsewhere, is new, or is no longer wanted."""
    before = {mark.member: mark.along.mm for mark in was.marks}
    after = {mark.member: mark.along.mm for mark in now.marks}
    for member, along in after.items():
        old = before.get(member)
        if old is None or abs(old - along) > near_enough:
            return Change(was.key, was.label, What.MARK, old, along, names.get(member, ""))
    gone = next((m for m in before if m not in after), None)
    return Change(was.key, was.label, What.NO_MARK, before[gone]) if gone else None


def _boxes(boxes: tuple[BoxMade, ...], result: WallResult | None) -> tuple[Change, ...]:
    """Boxes that are gone or stand elsewhere, then those that are new."""
    now = {box.key: box for box in result.boxes} if result else {}
    near_enough = result.inputs.habits.tape.step_mm / 2 if result else 0.0
    found: list[Change] = []
    for was in boxes:
        box = now.get(was.key)
        if box is None:
            found.append(Change(was.key, was.key, What.GONE))
        elif abs(box.left - was.left.mm) > near_enough:
            found.append(Change(was.key, was.key, What.MOVED, was.left.mm, box.left))
        elif abs(box.bottom - was.bottom.mm) > near_enough:
            found.append(Change(was.key, was.key, What.RAISED, was.bottom.mm, box.bottom))
    known = {box.key for box in boxes}
    return (*found, *(Change(key, key, What.NEW) for key in now if key not in known))
