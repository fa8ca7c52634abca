"""The saw as it is set for a cut: its mitre seen from above, its blade seen from the front."""

import math

from core.drawing.elements import XY, Align, Drawing, Element, Fill, Stroke, Text
from core.drawing.pen import Pen
from core.framing import Setting, Way
from core.lengths import write_degrees
from core.model import Saw
from core.wording import Wording

SIZE = 3.4
"""The size of the angle, mm on paper."""

SMALL = 2.6
"""The size of what is written under a picture, mm on paper."""

SCALE, WIDEST = 1 / 8, 12.0
"""Of the timber on the saw, and the most that it is drawn wide, mm on paper."""

ARM = 17.0
"""From the pivot to the scale of angles, mm on paper."""

HALF = 15.0
"""How far fence and table are shown on either side of the pivot, mm on paper."""

TICK = 1.6
"""The length of a tick of the scale, mm on paper."""

BLOCK, CLEAR_OF_FENCE, CROSSED = 3.0, 1.5, 8.0
"""The block that a piece is clamped along; where the cut begins below the fence, and its reach."""

STEP = 15
"""Degrees between two ticks of the scale."""

_LEAST = 1e-4
"""An angle smaller than this (radians) is none."""

_STANDING = (Way.ON_EDGE, Way.ON_EDGE_SQUARE)
_BLOCKED = (Way.SQUARE, Way.ON_EDGE_SQUARE)


def saw_pictures(
    setting: Setting, timber: tuple[float, float], saw: Saw, pen: Pen, wording: Wording
) -> tuple[Drawing, ...]:
    """What the saw is set to for timber of this (thickness, width), mm; mm on paper.

    The mitre from above and the blade's tilt from the front, each where it is set at all. Nothing
    for a cut that no setting makes.
    """
    if setting.way is Way.BY_HAND:
        return ()
    thick, wide = timber[::-1] if setting.way in _STANDING else timber
    scale = min(SCALE, WIDEST / max(timber))
    blocked = setting.way in _BLOCKED
    made = []
    if setting.mitre > _LEAST:
        above = _from_above(setting.mitre, wide * scale, saw, pen, blocked=blocked)
        named = wording.word(f"picture.mitre-{_name(setting.way)}")
        made.append((*above, _caption(named, (0.0, -ARM - 8.6))))
    if setting.bevel > _LEAST:
        front = _from_front(setting.bevel, thick * scale, saw, pen)
        named = wording.word(f"picture.tilt-{_name(setting.way)}")
        made.append((*front, _caption(named, (0.0, -SMALL - 2.6))))
    return tuple(made)


def _name(way: Way) -> str:
    return way.value.replace(" ", "-")


def _from_above(mitre: float, wide: float, saw: Saw, pen: Pen, *, blocked: bool) -> Drawing:
    """The fence at the top, the piece along it, and the blade's line swung over the scale."""
    down = -math.pi / 2
    drawing: list[Element] = []
    if blocked:
        drawing += _along_block(mitre, wide, pen)
    else:
        slip = wide * math.tan(mitre)
        kept = ((-HALF, 0.0), (0.0, 0.0), (slip, -wide), (-HALF, -wide))
        drawing += [Fill(kept, pen), Stroke(kept, pen, closed=True)]
        off = ((HALF, -wide), (slip, -wide), (0.0, 0.0), (HALF, 0.0))
        drawing.append(Stroke(off, Pen.DIMENSION))
    drawing.append(Stroke(((-HALF, 0.6), (HALF, 0.6)), Pen.BORDER))
    drawing += _scale(down, saw.mitre.angle, both=True)
    blade = _at(ARM - 0.4, down + mitre)
    drawing.append(Stroke((_at(-3.0, down + mitre), blade), Pen.BORDER))
    drawing.append(_angle(mitre, _at(ARM + 4.2, down + mitre)))
    return tuple(drawing)


def _along_block(swing: float, wide: float, pen: Pen) -> Drawing:
    """The piece along a block that stands square to the fence, cut by the swung blade.

    It is drawn narrower where the blade would need more than its arm to cross it.
    """
    slope = math.tan(swing)
    left = CLEAR_OF_FENCE * slope
    right = left + min(wide, CROSSED * slope)
    low = -CLEAR_OF_FENCE - CROSSED - 4.0
    kept = ((left, low), (left, -left / slope), (right, -right / slope), (right, low))
    # The blade nips the block's corner where it leaves the fence.
    outer = left - BLOCK
    stop = ((outer, low), (outer, -0.2), (-0.4, -0.2), (left, -CLEAR_OF_FENCE), (left, low))
    return (
        Fill(kept, pen),
        Stroke(kept, pen, closed=True),
        Fill(stop, Pen.BOX),
        Stroke(stop, Pen.BOX, closed=True),
    )


def _from_front(bevel: float, thick: float, saw: Saw, pen: Pen) -> Drawing:
    """The table below, the piece on it, and the blade tilted over the scale."""
    up = math.pi / 2
    slip = thick * math.tan(bevel)
    kept = ((-HALF, 0.0), (0.0, 0.0), (slip, thick), (-HALF, thick))
    off = ((HALF, thick), (slip, thick), (0.0, 0.0), (HALF, 0.0))
    drawing: list[Element] = [Fill(kept, pen), Stroke(kept, pen, closed=True)]
    drawing.append(Stroke(off, Pen.DIMENSION))
    drawing.append(Stroke(((-HALF, -0.6), (HALF, -0.6)), Pen.BORDER))
    drawing += _scale(up, saw.bevel.angle, both=False)
    drawing.append(Stroke(((0.0, 0.0), _at(ARM - 0.4, up - bevel)), Pen.BORDER))
    drawing.append(_angle(bevel, _at(ARM + 3.4, up - bevel)))
    return tuple(drawing)


def _scale(square: float, stop: float, *, both: bool) -> Drawing:
    """The arc of angles from square to the stop, with ticks; to both sides for a mitre."""
    last = math.degrees(stop)
    first = -last if both else 0.0
    way = 1.0 if square < 0 else -1.0
    count = max(int((last - first) / 3), 1)
    arc = tuple(
        _at(ARM, square + way * math.radians(first + n * (last - first) / count))
        for n in range(count + 1)
    )
    drawing: list[Element] = [Stroke(arc, Pen.DIMENSION)]
    for degrees in range(-90, 91, STEP):
        if first - 1e-6 <= degrees <= last + 1e-6:
            angle = square + way * math.radians(degrees)
            long = TICK * (1.6 if degrees == 0 else 1.0)
            drawing.append(Stroke((_at(ARM, angle), _at(ARM + long, angle)), Pen.DIMENSION))
    return tuple(drawing)


def _at(reach: float, angle: float) -> XY:
    return reach * math.cos(angle), reach * math.sin(angle)


def _angle(radians: float, at: XY) -> Text:
    text = write_degrees(radians)
    return Text(text, at, SIZE, Pen.LENGTH, align=Align.MIDDLE, bold=True, middle=True)


def _caption(text: str, at: XY) -> Text:
    return Text(text, at, SMALL, Pen.NOTE, align=Align.MIDDLE)
