"""What happened on site: facts that undo never takes back."""

import msgspec

from core.lengths import Length


class PrintedLabel(msgspec.Struct, frozen=True):
    """A label that stands on a printed sheet, and the key of the piece it belongs to."""

    key: str
    label: str


class MarkMade(msgspec.Struct, frozen=True):
    """A line on a plate or header: the key of the stud it is for, and how far along it runs."""

    member: str
    along: Length


class PieceMade(msgspec.Struct, frozen=True):
    """A piece of timber as it was printed or cut, with the lines that were marked on it."""

    key: str
    label: str
    long_point: Length
    short_point: Length
    marks: tuple[MarkMade, ...] = ()


class CutPiece(msgspec.Struct, frozen=True):
    """A piece that was cut, as it was cut, and whether it is nailed in its place."""

    piece: PieceMade
    nailed: bool


class BoxMade(msgspec.Struct, frozen=True):
    """A box as it was printed: its left edge along the wall, and its bottom above the subfloor."""

    key: str
    left: Length
    bottom: Length


class PrintedWall(msgspec.Struct, frozen=True):
    """A wall as its sheet was last printed; `date` is written year-month-day."""

    letter: str
    date: str
    pieces: tuple[PieceMade, ...] = ()
    boxes: tuple[BoxMade, ...] = ()


class SiteRecord(msgspec.Struct, frozen=True):
    """The record of the site; a printed label stays with its key for good.

    `cut` has each piece once, `sheets` each wall once: as it was cut or printed last.
    """

    printed: tuple[PrintedLabel, ...] = ()
    cut: tuple[CutPiece, ...] = ()
    sheets: tuple[PrintedWall, ...] = ()
