"""Roof planes over the room, and the line that each wall has overhead."""

from core.roof.line import RoofLine, Segment, lowered, roof_line, underside
from core.roof.measured import corrected, differences, floor_line, roof_heights
from core.roof.plane import Part, Plan, Plane, Roof
from core.roof.stated import ridge, roof_of
from core.roof.survey import BestFit, Reading, Survey, survey

__all__ = [
    "BestFit",
    "Part",
    "Plan",
    "Plane",
    "Reading",
    "Roof",
    "RoofLine",
    "Segment",
    "Survey",
    "corrected",
    "differences",
    "floor_line",
    "lowered",
    "ridge",
    "roof_heights",
    "roof_line",
    "roof_of",
    "survey",
    "underside",
]
