"""The framing of a wall: layout, members with their end cuts, openings, plates, marks, labels."""

from core.framing.backing import Unbacked
from core.framing.bending import topside, underside
from core.framing.board_edges import BoardEdge, board_edges
from core.framing.boxes import PlacedBox, place_boxes
from core.framing.cut_end import CutEnd, cut_ends
from core.framing.cutting_order import cutting_order, saw_settings
from core.framing.fit import Fit, fit
from core.framing.fitted import Tried, reaches_plates
from core.framing.frame import Frame, frame_wall
from core.framing.given import Given
from core.framing.header_build import header_depth, spacers, thickest_spacer
from core.framing.heads import header_rise, rake_at
from core.framing.keys import spoken
from core.framing.labels import labels
from core.framing.layout import layout_lefts, wanted_left
from core.framing.leaning import Lean, reached
from core.framing.lining_up import origin_in_line
from core.framing.marks import Mark, marks
from core.framing.meeting import (
    Footprint,
    Meeting,
    existing_footprint,
    existing_footprints,
    footprints,
    meetings,
    stair_footprint,
    standing_in,
)
from core.framing.member import SQUARE_WITHIN, Facet, Member, Notch, Rip, Role
from core.framing.nailed import Nailed, Surroundings
from core.framing.on_rafters import frame_on_rafters, rafter_marks
from core.framing.openings import lowest_sill
from core.framing.over_marks import over_marks
from core.framing.passing import Clash, Passed, pass_purlins
from core.framing.placed import PlacedOpening
from core.framing.plate_pieces import in_pieces
from core.framing.plate_section import Edge, PlateSection
from core.framing.rafters import Between, Crossing, OverPlate, Rafters, rafter_places
from core.framing.reasons import BareMark, Why, bare_marks
from core.framing.saw import Setting, Way, past_stops, rip_setting, saw_setting
from core.framing.working import Line, Printed, Term, Unit, Working, degrees, printed
from core.framing.working_cuts import cut_workings, setting_workings
from core.framing.working_lengths import Which, length_working, rip_workings
from core.framing.working_notches import notch_workings
from core.framing.working_openings import (
    box_workings,
    fit_workings,
    rough_opening_workings,
)
from core.framing.working_places import mark_workings

__all__ = [
    "SQUARE_WITHIN",
    "BareMark",
    "Between",
    "BoardEdge",
    "Clash",
    "Crossing",
    "CutEnd",
    "Edge",
    "Facet",
    "Fit",
    "Footprint",
    "Frame",
    "Given",
    "Lean",
    "Line",
    "Mark",
    "Meeting",
    "Member",
    "Nailed",
    "Notch",
    "OverPlate",
    "Passed",
    "PlacedBox",
    "PlacedOpening",
    "PlateSection",
    "Printed",
    "Rafters",
    "Rip",
    "Role",
    "Setting",
    "Surroundings",
    "Term",
    "Tried",
    "Unbacked",
    "Unit",
    "Way",
    "Which",
    "Why",
    "Working",
    "bare_marks",
    "board_edges",
    "box_workings",
    "cut_ends",
    "cut_workings",
    "cutting_order",
    "degrees",
    "existing_footprint",
    "existing_footprints",
    "fit",
    "fit_workings",
    "footprints",
    "frame_on_rafters",
    "frame_wall",
    "header_depth",
    "header_rise",
    "in_pieces",
    "labels",
    "layout_lefts",
    "length_working",
    "lowest_sill",
    "mark_workings",
    "marks",
    "meetings",
    "notch_workings",
    "origin_in_line",
    "over_marks",
    "pass_purlins",
    "past_stops",
    "place_boxes",
    "printed",
    "rafter_marks",
    "rafter_places",
    "rake_at",
    "reached",
    "reaches_plates",
    "rip_setting",
    "rip_workings",
    "rough_opening_workings",
    "saw_setting",
    "saw_settings",
    "setting_workings",
    "spacers",
    "spoken",
    "stair_footprint",
    "standing_in",
    "thickest_spacer",
    "topside",
    "underside",
    "wanted_left",
]
