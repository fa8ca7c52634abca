"""What stands in the room before any wall does: chimneys, ducts, and the gap kept from them."""

from core.drawing.elements import XY, Align, Drawing, Element, Fill, Stroke, Text
from core.drawing.extent import text_corners
from core.drawing.pen import Pen
from core.drawing.placing import Taken, bounds
from core.drawing.view import View
from core.framing import spoken
from core.model import KeptClear, Room


def standing(room: Room, view: View, taken: Taken) -> Drawing:
    """All of it with its names; `taken` learns where it stands."""
    drawing: list[Element] = []
    for item in room.kept_clear:
        drawing += _kept_clear(item, view)
        taken.add(bounds(_corners(item, 0.0)))
    return tuple(drawing)


def _kept_clear(item: KeptClear, view: View) -> Drawing:
    """A chimney or duct: its outline crossed out, the gap around it dashed, and its name."""
    own = _corners(item, 0.0)
    drawing: list[Element] = [
        Fill(own, Pen.EXISTING, item.id),
        Stroke(own, Pen.EXISTING, item.id, closed=True),
        Stroke((own[0], own[2]), Pen.RULE, item.id),
        Stroke((own[1], own[3]), Pen.RULE, item.id),
        Stroke(_corners(item, item.gap.mm), Pen.CEILING, item.id, closed=True),
    ]
    if item.up_to is not None:
        drawing += _head(item, own, item.up_to.mm)
    middle = ((own[0][0] + own[2][0]) / 2, (own[0][1] + own[2][1]) / 2)
    name = Text(
        spoken(item.id), middle, view.size * 0.86, Pen.LABEL, item.id, Align.MIDDLE, middle=True
    )
    left, _, right, _ = bounds(text_corners(name, view.scale))
    return (*drawing, name) if right - left < item.wide.mm else tuple(drawing)


def _head(item: KeptClear, own: tuple[XY, ...], high: float) -> Drawing:
    """Where one that leans is at the height stated, and the way its corners go there."""
    u, v = item.corner_at(high)
    moved = tuple((x + u - item.across.mm, y + v - item.along.mm) for x, y in own)
    ways = (Stroke(pair, Pen.RULE, item.id) for pair in zip(own, moved, strict=True))
    return (Stroke(moved, Pen.EXISTING, item.id, closed=True), *ways)


def _corners(item: KeptClear, beyond: float) -> tuple[XY, ...]:
    """The corners of what is kept clear, or of the ground `beyond` (mm) it on all sides."""
    u0, v0 = item.across.mm - beyond, item.along.mm - beyond
    u1, v1 = u0 + item.wide.mm + 2 * beyond, v0 + item.deep.mm + 2 * beyond
    return (u0, v0), (u1, v0), (u1, v1), (u0, v1)
