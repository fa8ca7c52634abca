"""The figures of a rough opening, written in it as many as there is room for."""

import math
import re
from collections.abc import Iterator

import msgspec

from core.drawing.elements import XY, Align, Drawing, Text
from core.drawing.extent import text_corners
from core.drawing.leaders import GAP
from core.drawing.pen import Pen
from core.drawing.placing import Ground, Rect, bounds
from core.drawing.typeface import cap_height, text_width
from core.drawing.view import View
from core.framing import Frame, PlacedOpening, spoken
from core.model import Opening
from core.roof import RoofLine
from core.wording import Message, Wording, message

LINE = 4.5
"""From one line to the next, mm on paper."""

LABEL, BOTH = 9.0, 14.0
"""Room kept under the figures in a doorway for a trimmer's label, for label and length, mm."""

MARGIN = 0.5
"""The least room to either side of the figures, mm on paper."""

KEPT = 2.0
"""The room beside the figures that other texts keep off, mm on paper; over and under them GAP."""

Line = tuple[str, bool]
"""A text, and whether it is bold."""

Way = tuple[tuple[Text, ...], tuple[Rect, ...]]
"""Texts in their places, and what each of them takes up."""

_KEPT_BLANK = "\N{NO-BREAK SPACE}"


def opening_texts(
    placed: PlacedOpening, frame: Frame, view: View, wording: Wording, ground: Ground
) -> Drawing:
    """An opening's name, rough size and head over each other in its middle, between the plates.

    A doorway has no head beside its height. In a narrow opening the texts are broken at their
    blanks; where all have no room the size stands alone, up the opening if need be. They stand on
    the ground from then on; empty where there is no room at all.
    """
    floor = max(m.top for m in frame.soles)
    heads = placed.heads if placed.rake else placed.heads[:1]
    wanted = (placed.key, placed.opening, heads, placed.fit.fits)
    for texts, rects in ground.kept.of(_ways, *wanted, floor, frame.near, view, wording):
        if all(ground.passable(rect) for rect in rects):
            kept, gap = view.model(KEPT), view.model(GAP)
            for left, bottom, right, top in rects:
                ground.add_writing((left - kept, bottom - gap, right + kept, top + gap))
            return texts
    return ()


class _Place(msgspec.Struct, frozen=True):
    """An opening with the pen its figures are written with, and the heights they stand between.

    `heads` is the height of its head, mm, or those at the left and the right of a raked one.
    """

    key: str
    stated: Opening
    heads: tuple[float, ...]
    pen: Pen
    room: tuple[float, float]


def _ways(
    key: str,
    stated: Opening,
    heads: tuple[float, ...],
    fits: bool,
    floor: float,
    line: RoofLine,
    view: View,
    wording: Wording,
) -> tuple[Way, ...]:
    """How an opening's figures may stand, the best way first, each with its rectangles."""
    pen = Pen.OPENING if fits else Pen.UNBUILDABLE
    place = _Place(key, stated, heads, pen, _room(stated, floor, line, view))
    wide = stated.width.mm * view.scale - 2 * MARGIN
    choices = tuple(_choices(place, wording, wide, view.size))
    ways = [
        _over_each_other(place, lines, view, view.model(under))
        for under in (LABEL, 0.0)
        for lines in choices
    ]
    ways.append(_upward(place, view, wording))
    return tuple(
        (texts, tuple(bounds(text_corners(text, view.scale)) for text in texts))
        for texts in ways
        if texts
    )


def _room(stated: Opening, floor: float, line: RoofLine, view: View) -> tuple[float, float]:
    """The heights between which an opening's figures may stand."""
    roof = line.lowest(stated.left.mm, stated.left.mm + stated.width.mm)
    gap = view.model(GAP)
    return max(stated.sill.mm, floor) + gap, min(stated.head.mm, roof) - gap


def _choices(
    place: _Place, wording: Wording, wide: float, size: float
) -> Iterator[tuple[Line, ...]]:
    """What may be written, the most first, each broken into lines no wider than `wide` on paper."""
    name, rough, head = _figures(place, wording)
    window = place.stated.sill.mm > 0
    for figures in ((name, rough, head), (rough, head)) if window else ((name, rough),):
        broken = [_broken(figure, wide, size) for figure in figures]
        if all(broken):
            yield tuple(line for lines in broken for line in lines)
    if alone := _broken(rough, wide, size):
        yield tuple(alone)


def _figures(place: _Place, wording: Wording) -> tuple[Line, Line, Line]:
    """Name, width by height, and the height of the head; a raked one has two, left and right.

    No length is to be broken at its blanks, nor the number of an opening from its name.
    """

    def length(mm: float) -> str:
        return wording.length(mm).replace(" ", _KEPT_BLANK)

    stated = place.stated
    high, at = ([length(head - low) for head in place.heads] for low in (stated.sill.mm, 0.0))
    size = message("opening.size", width=length(stated.width.mm), height=_from_to(high))
    head = message("opening.head", head=_from_to(at))
    name = re.sub(r" (\d+)$", rf"{_KEPT_BLANK}\1", spoken(stated.id))
    return (name, True), (wording.say(size), False), (wording.say(head), False)


def _from_to(heights: list[str]) -> str | Message:
    """One height, or those at the left and at the right side of a raked head."""
    one, *other = heights
    return message("opening.heights", left=one, right=other[0]) if other else one


def _broken(figure: Line, wide: float, size: float) -> list[Line]:
    """A text broken at its blanks; empty if one of its words is too wide."""
    text, bold = figure
    lines: list[str] = []
    for word in text.split(" "):
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and text_width(longer, size, bold, narrow=True) <= wide:
            lines[-1] = longer
        else:
            lines.append(word)
    fits = all(text_width(line, size, bold, narrow=True) <= wide for line in lines)
    return [(line, bold) for line in lines] if fits else []


def _over_each_other(
    place: _Place, lines: tuple[Line, ...], view: View, under: float
) -> tuple[Text, ...]:
    """The lines in the middle of a window; in a doorway rather low, `under` or more over its foot.

    Without anything under them they stand as high as they can. Empty where they have no room.
    """
    low, top = place.room
    high = view.model((len(lines) - 1) * LINE + cap_height(view.size))
    spare = top - low - high
    window = place.stated.sill.mm > 0
    if spare < (0.0 if window else under):
        return ()
    low_in_doorway = min(max(spare / 2, under), view.model(BOTH)) if under else spare
    rise = spare / 2 if window else low_in_doorway
    foot = low + rise
    last = len(lines) - 1
    return tuple(
        _text(place, line, (_middle(place), foot + (last - n) * view.model(LINE)), view)
        for n, line in enumerate(lines)
    )


def _upward(place: _Place, view: View, wording: Wording) -> tuple[Text, ...]:
    """The size written up the middle of the opening, if it is long enough that way."""
    room, size = place.room, _figures(place, wording)[1]
    long = view.model(text_width(size[0], view.size, narrow=True))
    wide = view.model(cap_height(view.size) + 2 * GAP)
    if room[1] - room[0] < long or place.stated.width.mm < wide:
        return ()
    text = _text(place, size, (_middle(place), sum(room) / 2), view)
    return (msgspec.structs.replace(text, angle=math.pi / 2, middle=True),)


def _middle(place: _Place) -> float:
    return place.stated.left.mm + place.stated.width.mm / 2


def _text(place: _Place, line: Line, at: XY, view: View) -> Text:
    text, bold = line[0].replace(_KEPT_BLANK, " "), line[1]
    return Text(text, at, view.size, place.pen, place.key, Align.MIDDLE, bold=bold, narrow=True)
