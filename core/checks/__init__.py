"""Cautions and nothing else."""

from core.checks.caution import Caution, Severity
from core.checks.roof_parts import clear_cautions, purlin_cautions, rafter_cautions
from core.checks.standing import standing_cautions
from core.checks.wall import fit_message, wall_cautions

__all__ = [
    "Caution",
    "Severity",
    "clear_cautions",
    "fit_message",
    "purlin_cautions",
    "rafter_cautions",
    "standing_cautions",
    "wall_cautions",
]
