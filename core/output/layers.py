"""The layers of the line drawing: one for each pen, with its trade name, colour and weight."""

from collections.abc import Mapping
from types import MappingProxyType

import msgspec

from core.drawing import Pen
from core.output.paper_pens import PAPER_PENS


class Layer(msgspec.Struct, frozen=True):
    """A layer: its name, its colour's index number, and what its lines look like on paper.

    `weight` is the line's width in hundredths of a mm, `dash` as the paper pen has it.
    """

    name: str
    colour: int
    weight: int
    dash: tuple[float, ...]


# Colour index numbers as the DXF reference lists them (1 red to 6 magenta, 7 the pen's own
# contrast, 8 and 9 greys, 30 orange, 40 ochre, 140 to 150 blues); from memory.
_NAMED = {
    Pen.ROOF: ("ROOF", 7),
    Pen.ABOVE_ROOF: ("ABOVE-ROOF", 8),
    Pen.FLOOR: ("FLOOR", 7),
    Pen.SOLE_PLATE: ("SOLE-PLATE", 32),
    Pen.TOP_PLATE: ("TOP-PLATE", 34),
    Pen.STUD: ("STUD", 40),
    Pen.KING: ("KING-STUD", 42),
    Pen.TRIMMER: ("TRIMMER", 44),
    Pen.HEADER: ("HEADER", 30),
    Pen.SILL: ("SILL", 52),
    Pen.CRIPPLE: ("CRIPPLE", 54),
    Pen.BLOCKING: ("BLOCKING", 56),
    Pen.BACKING: ("BACKING", 36),
    Pen.RAFTER: ("RAFTER", 9),
    Pen.BLOCK: ("BLOCK", 56),
    Pen.PURLIN: ("PURLIN", 36),
    Pen.ROOF_TIMBER: ("ROOF-TIMBER", 42),
    Pen.EXISTING: ("EXISTING", 9),
    Pen.BEYOND: ("BEYOND", 8),
    Pen.HEADROOM: ("HEADROOM", 8),
    Pen.SEAM: ("RIDGE", 8),
    Pen.CEILING: ("CEILING", 9),
    Pen.STAIR: ("STAIR", 8),
    Pen.OPENING: ("OPENING", 3),
    Pen.KEPT_CLEAR: ("KEPT-CLEAR", 8),
    Pen.SWING: ("SWING", 8),
    Pen.UNBUILDABLE: ("UNBUILDABLE", 1),
    Pen.BOX: ("BOX", 6),
    Pen.FAR_BOX: ("BOX-FAR-FACE", 6),
    Pen.LABEL: ("LABEL", 7),
    Pen.LENGTH: ("LENGTH", 7),
    Pen.DIMENSION: ("DIMENSION", 4),
    Pen.TAPE: ("TAPE", 150),
    Pen.MARK: ("MARK", 140),
    Pen.TITLE: ("TITLE", 7),
    Pen.NOTE: ("NOTE", 9),
    Pen.RULE: ("RULE", 8),
    Pen.BORDER: ("BORDER", 7),
}


def _layer(pen: Pen, name: str, colour: int) -> Layer:
    paper = PAPER_PENS[pen]
    return Layer(name, colour, round(paper.width * 100), paper.dash)


LAYERS: Mapping[Pen, Layer] = MappingProxyType(
    {pen: _layer(pen, name, colour) for pen, (name, colour) in _NAMED.items()}
)
"""The layer of every pen."""
