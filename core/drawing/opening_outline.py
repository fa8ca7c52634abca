"""The outline of a rough opening as it is drawn: what cannot be built stays under the roof."""

from collections.abc import Iterator

from core.drawing.elements import XY
from core.framing import PlacedOpening
from core.roof import RoofLine, Segment


def drawn_outline(placed: PlacedOpening, roof: RoofLine) -> tuple[XY, ...]:
    """The corners of a rough opening, from the lower left one counter-clockwise, mm.

    One that cannot be built may reach over the roof, where tapes and figures are: it is drawn up
    to the roof line. Where hardly any of it is under the roof, it is drawn as it is stated.
    """
    if placed.fit.fits:
        return placed.outline
    sill, head = placed.opening.sill.mm, _head(placed)
    top = [
        (x, min(head.at(x), over.at(x)))
        for over in _over(placed, roof)
        for x in (over.left, *_crossing(head, over), over.right)
    ]
    if any(y <= sill for _, y in top):
        return placed.outline
    corners = [(placed.left, sill), (placed.right, sill), *reversed(top)]
    return tuple(c for c, before in zip(corners, [None, *corners], strict=False) if c != before)


def _head(placed: PlacedOpening) -> Segment:
    """The head as a line over the opening."""
    height = placed.heads[0] - placed.rake * placed.left
    return Segment(placed.left, placed.right, height, placed.rake, 0.0)


def _over(placed: PlacedOpening, roof: RoofLine) -> Iterator[Segment]:
    """The parts of the roof line over an opening; the end ones go on past the wall."""
    last = len(roof.segments) - 1
    for n, s in enumerate(roof.segments):
        left = placed.left if n == 0 else max(placed.left, s.left)
        right = placed.right if n == last else min(placed.right, s.right)
        if left < right:
            yield Segment(left, right, s.height, s.along, s.across)


def _crossing(head: Segment, over: Segment) -> tuple[float, ...]:
    """Where the head meets the roof within a part of it."""
    closing = over.along - head.along
    x = (head.height - over.height) / closing if abs(closing) > 1e-12 else over.left
    return (x,) if over.left < x < over.right else ()
