"""The framing of a wall: layout, members with their end cuts, openings, plates, marks, labels."""

from core.framing.board_edges import BoardEdge, board_edges
from core.framing.boxes import PlacedBox, place_boxes
from core.framing.fit import Fit, fit, header_rise
from core.framing.frame import Frame, PlacedOpening, frame_wall
from core.framing.header_build import header_depth, spacers, thickest_spacer
from core.framing.keys import spoken
from core.framing.labels import labels
from core.framing.layout import layout_lefts, wanted_left
from core.framing.lining_up import origin_in_line
from core.framing.marks import Mark, marks
from core.framing.member import Facet, Member, Role
from core.framing.openings import lowest_sill
from core.framing.reasons import BareMark, Why, bare_marks

__all__ = [
    "BareMark",
    "BoardEdge",
    "Facet",
    "Fit",
    "Frame",
    "Mark",
    "Member",
    "PlacedBox",
    "PlacedOpening",
    "Role",
    "Why",
    "bare_marks",
    "board_edges",
    "fit",
    "frame_wall",
    "header_depth",
    "header_rise",
    "labels",
    "layout_lefts",
    "lowest_sill",
    "marks",
    "origin_in_line",
    "place_boxes",
    "spacers",
    "spoken",
    "thickest_spacer",
    "wanted_left",
]
