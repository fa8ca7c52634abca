"""What the person states: frozen values, no results, nothing derived."""

from core.model.habits import Habits, Letters, LineEdge
from core.model.plates import PlateJoint, PlateRules
from core.model.project import Project, next_letter
from core.model.room import Point, Rafter, RidgeBeam, Room, Slope
from core.model.saw import USUAL_SAW, Saw
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
    PlateLie,
    Side,
    TopPlate,
    Wall,
)

__all__ = [
    "USUAL_SAW",
    "AddedStud",
    "Box",
    "BoxHeight",
    "Habits",
    "Header",
    "HeaderKind",
    "Layout",
    "Letters",
    "LineEdge",
    "MovedStud",
    "Opening",
    "OpeningKind",
    "PlateJoint",
    "PlateLie",
    "PlateRules",
    "Point",
    "PrintedLabel",
    "Project",
    "Rafter",
    "RidgeBeam",
    "Room",
    "Saw",
    "Side",
    "SiteRecord",
    "Slope",
    "Timber",
    "TopPlate",
    "Wall",
    "next_letter",
]
