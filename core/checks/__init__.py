"""Cautions and nothing else."""

from core.checks.caution import Caution, Severity
from core.checks.saw import cut_message, rip_message, setting_message
from core.checks.standing import standing_cautions
from core.checks.wall import fit_message, wall_cautions

__all__ = [
    "Caution",
    "Severity",
    "cut_message",
    "fit_message",
    "rip_message",
    "setting_message",
    "standing_cautions",
    "wall_cautions",
]
