"""The sense of the record of the site: every piece and every sheet in it once, sizes in bounds."""

from collections.abc import Iterator

from core.model import BoxMade, PieceMade, SiteRecord
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import within
from core.storage.sentences import Why, fault


def site_faults(site: SiteRecord) -> Iterator[Fault]:
    """Every fault in the sense of the record, in the order of the file."""
    pieces = tuple(done.piece for done in site.cut)
    yield from _once(tuple(piece.key for piece in pieces), "site.cut", "piece.key")
    for index, piece in enumerate(pieces):
        yield from _piece_sizes(piece, f"site.cut[{index}].piece")
    yield from _once(tuple(sheet.letter for sheet in site.sheets), "site.sheets", "letter")
    for index, sheet in enumerate(site.sheets):
        at = f"site.sheets[{index}]"
        yield from _once(tuple(piece.key for piece in sheet.pieces), f"{at}.pieces", "key")
        for number, piece in enumerate(sheet.pieces):
            yield from _piece_sizes(piece, f"{at}.pieces[{number}]")
        for number, box in enumerate(sheet.boxes):
            yield from _box_place(box, f"{at}.boxes[{number}]")


def _once(names: tuple[str, ...], place: str, field: str) -> Iterator[Fault]:
    """Each name stands in the list once; the later one is at fault."""
    taken: set[str] = set()
    for index, name in enumerate(names):
        if name in taken:
            yield fault(f"{place}[{index}].{field}", Why.SAME_RECORD, text=name)
        taken.add(name)


def _piece_sizes(piece: PieceMade, place: str) -> Iterator[Fault]:
    for name, length in (("long_point", piece.long_point), ("short_point", piece.short_point)):
        yield from within(length, 0.0, limits.ROOM_MM, f"{place}.{name}")
    for index, mark in enumerate(piece.marks):
        most = limits.ROOM_MM
        yield from within(mark.along, -most, most, f"{place}.marks[{index}].along")


def _box_place(box: BoxMade, place: str) -> Iterator[Fault]:
    for name, length in (("left", box.left), ("bottom", box.bottom)):
        yield from within(length, -limits.ROOM_MM, limits.ROOM_MM, f"{place}.{name}")
