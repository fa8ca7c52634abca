"""The framing of a wall: layout, members with their end cuts, openings, plates, marks, labels."""

from core.framing.boxes import PlacedBox, place_boxes
from core.framing.fit import Fit, fit, header_rise
from core.framing.frame import Frame, PlacedOpening, frame_wall
from core.framing.keys import spoken
from core.framing.labels import labels
from core.framing.layout import layout_lefts, wanted_left
from core.framing.marks import Mark, marks
from core.framing.member import Facet, Member, Rip, Role
from core.framing.openings import lowest_sill
from core.framing.plate_section import Edge, PlateSection
from core.framing.saw import Setting, Way, past_stops, rip_setting, saw_setting

__all__ = [
    "Edge",
    "Facet",
    "Fit",
    "Frame",
    "Mark",
    "Member",
    "PlacedBox",
    "PlacedOpening",
    "PlateSection",
    "Rip",
    "Role",
    "Setting",
    "Way",
    "fit",
    "frame_wall",
    "header_rise",
    "labels",
    "layout_lefts",
    "lowest_sill",
    "marks",
    "past_stops",
    "place_boxes",
    "rip_setting",
    "saw_setting",
    "spoken",
    "wanted_left",
]
