"""Getting a wall up: its swing under the roof, the floor it needs, its weight, its nails."""

from core.site.floor import Floor
from core.site.nails import NailLine, Source, is_spaced, nails
from core.site.panels import Panel
from core.site.raising import GoingUp, Step, StepKind, Way, going_up
from core.site.surroundings import Surroundings
from core.site.swing import Laid, Place, Swing, path
from core.site.telling import conditions, gaps, in_turn, order, turn_of, verdict, weighed
from core.site.turns import Turn, turns
from core.site.weight import Weights, density, weight, weights

__all__ = [
    "Floor",
    "GoingUp",
    "Laid",
    "NailLine",
    "Panel",
    "Place",
    "Source",
    "Step",
    "StepKind",
    "Surroundings",
    "Swing",
    "Turn",
    "Way",
    "Weights",
    "conditions",
    "density",
    "gaps",
    "going_up",
    "in_turn",
    "is_spaced",
    "nails",
    "order",
    "path",
    "turn_of",
    "turns",
    "verdict",
    "weighed",
    "weight",
    "weights",
]
