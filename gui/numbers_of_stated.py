"""The numbers of an opening, a box, a fixture or a zone, in words and figures; no Qt."""

import math

from core.checks import range_message, zone_rect
from core.drawing.table import stock_name
from core.framing import PlacedBox, PlacedOpening, spoken
from core.job import Number, WallResult
from core.model import Box, ClearZone, Fixture, Leaf, Opening
from core.wording import Mm, Rad, Wording, message
from gui.figure import Figure, Numbers


def opening_numbers(placed: PlacedOpening, wording: Wording) -> Numbers:
    opening = placed.opening
    heights = [Mm(head - opening.sill.mm) for head in placed.heads]
    raked = message("opening.heights", left=heights[0], right=heights[1])
    height = raked if placed.rake else heights[0]
    size = message("opening.size", width=Mm(opening.width.mm), height=height)
    figures = [
        Figure(
            wording.word("held.rough-opening"),
            wording.say(size),
            large=True,
            number=Number.ROUGH_OPENING,
        ),
        Figure(
            wording.word("held.left-edge"),
            wording.length(opening.left.mm),
            large=True,
            number=Number.OPENING_LEFT,
        ),
        *_raked(placed, wording),
        *_hung(opening, wording),
        Figure(wording.word("held.fits"), _ranges(placed, wording), number=_number(placed)),
    ]
    kind = wording.word(f"kind.{opening.kind.value.replace(' ', '-')}")
    return Numbers(spoken(opening.id), kind, tuple(figures))


def _raked(placed: PlacedOpening, wording: Wording) -> list[Figure]:
    """The heights of a raked head at both sides of the opening, and its slope."""
    if not placed.rake:
        return []
    left, right = (Mm(head) for head in placed.heads)
    text = message("held.raked", left=left, right=right, angle=Rad(abs(math.atan(placed.rake))))
    return [Figure(wording.word("held.raked-head"), wording.say(text), large=True)]


def _hung(opening: Opening, wording: Wording) -> list[Figure]:
    """The sums of leaf and allowances, and how it opens."""
    figures = []
    if opening.leaf is not None:
        figures.append(Figure(wording.word("held.leaf"), sums_text(opening.leaf, wording)))
    if opening.hung is not None:
        hung = opening.hung
        way = message(
            "held.hangs",
            hinges=wording.word(f"hinges.{hung.hinges.value}"),
            swing=wording.word(f"swing.{hung.swing.name.lower()}"),
        )
        figures.append(Figure(wording.word("held.opens"), wording.say(way)))
    return figures


def sums_text(leaf: Leaf | None, wording: Wording) -> str:
    """Both sums in full, width then height; nothing where no leaf is stated."""
    if leaf is None:
        return ""
    sums = (
        ("leaf.width-sum", leaf.width.mm, leaf.wider.mm, leaf.rough_width),
        ("leaf.height-sum", leaf.height.mm, leaf.higher.mm, leaf.rough_height),
    )
    said = (
        message(message_id, leaf=Mm(one), more=Mm(more), sum=Mm(both))
        for message_id, one, more, both in sums
    )
    return "\n".join(wording.say(text) for text in said)


def _ranges(placed: PlacedOpening, wording: Wording) -> str:
    texts = [wording.say(range_message(low, high)) for low, high in placed.fit.ranges]
    return "\n".join(texts) or wording.word("held.fits-nowhere")


def _number(placed: PlacedOpening) -> Number | None:
    """Where it fits nowhere there is no number to work."""
    return Number.FITS if placed.fit.ranges else None


def box_numbers(result: WallResult, placed: PlacedBox, wording: Wording) -> Numbers:
    box = placed.box
    stud = result.label_of.get(box.stud, wording.word("held.no-stud"))
    where = message("held.box-on", stud=stud, side=wording.word(f"side.{box.side.value}"))
    edges = _span(placed.left, placed.right, wording)
    heights = _span(placed.bottom, placed.top, wording)
    figures = [
        Figure(
            wording.word(f"held.height-{box.to.value}"),
            wording.length(box.height.mm),
            large=True,
            number=Number.BOX_HEIGHT,
        ),
        Figure(wording.word("held.box-stud"), wording.say(where), large=True),
        *_far_face(box, wording),
        Figure(
            wording.word("held.box-edges"),
            edges,
            number=Number.BOX_EDGES,
        ),
        Figure(
            wording.word("held.box-heights"),
            heights,
            number=Number.BOX_HEIGHTS,
        ),
    ]
    return Numbers(spoken(box.id), wording.word("kind.box"), tuple(figures))


def _far_face(box: Box, wording: Wording) -> list[Figure]:
    """The face that a box opens on, where it is not the one that is looked at."""
    if not box.on_far_face:
        return []
    return [Figure(wording.word("field.box-face"), wording.word("wall-face.far"))]


def zone_numbers(zone: ClearZone, wording: Wording) -> Numbers:
    """How large the zone is, and where."""
    size = message("opening.size", width=Mm(zone.width.mm), height=Mm(zone.height.mm))
    left, bottom, right, top = zone_rect(zone)
    figures = (
        Figure(wording.word("held.zone-size"), wording.say(size), large=True),
        Figure(wording.word("held.box-edges"), _span(left, right, wording)),
        Figure(wording.word("held.box-heights"), _span(bottom, top, wording)),
    )
    return Numbers(spoken(zone.id), wording.word("kind.zone"), figures)


def fixture_numbers(result: WallResult, fixture: Fixture, wording: Wording) -> Numbers:
    """What hangs there, how high, and the pieces that back it."""
    key = f"{result.wall.letter}/{fixture.id}/"
    pieces = [m for m in result.frame.members if m.key.startswith(key)] if result.frame else []
    lengths = ", ".join(wording.length(m.long_point) for m in pieces)
    figures = [
        Figure(
            wording.word("held.height-centre"),
            wording.length(fixture.height.mm),
            large=True,
            number=Number.FIXTURE_HEIGHT,
        ),
        Figure(
            wording.word("held.backed-by"),
            lengths or wording.word("held.nothing"),
            large=True,
            number=Number.BACKED_BY if pieces else None,
        ),
    ]
    if pieces:
        face = wording.word(f"wall-face.{fixture.face.value.lower()}")
        stock = stock_name(pieces[0], wording)
        text = message("held.backed-text", count=len(pieces), stock=stock, face=face)
        figures.append(Figure(wording.word("held.stock"), wording.say(text)))
    kind = wording.word(f"fixture.{fixture.kind.value.replace(' ', '-')}")
    return Numbers(spoken(fixture.id), kind, tuple(figures))


def _span(low: float, high: float, wording: Wording) -> str:
    return wording.say(message("opening.range", low=Mm(low), high=Mm(high)))
