"""Adding and setting kept-clear zones; refused outside the wall, with what would be inside."""

from typing import Any

import msgspec

from core.framing import spoken
from core.framing.layout import CLEAR
from core.model import ClearZone, Project
from core.wording import Mm, message
from gui.edits import usual
from gui.edits.refusal import Refusal
from gui.edits.sense import check_wall
from gui.edits.stating import next_id


def new_zone(project: Project, letter: str) -> ClearZone:
    """A zone of usual size in the middle of the wall, not yet in it."""
    wall = project.wall(letter)
    return usual.zone(project.system, next_id(wall, "kept-clear"), wall)


def add_zone(project: Project, letter: str, zone: ClearZone | None = None) -> Project:
    """The wall with one more kept-clear zone: this one, or one of usual size in its middle."""
    wall = project.wall(letter)
    zone = zone or new_zone(project, letter)
    return _with(project, letter, (*wall.kept_clear, zone), zone)


def set_zone(project: Project, letter: str, zone_id: str, **changes: Any) -> Project:
    """The zone with some of its fields changed; refused where it leaves the wall."""
    zones = project.wall(letter).kept_clear
    zone = msgspec.structs.replace(next(z for z in zones if z.id == zone_id), **changes)
    return _with(project, letter, tuple(zone if z.id == zone_id else z for z in zones), zone)


def _with(project: Project, letter: str, zones: tuple[ClearZone, ...], zone: ClearZone) -> Project:
    wall = project.wall(letter)
    last = wall.run - zone.width.mm
    if zone.left.mm < -CLEAR or zone.left.mm > last + CLEAR:
        nearest = Mm(min(max(zone.left.mm, 0.0), max(last, 0.0)))
        name, left = spoken(zone.id), Mm(zone.left.mm)
        raise Refusal(message("zone.outside", zone=name, left=left, nearest=nearest))
    changed = project.with_wall(msgspec.structs.replace(wall, kept_clear=zones))
    return check_wall(changed, letter)
