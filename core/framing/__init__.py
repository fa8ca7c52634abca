"""The framing of a wall: layout, members with their end cuts, openings, plates, marks, labels."""

from core.framing.backing import Unbacked
from core.framing.bending import topside, underside
from core.framing.board_edges import BoardEdge, board_edges
from core.framing.boxes import PlacedBox, place_boxes
from core.framing.cutting_order import cutting_order, saw_settings
from core.framing.fit import Fit, fit, header_rise
from core.framing.fitted import Tried, reaches_plates
from core.framing.frame import Frame, PlacedOpening, frame_wall
from core.framing.header_build import header_depth, spacers, thickest_spacer
from core.framing.keys import spoken
from core.framing.labels import labels
from core.framing.layout import layout_lefts, wanted_left
from core.framing.lining_up import origin_in_line
from core.framing.marks import Mark, marks
from core.framing.meeting import Footprint, Meeting, footprints, meetings
from core.framing.member import SQUARE_WITHIN, Facet, Member, Rip, Role
from core.framing.nailed import Nailed, Surroundings
from core.framing.on_rafters import frame_on_rafters, rafter_marks
from core.framing.openings import lowest_sill
from core.framing.passing import Clash, Passed, pass_purlins
from core.framing.plate_pieces import in_pieces
from core.framing.plate_section import Edge, PlateSection
from core.framing.rafters import Between, Crossing, OverPlate, Rafters, rafter_places
from core.framing.reasons import BareMark, Why, bare_marks
from core.framing.saw import Setting, Way, past_stops, rip_setting, saw_setting

__all__ = [
    "SQUARE_WITHIN",
    "BareMark",
    "Between",
    "BoardEdge",
    "Clash",
    "Crossing",
    "Edge",
    "Facet",
    "Fit",
    "Footprint",
    "Frame",
    "Mark",
    "Meeting",
    "Member",
    "Nailed",
    "OverPlate",
    "Passed",
    "PlacedBox",
    "PlacedOpening",
    "PlateSection",
    "Rafters",
    "Rip",
    "Role",
    "Setting",
    "Surroundings",
    "Tried",
    "Unbacked",
    "Way",
    "Why",
    "bare_marks",
    "board_edges",
    "cutting_order",
    "fit",
    "footprints",
    "frame_on_rafters",
    "frame_wall",
    "header_depth",
    "header_rise",
    "in_pieces",
    "labels",
    "layout_lefts",
    "lowest_sill",
    "marks",
    "meetings",
    "origin_in_line",
    "pass_purlins",
    "past_stops",
    "place_boxes",
    "rafter_marks",
    "rafter_places",
    "reaches_plates",
    "rip_setting",
    "saw_setting",
    "saw_settings",
    "spacers",
    "spoken",
    "thickest_spacer",
    "topside",
    "underside",
    "wanted_left",
]
