"""Roof planes over the room, and the line that each wall has overhead."""

from core.roof.below import below
from core.roof.line import RoofLine, Segment, lowered, roof_line, underside
from core.roof.parts import stands_in_wing
from core.roof.plane import Part, Plan, Plane, Roof
from core.roof.purlins import Crossing, crossings, inside_purlin
from core.roof.stated import rafters_of, ridge, roof_of

__all__ = [
    "Crossing",
    "Part",
    "Plan",
    "Plane",
    "Roof",
    "RoofLine",
    "Segment",
    "below",
    "crossings",
    "inside_purlin",
    "lowered",
    "rafters_of",
    "ridge",
    "roof_line",
    "roof_of",
    "stands_in_wing",
    "underside",
]
