"""A cut end as a small picture: seen on face A and from the side, each edge with its length."""

import math
from collections.abc import Callable, Sequence
from itertools import pairwise

import msgspec

from core.drawing.elements import XY, Align, Drawing, Element, Fill, Stroke, Text
from core.drawing.pen import Pen
from core.framing import CutEnd
from core.model import Side
from core.wording import Wording, message

SIZE = 3.0
"""The size of lengths, mm on paper."""

SMALL = 2.6
"""The size of what is written under a picture, mm on paper."""

STUB = 9.0
"""How much of the member is shown below its shortest corner, mm on paper."""

DASH = 1.1
"""A dash, and the gap after it, of an edge that is hidden, mm on paper."""

SEEN = 0.2
"""How far the edge of the other face has to be off for it to be drawn, mm on paper."""

TALLEST = 24.0
"""The most that a cut may rise, mm on paper; a steeper one is drawn smaller."""

Turn = Callable[[XY], XY]
"""From (across, out) to a place on the paper."""


def end_pictures(end: CutEnd, pen: Pen, *, lies: bool, wording: Wording) -> tuple[Drawing, ...]:
    """The end on face A, and from the side whose face lies up on the saw; mm on paper."""
    turn = _turn(end.side, lies=lies)
    up = end.face_up if end.face_up != "any" else "right"
    near = _Face(end.near, end.far, end.lengths[0])
    first = _view(end, near, pen, turn, wording, lies=lies)
    second = _view(end, _from_side(end, up), pen, turn, wording, lies=lies)
    known = end.face_up != "any"
    name = wording.word(f"face.{up}") if known else wording.word("picture.from-right")
    title = wording.word("picture.from-a")
    if end.both:
        title = wording.say(message("picture.both-ends", view=title))
    return _captioned(first, title), _captioned(second, name)


def scale_of(end: CutEnd) -> float:
    """The scale of its pictures: a fifth, or less for timber and cuts that need much room."""
    rise = max(out for face in (end.near, end.far) for _, out in face)
    return min(1 / 5, TALLEST / max(rise, 1e-6), TALLEST / max(end.deep, end.wide))


class _Face(msgspec.Struct, frozen=True):
    """The end of a face that is seen, that of the one behind it, and the lengths at the former."""

    seen: tuple[XY, ...]
    hidden: tuple[XY, ...]
    lengths: tuple[float, ...]


def _from_side(end: CutEnd, up: str) -> _Face:
    """What is seen with this face up.

    With the right face or the top up face A is on the left; else it is on the other side.
    """
    plain = up in ("right", "top")
    shown, other = (-1, 0) if plain else (0, -1)

    def edge(index: int) -> tuple[XY, ...]:
        pair = ((0.0, end.near[index][1]), (end.deep, end.far[index][1]))
        return pair if plain else tuple((end.deep - a, out) for a, out in reversed(pair))

    lengths = (end.lengths[0][shown], end.lengths[1][shown])
    return _Face(edge(shown), edge(other), lengths if plain else lengths[::-1])


def _turn(side: Side, *, lies: bool) -> Turn:
    """A top looks up and a foot down; ends of what lies look right and left."""
    way = 1.0 if side is Side.RIGHT else -1.0
    if lies:
        return lambda p: (way * p[1], p[0])
    return lambda p: (p[0], way * p[1])


def _view(
    end: CutEnd, view: _Face, pen: Pen, turn: Turn, wording: Wording, *, lies: bool
) -> Drawing:
    """One face with its cut, and the lengths of its edges.

    Where the cut rises away from it the sawn face is in sight, else the edge behind is dashed.
    """
    scale = scale_of(end)
    corners = tuple((across * scale, out * scale) for across, out in view.seen)
    behind = tuple((across * scale, out * scale) for across, out in view.hidden)
    outline = ((corners[0][0], -STUB), *corners, (corners[-1][0], -STUB))
    drawing: list[Element] = [Fill(tuple(map(turn, outline)), pen)]
    rises = [b[1] - a[1] for a, b in zip(_ends(corners), _ends(behind), strict=True)]
    if max(rises) > SEEN:
        sawn = tuple(map(turn, (*corners, *reversed(behind))))
        drawing += [Fill(sawn, Pen.OPENING), Stroke(sawn, pen, closed=True)]
    elif min(rises) < -SEEN:
        drawing += [Stroke(tuple(map(turn, dash)), Pen.DIMENSION) for dash in _dashes(behind)]
    drawing.append(Stroke(tuple(map(turn, outline)), pen))
    tip = max(out for _, out in (*corners, *behind))
    texts = tuple(wording.length(length) for length in view.lengths)
    edges = _Edges(corners, texts, tip, _longest(end, wording))
    return (*drawing, *(_beyond(edges, turn) if lies else _beside(edges, turn)))


