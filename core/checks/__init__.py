"""Cautions and nothing else."""

from core.checks.caution import Caution, Severity
from core.checks.clear import clear_cautions
from core.checks.floor import floor_cautions
from core.checks.layout import bare_messages
from core.checks.measured import measured_cautions
from core.checks.nailed import nailed_cautions
from core.checks.on_rafters import rafter_cautions
from core.checks.purlins import percent_taken, purlin_cautions
from core.checks.saw import cut_message, rip_message, setting_message
from core.checks.standing import answered_cautions, standing_cautions
from core.checks.wall import fit_message, range_message, wall_cautions
from core.checks.zones import zone_cautions, zone_rect

__all__ = [
    "Caution",
    "Severity",
    "answered_cautions",
    "bare_messages",
    "clear_cautions",
    "cut_message",
    "fit_message",
    "floor_cautions",
    "measured_cautions",
    "nailed_cautions",
    "percent_taken",
    "purlin_cautions",
    "rafter_cautions",
    "range_message",
    "rip_message",
    "setting_message",
    "standing_cautions",
    "wall_cautions",
    "zone_cautions",
    "zone_rect",
]
