"""What the person states: frozen values, no results, nothing derived."""

from core.model.answers import FloorSeen, RoofBuilt
from core.model.end_lean import EndLean, EndStud
from core.model.floor import ExistingWall, StairOpening
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
from core.model.plates import PlateJoint, PlateRules
from core.model.point import Point
from core.model.project import Project, next_letter
from core.model.roof_parts import (
    ClearKind,
    Dormer,
    DormerKind,
    KeptClear,
    PassesPurlin,
    Passing,
    PitchBreak,
    Purlin,
    Slope,
    Wing,
)
from core.model.room import Rafter, RidgeBeam, Room
from core.model.rules import DoubledStud, Near, WallRules, usual_board
from core.model.saw import USUAL_SAW, Saw
from core.model.side import Side
from core.model.site import (
    BoxMade,
    CutPiece,
    MarkMade,
    PieceMade,
    PrintedLabel,
    PrintedWall,
    SiteRecord,
)
from core.model.timber import Timber
from core.model.trade_words import TradeWords
from core.model.wall import (
    AddedStud,
    Box,
    BoxHeight,
    Header,
    HeaderKind,
    HeadLie,
    Layout,
    MovedStud,
    Opening,
    OpeningKind,
    PlateLie,
    StandsOn,
    TopPlate,
    Wall,
)
from core.model.zone import ClearZone

__all__ = [
    "USUAL_SAW",
    "AddedStud",
    "Blocking",
    "Box",
    "BoxHeight",
    "BoxMade",
    "ClearKind",
    "ClearZone",
    "CutPiece",
    "Dormer",
    "DormerKind",
    "DoubledStud",
    "EndLean",
    "EndStud",
    "ExistingWall",
    "Fixture",
    "FixtureKind",
    "FloorSeen",
    "Habits",
    "Hanging",
    "HeadLie",
    "Header",
    "HeaderKind",
    "Joint",
    "KeptClear",
    "Layout",
    "Leaf",
    "Letters",
    "LineEdge",
    "MarkMade",
    "MeasuredStud",
    "MeetingKind",
    "MovedStud",
    "Nailing",
    "Near",
    "Opening",
    "OpeningKind",
    "PassesPurlin",
    "Passing",
    "PieceMade",
    "PitchBreak",
    "PlateJoint",
    "PlateLie",
    "PlateRules",
    "Point",
    "PrintedLabel",
    "PrintedWall",
    "Project",
    "Purlin",
    "Rafter",
    "RafterBacking",
    "RidgeBeam",
    "RoofBuilt",
    "Room",
    "Saw",
    "Side",
    "SiteRecord",
    "Slope",
    "Species",
    "StairOpening",
    "StandsOn",
    "Station",
    "Swing",
    "Timber",
    "TopPlate",
    "TradeWords",
    "Wall",
    "WallFace",
    "WallRules",
    "Wing",
    "next_letter",
    "usual_board",
]