def _longest(end: CutEnd, wording: Wording) -> str:
    """The text of the longest edge; none where all read alike."""
    found = sorted(length for face in end.lengths for length in face)
    texts = [wording.length(length) for length in (found[0], found[-1])]
    return texts[1] if texts[0] != texts[1] else ""


def _ends(corners: Sequence[XY]) -> tuple[XY, XY]:
    return corners[0], corners[-1]


def _dashes(corners: Sequence[XY]) -> list[tuple[XY, XY]]:
    made = []
    for (x0, y0), (x1, y1) in pairwise(corners):
        run = math.dist((x0, y0), (x1, y1))
        count = max(int(run / (2 * DASH)), 1)
        for n in range(count):
            a, b = n / count, (n + 0.5) / count
            made.append(
                (
                    (x0 + a * (x1 - x0), y0 + a * (y1 - y0)),
                    (x0 + b * (x1 - x0), y0 + b * (y1 - y0)),
                )
            )
    return made


class _Edges(msgspec.Struct, frozen=True):
    """The corners of a face on the paper with the lengths at them, and how far the end reaches.

    `longest` is the text of the end's longest edge, which is written bold unless all are alike.
    """

    corners: tuple[XY, ...]
    texts: tuple[str, ...]
    tip: float
    longest: str

    def text(self, index: int, at: XY, align: Align) -> Text:
        """The length at a corner, written at a place."""
        text = self.texts[index]
        bold = text == self.longest
        return Text(text, at, SIZE, Pen.LENGTH, align=align, bold=bold, middle=True)


def _beside(edges: _Edges, turn: Turn) -> Drawing:
    """Lengths beside the edges of what stands; that of a tip between them over it."""
    last = len(edges.corners) - 1
    alike = len(set(edges.texts)) == 1
    made = []
    for index, corner in enumerate(edges.corners):
        x, y = turn(corner)
        if 0 < index < last:
            up = math.copysign(2.8, turn((0.0, 1.0))[1])
            made.append(edges.text(index, (x, y + up), Align.MIDDLE))
        elif index == last:
            made.append(edges.text(index, (x + 1.5, y), Align.START))
        elif not alike:
            made.append(edges.text(index, (x - 1.5, y), Align.END))
    return tuple(made)


def _beyond(edges: _Edges, turn: Turn) -> Drawing:
    """Lengths past the end of what lies, each on the line of its edge; one where both are alike."""
    (first, _), (last, _) = edges.corners[0], edges.corners[-1]
    way = turn((0.0, 1.0))[0]
    align = Align.START if way > 0 else Align.END
    places = [(0, first), (-1, last)]
    if edges.texts[0] == edges.texts[-1]:
        places = [(0, (first + last) / 2)]
    made = []
    for index, across in places:
        x, y = turn((across, edges.tip))
        made.append(edges.text(index, (x + 1.5 * way, y), align))
    return tuple(made)


def _captioned(drawing: Drawing, caption: str) -> Drawing:
    """The drawing with words under its middle."""
    strokes = [p for e in drawing if isinstance(e, Stroke) for p in e.points]
    xs, ys = [x for x, _ in strokes], [y for _, y in strokes]
    at = ((min(xs) + max(xs)) / 2, min(ys) - SMALL - 1.4)
    return (*drawing, Text(caption, at, SMALL, Pen.NOTE, align=Align.MIDDLE))
