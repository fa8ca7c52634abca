"""The framing of a wall: layout, members with their end cuts, openings, plates, marks, labels."""

from core.framing.bending import topside, underside
from core.framing.boxes import PlacedBox, place_boxes
from core.framing.fit import Fit, fit, header_rise
from core.framing.fitted import Tried, reaches_plates
from core.framing.frame import Frame, PlacedOpening, frame_wall
from core.framing.keys import spoken
from core.framing.labels import labels
from core.framing.layout import layout_lefts, wanted_left
from core.framing.marks import Mark, marks
from core.framing.member import SQUARE_WITHIN, Facet, Member, Role
from core.framing.openings import lowest_sill

__all__ = [
    "SQUARE_WITHIN",
    "Facet",
    "Fit",
    "Frame",
    "Mark",
    "Member",
    "PlacedBox",
    "PlacedOpening",
    "Role",
    "Tried",
    "fit",
    "frame_wall",
    "header_rise",
    "labels",
    "layout_lefts",
    "lowest_sill",
    "marks",
    "place_boxes",
    "reaches_plates",
    "spoken",
    "topside",
    "underside",
    "wanted_left",
]
