"""Roof planes over the room, and the line that each wall has overhead."""

from core.roof.below import below
from core.roof.beneath import measured_beneath
from core.roof.level import level_line
from core.roof.line import RoofLine, Segment, lowered, roof_line, underside
from core.roof.measured import corrected, differences, floor_line, roof_heights
from core.roof.naming import over_place
from core.roof.parts import stands_in_wing
from core.roof.plane import Part, Plan, Plane, Roof
from core.roof.purlins import (
    PurlinThrough,
    as_passed,
    inside_purlin,
    purlin_across,
    purlin_ends,
    purlin_outline,
    purlins_met,
    purlins_through,
)
from core.roof.seams import contour, seams
from core.roof.section import Rise, RoomSection, section_of
from core.roof.stated import rafters_of, ridge, roof_of, roof_to
from core.roof.survey import BestFit, Reading, Survey, survey

__all__ = [
    "BestFit",
    "Part",
    "Plan",
    "Plane",
    "PurlinThrough",
    "Reading",
    "Rise",
    "Roof",
    "RoofLine",
    "RoomSection",
    "Segment",
    "Survey",
    "as_passed",
    "below",
    "contour",
    "corrected",
    "differences",
    "floor_line",
    "inside_purlin",
    "level_line",
    "lowered",
    "measured_beneath",
    "over_place",
    "purlin_across",
    "purlin_ends",
    "purlin_outline",
    "purlins_met",
    "purlins_through",
    "rafters_of",
    "ridge",
    "roof_heights",
    "roof_line",
    "roof_of",
    "roof_to",
    "seams",
    "section_of",
    "stands_in_wing",
    "survey",
    "underside",
]
