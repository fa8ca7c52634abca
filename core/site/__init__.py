"""Getting a wall up: its swing under the roof, the floor it needs, its weight, its nails."""

from core.site.floor import Floor
from core.site.nails import NailLine, Source, nails
from core.site.panels import Panel
from core.site.raising import GoingUp, Step, StepKind, Way, going_up
from core.site.surroundings import Surroundings
from core.site.swing import Laid, Place, Swing, path
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
    "Way",
    "Weights",
    "density",
    "going_up",
    "nails",
    "path",
    "weight",
    "weights",
]
