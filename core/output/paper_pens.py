"""What each pen looks like on paper: line width, grey, dashes, and the tone of a surface.

Widths are those of the National CAD Standard, as quoted in the course notes of Cornell Architecture
367: fine 0.18, thin 0.25, medium 0.35, wide 0.50, extra wide 0.70 mm. Everything is told apart by
weight, dash or lettering too, so that a photocopy loses nothing.
"""

from collections.abc import Mapping
from types import MappingProxyType

import msgspec

from core.drawing import Pen

FINE, THIN, MEDIUM, WIDE, EXTRA_WIDE = 0.18, 0.25, 0.35, 0.50, 0.70


class PaperPen(msgspec.Struct, frozen=True):
    """A pen on paper: line `width` in mm, `grey` of lines and letters, `fill` of surfaces.

    Greys run from 0 (black) to 1 (white); `dash` is mm drawn and mm left out, () for unbroken.
    """

    width: float
    fill: float
    grey: float = 0.0
    dash: tuple[float, ...] = ()


PAPER_PENS: Mapping[Pen, PaperPen] = MappingProxyType(
    {
        Pen.ROOF: PaperPen(EXTRA_WIDE, 0.94),
        Pen.ABOVE_ROOF: PaperPen(FINE, 0.94, grey=0.3),
        Pen.FLOOR: PaperPen(EXTRA_WIDE, 0.94),
        # Timber: each its own tone, pale enough for figures, dark enough for a photocopy.
        Pen.STUD: PaperPen(MEDIUM, 0.92),
        Pen.CRIPPLE: PaperPen(MEDIUM, 0.895),
        Pen.TRIMMER: PaperPen(MEDIUM, 0.87),
        Pen.SILL: PaperPen(MEDIUM, 0.845),
        Pen.KING: PaperPen(MEDIUM, 0.82),
        Pen.HEADER: PaperPen(MEDIUM, 0.795),
        Pen.TOP_PLATE: PaperPen(MEDIUM, 0.77),
        Pen.SOLE_PLATE: PaperPen(MEDIUM, 0.745),
        Pen.BLOCKING: PaperPen(MEDIUM, 0.8825),
        Pen.BACKING: PaperPen(MEDIUM, 0.8575),
        Pen.RAFTER: PaperPen(THIN, 0.97, grey=0.3),
        Pen.BLOCK: PaperPen(MEDIUM, 0.72),
        Pen.PURLIN: PaperPen(WIDE, 0.72),
        Pen.ROOF_TIMBER: PaperPen(MEDIUM, 0.94),
        Pen.EXISTING: PaperPen(MEDIUM, 0.69),
        Pen.BEYOND: PaperPen(FINE, 0.98, grey=0.3),
        Pen.HEADROOM: PaperPen(THIN, 1.0, dash=(3.0, 1.5)),
        # In plan: the ridge in long and short dashes.
        Pen.SEAM: PaperPen(THIN, 1.0, grey=0.3, dash=(6.0, 1.2, 1.2, 1.2)),
        Pen.CEILING: PaperPen(FINE, 1.0, grey=0.3, dash=(1.0, 1.0)),
        Pen.STAIR: PaperPen(MEDIUM, 1.0),
        Pen.OPENING: PaperPen(WIDE, 1.0),
        Pen.KEPT_CLEAR: PaperPen(THIN, 1.0, grey=0.3, dash=(4.0, 1.2)),
        Pen.SWING: PaperPen(FINE, 1.0, grey=0.3),
        Pen.UNBUILDABLE: PaperPen(EXTRA_WIDE, 0.96, dash=(3.0, 1.5)),
        Pen.BOX: PaperPen(MEDIUM, 1.0),
        Pen.FAR_BOX: PaperPen(THIN, 1.0, grey=0.3, dash=(1.2, 0.8)),
        Pen.LABEL: PaperPen(THIN, 1.0),
        Pen.LENGTH: PaperPen(THIN, 1.0),
        Pen.DIMENSION: PaperPen(FINE, 1.0),
        Pen.TAPE: PaperPen(FINE, 0.97),
        Pen.MARK: PaperPen(THIN, 1.0),
        Pen.TITLE: PaperPen(MEDIUM, 0.96),
        Pen.NOTE: PaperPen(THIN, 0.96),
        Pen.RULE: PaperPen(FINE, 0.96),
        Pen.BORDER: PaperPen(EXTRA_WIDE, 1.0),
    }
)
"""How every pen looks on paper."""
