"""One element of a drawing as the DXF entities that show it."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

from core.drawing import Align, Dimension, Element, Fill, Pen, Stroke, Text
from core.drawing.dimension import GAP, LIFT, PAST, TICK, dimension_line, dimension_parts
from core.drawing.elements import XY
from core.drawing.typeface import cap_height
from core.output.layers import LAYERS

if TYPE_CHECKING:
    from ezdxf.document import Drawing as Document
    from ezdxf.entities.dxfentity import DXFEntity
    from ezdxf.layouts.base import BaseLayout

APP_ID = "EAVEWRIGHT"
"""The application name that an element's key stands under, as extended data of its entity."""

TEXT_STYLE = "EAVEWRIGHT"
"""The name of the text style."""

TEXT_WIDTH = 0.8
"""Squeezes the plain stroke font to about the width of the printed letters."""

_NARROW = 0.65
"""The same for narrow texts."""

_HATCH = 2.4
"""The spacing of hatching, mm on paper."""


class Writer:
    """Writes elements into the model space of a document.

    `scale` is mm on paper for each mm of the model, `unit` drawing units in a mm.
    """

    def __init__(self, document: Document, scale: float, unit: float) -> None:
        """A writer for a document that has our layers, text style and application name."""
        self._document = document
        self._scale = scale
        self._unit = unit

    def write(self, element: Element) -> None:
        """Write an element that has something to show (see `tidy`); most fills have nothing."""
        space = self._document.modelspace()
        match element:
            case Stroke():
                self._stroke(space, element)
            case Fill(pen=Pen.ABOVE_ROOF):
                self._hatch(space, element)
            case Text():
                self._text(space, element)
            case Dimension():
                self._dimension(space, element)

    def _stroke(self, space: BaseLayout, stroke: Stroke) -> None:
        points = [self._point(p) for p in stroke.points]
        if len(points) == 2:
            line = space.add_line(points[0], points[1], dxfattribs=_on_layer(stroke.pen))
            _keyed(line, stroke.key)
        else:
            outline = space.add_lwpolyline(
                points, close=stroke.closed, dxfattribs=_on_layer(stroke.pen)
            )
            _keyed(outline, stroke.key)

    def _hatch(self, space: BaseLayout, fill: Fill) -> None:
        """Lines at 45 degrees, told here in full so that no reader needs a pattern of that name."""
        hatch = space.add_hatch(color=256, dxfattribs=_on_layer(fill.pen))
        hatch.paths.add_polyline_path([self._point(p) for p in fill.outline], is_closed=True)
        step = self._paper(_HATCH) / math.sqrt(2)
        lines = [[45.0, (0.0, 0.0), (-step, step), []]]
        hatch.set_pattern_fill("ROOF", color=256, pattern_type=0, definition=lines)
        _keyed(hatch, fill.key)

    def _text(self, space: BaseLayout, text: Text) -> None:
        """A text as high as its capitals: that is what DXF calls the height of a text."""
        from ezdxf.enums import TextEntityAlignment as At

        alignment = {
            (Align.START, False): At.LEFT,
            (Align.MIDDLE, False): At.CENTER,
            (Align.END, False): At.RIGHT,
            (Align.START, True): At.MIDDLE_LEFT,
            (Align.MIDDLE, True): At.MIDDLE_CENTER,
            (Align.END, True): At.MIDDLE_RIGHT,
        }[text.align, text.middle]
        written = space.add_text(
            _escaped(text.text),
            height=self._paper(cap_height(text.size)),
            rotation=math.degrees(text.angle),
            dxfattribs=_on_layer(text.pen) | {"style": TEXT_STYLE},
        )
        written.dxf.width = _NARROW if text.narrow else TEXT_WIDTH
        written.set_placement(self._point(text.at), align=alignment)
        _keyed(written, text.key)

    def _dimension(self, space: BaseLayout, dimension: Dimension) -> None:
        """An aligned dimension that says what is written, with the picture that the sheets show."""
        parts = dimension_parts(dimension, self._scale)
        picture = self._document.blocks.new_anonymous_block("D")
        for part in parts:
            self._stroke(picture, part) if isinstance(part, Stroke) else self._text(picture, part)
        figures = [part.at for part in parts if isinstance(part, Text)]
        on_line = dimension_line(dimension)[1]
        entity = space.new_entity(
            "DIMENSION",
            _on_layer(dimension.pen)
            | {
                # 1: aligned; 32: the block belongs to this dimension alone.
                "dimtype": 1 | 32,
                "geometry": picture.name,
                "dimstyle": self._dimension_style(dimension.size),
                "defpoint": self._point(on_line),
                "defpoint2": self._point(dimension.start),
                "defpoint3": self._point(dimension.end),
                "text_midpoint": self._point((figures or [on_line])[0]),
                # A blank tells readers to write nothing; an empty text would be the measure.
                "text": _escaped(dimension.text) or " ",
                "actual_measurement": math.dist(dimension.start, dimension.end) * self._unit,
            },
        )
        _keyed(entity, dimension.key)

    def _dimension_style(self, size: float) -> str:
        """The name of the dimension style for figures of a size (mm on paper), added when new."""
        name = f"EAVEWRIGHT-{size:g}"
        if name not in self._document.dimstyles:
            attributes: dict[str, Any] = {
                "dimtxsty": TEXT_STYLE,
                "dimtxt": self._paper(cap_height(size)),
                # The tick's size is half its length across: readers draw it to both sides.
                "dimtsz": self._paper(TICK / 2 / math.sqrt(2)),
                "dimexo": self._paper(GAP),
                "dimexe": self._paper(PAST),
                "dimgap": self._paper(LIFT),
                "dimtad": 1,
                "dimtih": 0,
                "dimtoh": 0,
            }
            self._document.dimstyles.new(name, attributes)
        return name

    def _point(self, model: XY) -> XY:
        return model[0] * self._unit + 0.0, model[1] * self._unit + 0.0

    def _paper(self, mm: float) -> float:
        """Drawing units that are so many mm on a print at the scale."""
        return mm / self._scale * self._unit


def _on_layer(pen: Pen) -> dict[str, Any]:
    return {"layer": LAYERS[pen].name}


def _keyed(entity: DXFEntity, key: str) -> None:
    if key:
        # 1000: a text of extended data.
        entity.set_xdata(APP_ID, [(1000, key)])


def _escaped(text: str) -> str:
    """The text with its carets marked as such: alone they begin a control character in DXF."""
    return text.replace("^", "^ ")
