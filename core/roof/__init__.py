"""Roof planes over the room, and the line that each wall has overhead."""

from core.roof.level import level_line
from core.roof.line import RoofLine, Segment, lowered, roof_line, underside
from core.roof.plane import Part, Plan, Plane, Roof
from core.roof.stated import ridge, roof_of

__all__ = [
    "Part",
    "Plan",
    "Plane",
    "Roof",
    "RoofLine",
    "Segment",
    "level_line",
    "lowered",
    "ridge",
    "roof_line",
    "roof_of",
    "underside",
]
