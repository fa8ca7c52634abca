"""The colours of the window and of the sheet, by day and by night, pen by pen."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Self

from PySide6.QtGui import QColor

from core.drawing import Pen


@dataclass(frozen=True)
class Look:
    """How one pen looks: colour and weight (mm on paper) of its line, its fill, its dashes.

    `dash` holds the lengths of dash and gap in line widths; empty is a full line. What is written
    with the pen takes the colour `text`.
    """

    line: QColor
    weight: float
    fill: QColor
    text: QColor
    dash: tuple[float, ...] = ()


@dataclass(frozen=True)
class Theme:
    """Ink on paper, a few calm tones of timber, chalk for what can be held, one for warnings.

    `panel` lies around the paper, `faint` is ink for what matters less, `edge` is the line that
    parts things, `field` is what is typed into.
    """

    dark: bool
    paper: QColor
    panel: QColor
    field: QColor
    ink: QColor
    faint: QColor
    edge: QColor
    chalk: QColor
    warning: QColor
    looks: Mapping[Pen, Look]

    @classmethod
    def day(cls) -> Self:
        """Ink on warm paper."""
        return cls._of(
            dark=False,
            colours={
                "paper": "#f7f2e6",
                "panel": "#ece5d5",
                "field": "#fdfaf3",
                "ink": "#2a2724",
                "faint": "#6b6359",
                "edge": "#b9ad98",
                "chalk": "#1f66ad",
                "warning": "#b23a22",
                "stud": "#ecd6ab",
                "frame": "#ddbb84",
                "carrier": "#c99f68",
                "plate": "#d8c3a0",
                "tape": "#f6e9bd",
                "box": "#cfdbe4",
                "void": "#e6ddcb",
                "open": "#fcf9f1",
                "timber-line": "#5f4c33",
            },
        )

    @classmethod
    def night(cls) -> Self:
        """Pale ink on a dark sheet."""
        return cls._of(
            dark=True,
            colours={
                "paper": "#24221f",
                "panel": "#1b1a18",
                "field": "#2e2b27",
                "ink": "#ece4d4",
                "faint": "#a89e8e",
                "edge": "#544e45",
                "chalk": "#7db6ee",
                "warning": "#f08a6c",
                "stud": "#5c4a2f",
                "frame": "#6d5430",
                "carrier": "#7a5a30",
                "plate": "#4f4534",
                "tape": "#3b3521",
                "box": "#34434f",
                "void": "#1a1917",
                "open": "#2c2925",
                "timber-line": "#b59a6f",
            },
        )

    @classmethod
    def _of(cls, *, dark: bool, colours: Mapping[str, str]) -> Self:
        named = {name: QColor(text) for name, text in colours.items()}
        return cls(
            dark=dark,
            **{name: named[name] for name in _PLAIN},
            looks={pen: _look(row, named) for pen, row in _LOOKS.items()},
        )


_PLAIN = ("paper", "panel", "field", "ink", "faint", "edge", "chalk", "warning")

_Row = tuple[str, float, str, str, tuple[float, ...]]

_FULL: tuple[float, ...] = ()

# Line colour, weight (the drafting set 0.18, 0.25, 0.35, 0.50, 0.70), fill, text, dashes.
_LOOKS: Mapping[Pen, _Row] = {
    Pen.ROOF: ("ink", 0.70, "void", "ink", _FULL),
    Pen.ABOVE_ROOF: ("edge", 0.18, "void", "faint", _FULL),
    Pen.FLOOR: ("ink", 0.70, "void", "ink", _FULL),
    Pen.SOLE_PLATE: ("timber-line", 0.35, "plate", "ink", _FULL),
    Pen.TOP_PLATE: ("timber-line", 0.35, "plate", "ink", _FULL),
    Pen.STUD: ("timber-line", 0.35, "stud", "ink", _FULL),
    Pen.KING: ("timber-line", 0.35, "frame", "ink", _FULL),
    Pen.TRIMMER: ("timber-line", 0.35, "frame", "ink", _FULL),
    Pen.HEADER: ("timber-line", 0.35, "carrier", "ink", _FULL),
    Pen.SILL: ("timber-line", 0.35, "carrier", "ink", _FULL),
    Pen.CRIPPLE: ("timber-line", 0.35, "stud", "ink", _FULL),
    Pen.BLOCKING: ("timber-line", 0.35, "plate", "ink", _FULL),
    Pen.BACKING: ("timber-line", 0.35, "frame", "ink", _FULL),
    Pen.RAFTER: ("faint", 0.25, "void", "faint", _FULL),
    Pen.BLOCK: ("timber-line", 0.35, "stud", "ink", _FULL),
    Pen.PURLIN: ("ink", 0.50, "carrier", "ink", _FULL),
    Pen.ROOF_TIMBER: ("timber-line", 0.25, "stud", "ink", _FULL),
    Pen.EXISTING: ("faint", 0.35, "void", "ink", _FULL),
    Pen.BEYOND: ("edge", 0.18, "open", "faint", _FULL),
    Pen.HEADROOM: ("faint", 0.25, "paper", "faint", (6.0, 3.0)),
    Pen.SEAM: ("faint", 0.25, "paper", "faint", (18.0, 4.0, 4.0, 4.0)),
    Pen.CEILING: ("edge", 0.25, "paper", "faint", (3.0, 3.0)),
    Pen.STAIR: ("ink", 0.25, "void", "ink", _FULL),
    Pen.OPENING: ("ink", 0.50, "open", "ink", _FULL),
    Pen.KEPT_CLEAR: ("faint", 0.35, "open", "faint", (6.0, 3.0)),
    Pen.UNBUILDABLE: ("warning", 0.50, "warning", "warning", (4.0, 2.0)),
    Pen.SWING: ("faint", 0.18, "open", "faint", _FULL),
    Pen.BOX: ("ink", 0.35, "box", "ink", _FULL),
    Pen.FAR_BOX: ("faint", 0.25, "box", "faint", (3.0, 2.0)),
    Pen.LABEL: ("faint", 0.18, "paper", "ink", _FULL),
    Pen.LENGTH: ("ink", 0.18, "paper", "ink", _FULL),
    Pen.DIMENSION: ("faint", 0.18, "paper", "ink", _FULL),
    Pen.TAPE: ("faint", 0.18, "tape", "ink", _FULL),
    Pen.MARK: ("ink", 0.25, "paper", "ink", _FULL),
    Pen.TITLE: ("ink", 0.25, "paper", "ink", _FULL),
    Pen.NOTE: ("faint", 0.18, "paper", "faint", _FULL),
    Pen.RULE: ("edge", 0.18, "paper", "faint", _FULL),
    Pen.BORDER: ("ink", 0.70, "paper", "ink", _FULL),
}


def _look(row: _Row, named: Mapping[str, QColor]) -> Look:
    line, weight, fill, text, dash = row
    tone = QColor(named[fill])
    if fill == "warning":
        # Light enough that what stands behind can still be read.
        tone.setAlphaF(0.14)
    return Look(named[line], weight, tone, named[text], dash)
