"""What the person states: frozen values, no results, nothing derived."""

from core.model.habits import Habits, Letters, LineEdge
from core.model.leaf import Hanging, Leaf, Swing
from core.model.lifting import Joint, Nailing, Species
from core.model.measured import MeasuredStud, Station
from core.model.nailed import (
    Blocking,
    Fixture,
    FixtureKind,
    MeetingKind,
    RafterBacking,
    WallFace,
)
from core.model.project import Project, next_letter
from core.model.room import Point, Rafter, RidgeBeam, Room, Slope
from core.model.rules import DoubledStud, Near, WallRules, usual_board
from core.model.side import Side
from core.model.site import PrintedLabel, SiteRecord
from core.model.timber import Timber
from core.model.wall import (
    AddedStud,
    Box,
    BoxHeight,
    Header,
    HeaderKind,
    Layout,
    MovedStud,
    Opening,
    OpeningKind,
    TopPlate,
    Wall,
)

__all__ = [
    "AddedStud",
    "Blocking",
    "Box",
    "BoxHeight",
    "DoubledStud",
    "Fixture",
    "FixtureKind",
    "Habits",
    "Hanging",
    "Header",
    "HeaderKind",
    "Joint",
    "Layout",
    "Leaf",
    "Letters",
    "LineEdge",
    "MeasuredStud",
    "MeetingKind",
    "MovedStud",
    "Nailing",
    "Near",
    "Opening",
    "OpeningKind",
    "Point",
    "PrintedLabel",
    "Project",
    "Rafter",
    "RafterBacking",
    "RidgeBeam",
    "Room",
    "Side",
    "SiteRecord",
    "Slope",
    "Species",
    "Station",
    "Swing",
    "Timber",
    "TopPlate",
    "Wall",
    "WallFace",
    "WallRules",
    "next_letter",
    "usual_board",
]
