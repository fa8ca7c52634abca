"""The list of members: what its rows say, grouped so that like pieces share a row."""

import string
from collections import Counter

import msgspec

from core.framing import SQUARE_WITHIN, Facet, Member, Notch, Role
from core.wording import Message, Mm, Rad, Wording, message

_ORDER = (
    Role.SOLE_PLATE,
    Role.TOP_PLATE,
    Role.KING,
    Role.TRIMMER,
    Role.HEADER,
    Role.SILL,
    Role.CRIPPLE,
    Role.BLOCK,
    Role.STUD,
    Role.BLOCKING,
    Role.BACKING,
)

_NOMINAL = {
    (0.75, 1.5): "1x2",
    (0.75, 2.5): "1x3",
    (0.75, 3.5): "1x4",
    (1.5, 1.5): "2x2",
    (1.5, 2.5): "2x3",
    (1.5, 3.5): "2x4",
    (1.5, 5.5): "2x6",
    (1.5, 7.25): "2x8",
    (1.5, 9.25): "2x10",
    (1.5, 11.25): "2x12",
    (3.5, 3.5): "4x4",
}
"""Nominal names by dressed size in inches (PS 20, dry, as tabulated in trade handbooks)."""

HEADS = (
    "table.piece",
    "table.what",
    "table.long-point",
    "table.short-point",
    "table.cut",
    "table.measured",
)
"""The message ids of the column heads; the last column is left blank to be written in."""


class Row(msgspec.Struct, frozen=True):
    """One different piece: the keys that share the row, and the texts of its cells.

    `goes_on` tells that the labels did not all go into the first cell: the next row has the rest.
    """

    keys: tuple[str, ...]
    cells: tuple[str, ...]
    goes_on: bool = False


def rows(members: tuple[Member, ...], labels: dict[str, str], wording: Wording) -> tuple[Row, ...]:
    """The rows of the list in cutting order: plates first, common studs last, short to long.

    Pieces of the same role, section, lengths and cuts share a row: a stud that is the mirror image
    of another is the same piece turned round. The stock is named where it is not the usual one.
    """
    ordered = sorted(members, key=lambda m: (_ORDER.index(m.role), m.long_point))
    usual = usual_stock(members, wording)
    grouped: dict[tuple[str, ...], list[Member]] = {}
    for member in ordered:
        grouped.setdefault(_cells(member, usual, wording), []).append(member)
    return tuple(
        Row(tuple(m.key for m in found), (_pieces(found, labels), *cells, ""))
        for cells, found in grouped.items()
    )


def usual_stock(members: tuple[Member, ...], wording: Wording) -> str:
    """The stock that most members are cut from; "" if there are none."""
    names = Counter(stock_name(m, wording) for m in members)
    return max(names, key=lambda name: names[name], default="")


def stock_name(member: Member, wording: Wording) -> str:
    """The section as it is asked for: nominal where the dressed size has such a name."""
    inches = (round(member.thickness / 25.4, 4), round(member.width / 25.4, 4))
    if inches in _NOMINAL:
        return _NOMINAL[inches]
    return f"{wording.length(member.thickness)} × {wording.length(member.width)}"


def cuts_text(member: Member, wording: Wording) -> str:
    """Both end cuts in words, as the saw is set from a square cut, and how its edges are ripped."""
    ends = _ends_text(member, wording)
    if member.rip is None:
        return ends
    width, bevel = Mm(member.rip.width), Rad(abs(member.rip.bevel))
    return f"{ends} · {wording.say(message('cut.rip', width=width, bevel=bevel))}"


def notches_text(member: Member, wording: Wording) -> tuple[str, ...]:
    """Each notch of a member in words."""
    return tuple(wording.say(notch_message(notch)) for notch in member.notches)


def notch_message(notch: Notch) -> Message:
    """A notch as it is cut: on which side, how deep, and between what heights from the foot."""
    side = message(f"side.{notch.side.value}")
    depth, low = Mm(notch.depth), Mm(notch.bottom)
    if notch.top is None:
        return message("cut.notch-open", side=side, depth=depth, low=low)
    return message("cut.notch", side=side, depth=depth, low=low, high=Mm(notch.top))


def _ends_text(member: Member, wording: Wording) -> str:
    first, last = (cut_text(cut, wording) for cut in (member.first_cut, member.last_cut))
    if first == last:
        both = wording.word("cut.square") == first
        return first if both else wording.say(message("cut.both-ends", cut=first))
    if first == wording.word("cut.square"):
        return last
    return f"{first} · {last}"


def cut_text(cut: tuple[Facet, ...], wording: Wording) -> str:
    """One end's cut in words."""
    texts = [_facet_text(facet, wording) for facet in cut]
    return " / ".join(dict.fromkeys(texts)) if len(cut) == 1 else " / ".join(texts)


def _facet_text(facet: Facet, wording: Wording) -> str:
    if facet.is_square:
        return wording.word("cut.square")
    bevel, mitre = Rad(abs(facet.bevel)), Rad(abs(facet.mitre))
    if abs(facet.mitre) < SQUARE_WITHIN:
        return wording.say(message("cut.bevel", bevel=bevel))
    if abs(facet.bevel) < SQUARE_WITHIN:
        return wording.say(message("cut.mitre", mitre=mitre))
    return wording.say(message("cut.both", bevel=bevel, mitre=mitre))


def _cells(member: Member, usual: str, wording: Wording) -> tuple[str, ...]:
    long, short = wording.length(member.long_point), wording.length(member.short_point)
    stock = stock_name(member, wording)
    role = wording.word(f"role.{member.role.value.replace(' ', '-')}")
    return (
        _with_spacers(member, role if stock == usual else f"{role} {stock}", wording),
        long,
        "" if short == long else short,
        " · ".join((cuts_text(member, wording), *notches_text(member, wording))),
    )


def _with_spacers(member: Member, what: str, wording: Wording) -> str:
    """What a piece is, with the spacers between its plies."""
    if member.spacer <= 0:
        return what
    spacers = message("table.spacers", count=member.count - 1, thick=Mm(member.spacer))
    return f"{what}, {wording.say(spacers)}"


def _pieces(found: list[Member], labels: dict[str, str]) -> str:
    """The labels that share a row; three or more, and plies side by side, are counted.

    Runs of numbers are joined: 3 × A2–A4.
    """
    names = sorted((labels[m.key] for m in found), key=_number)
    count = sum(m.count for m in found)
    text = ", ".join(_runs(names))
    return text if count == len(found) < 3 else f"{count} × {text}"


def _runs(names: list[str]) -> list[str]:
    """Join labels with consecutive numbers: A2, A3, A4 becomes A2–A4."""
    runs: list[list[str]] = []
    for name in names:
        if runs and _number(name) == _number(runs[-1][-1]) + 1:
            runs[-1].append(name)
        else:
            runs.append([name])
    return [", ".join(run) if len(run) < 3 else f"{run[0]}–{run[-1]}" for run in runs]


def _number(name: str) -> int:
    """The number of a label: 12 of B12."""
    return int(name.lstrip(string.ascii_uppercase))
