"""The framing of a wall: layout, members with their end cuts, openings, plates, marks, labels."""

from core.framing.boxes import PlacedBox, place_boxes
from core.framing.fit import Fit, fit, header_rise
from core.framing.frame import Frame, PlacedOpening, frame_wall
from core.framing.keys import spoken
from core.framing.labels import labels
from core.framing.layout import layout_lefts, wanted_left
from core.framing.marks import Mark, marks
from core.framing.member import Facet, Member, Role
from core.framing.on_rafters import frame_on_rafters, rafter_marks
from core.framing.openings import lowest_sill
from core.framing.passing import Clash, Passed, pass_purlins

__all__ = [
    "Clash",
    "Facet",
    "Fit",
    "Frame",
    "Mark",
    "Member",
    "Passed",
    "PlacedBox",
    "PlacedOpening",
    "Role",
    "fit",
    "frame_on_rafters",
    "frame_wall",
    "header_rise",
    "labels",
    "layout_lefts",
    "lowest_sill",
    "marks",
    "pass_purlins",
    "place_boxes",
    "rafter_marks",
    "spoken",
    "wanted_left",
]
