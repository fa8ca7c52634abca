"""The list of a wall's members, one row each, and the same as a table to be pasted elsewhere."""

import enum
import html
from collections.abc import Sequence

import msgspec

from core.drawing.table import cut_text, stock_name
from core.framing import Mark, Member, cutting_order
from core.job import WallResult
from core.wording import Mm, Wording, message

HEADS = (
    "list.label",
    "list.what",
    "list.section",
    "list.long-point",
    "list.short-point",
    "list.first-cut",
    "list.last-cut",
    "list.marks",
)
"""The message ids of the column heads."""


class Order(enum.Enum):
    """How the rows are sorted."""

    LABEL = "label"
    CUTTING = "cutting"


class Row(msgspec.Struct, frozen=True):
    """A member's key and the texts of its cells."""

    key: str
    cells: tuple[str, ...]


class RowMaker:
    """Makes rows, each anew only when its member, label, marks or words are other ones.

    It belongs to who shows the list; a row from it equals a fresh one.
    """

    def __init__(self) -> None:
        """One that has made no rows yet."""
        self._made: dict[str, tuple[object, Row]] = {}

    def rows(self, result: WallResult, wording: Wording, order: Order) -> tuple[Row, ...]:
        """The rows of a wall; none for one without a frame."""
        members = ordered(result, order)
        labels = result.label_of
        marks: dict[str, list[Mark]] = {}
        for mark in result.marks:
            marks.setdefault(mark.member, []).append(mark)
        made: dict[str, tuple[object, Row]] = {}
        for member in members:
            on = tuple(marks.get(member.key, ()))
            plates = tuple(labels.get(mark.plate, "") for mark in on)
            made_from = (member, labels[member.key], on, plates, wording.catalogue, wording.tape)
            known = self._made.get(member.key)
            if known is None or known[0] != made_from:
                row = row_of(member, labels, on, wording)
                known = (made_from, row)
            made[member.key] = known
        self._made = made
        return tuple(row for _, row in made.values())


def ordered(result: WallResult, order: Order) -> tuple[Member, ...]:
    """The members of a wall in the order of the list."""
    members = result.frame.members if result.frame else ()
    if order is Order.CUTTING:
        return cutting_order(members)
    labels = result.label_of
    return tuple(sorted(members, key=lambda m: _number(labels[m.key])))


def row_of(member: Member, labels: dict[str, str], marks: Sequence[Mark], wording: Wording) -> Row:
    """The row of one member."""
    long, short = wording.length(member.long_point), wording.length(member.short_point)
    return Row(
        member.key,
        (
            labels[member.key],
            wording.word(f"role.{member.role.value.replace(' ', '-')}"),
            stock_name(member, wording),
            long,
            "" if short == long else short,
            cut_text(member.first_cut, wording),
            cut_text(member.last_cut, wording),
            " · ".join(_mark(mark, labels, wording) for mark in marks),
        ),
    )


def tab_separated(heads: Sequence[str], rows: Sequence[Row]) -> str:
    """The table as plain text: cells parted by tabs, a line for each row."""
    lines = ("\t".join(cells) for cells in (tuple(heads), *(row.cells for row in rows)))
    return "\n".join(lines)


def as_html(heads: Sequence[str], rows: Sequence[Row]) -> str:
    """The table in HTML."""
    top = "".join(f"<th>{html.escape(head)}</th>" for head in heads)
    body = "".join(
        f"<tr>{''.join(f'<td>{html.escape(cell)}</td>' for cell in row.cells)}</tr>" for row in rows
    )
    return f"<table><tr>{top}</tr>{body}</table>"


def _mark(mark: Mark, labels: dict[str, str], wording: Wording) -> str:
    end = wording.word(f"side.{mark.origin.value}")
    plate = labels.get(mark.plate) or wording.word("held.rafter")
    return wording.say(message("list.mark", plate=plate, along=Mm(mark.along), side=end))


def _number(label: str) -> int:
    return int("".join(letter for letter in label if letter.isdigit()) or 0)
