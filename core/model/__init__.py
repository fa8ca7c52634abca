"""What the person states: frozen values, no results, nothing derived."""

from core.model.habits import Habits, Letters, LineEdge
from core.model.project import Project, next_letter
from core.model.roof_parts import (
    ClearKind,
    Dormer,
    DormerKind,
    KeptClear,
    Passing,
    PitchBreak,
    Purlin,
    Slope,
    Wing,
)
from core.model.room import Point, Rafter, RidgeBeam, Room
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
    StandsOn,
    TopPlate,
    Wall,
)

__all__ = [
    "AddedStud",
    "Box",
    "BoxHeight",
    "ClearKind",
    "Dormer",
    "DormerKind",
    "Habits",
    "Header",
    "HeaderKind",
    "KeptClear",
    "Layout",
    "Letters",
    "LineEdge",
    "MovedStud",
    "Opening",
    "OpeningKind",
    "Passing",
    "PitchBreak",
    "Point",
    "PrintedLabel",
    "Project",
    "Purlin",
    "Rafter",
    "RidgeBeam",
    "Room",
    "Side",
    "SiteRecord",
    "Slope",
    "StandsOn",
    "Timber",
    "TopPlate",
    "Wall",
    "Wing",
    "next_letter",
]
