"""What new parts of a roof start out as; the person sets them from there."""

import msgspec

from core.lengths import Length, Pitch, System, parse_pitch
from core.model import (
    ClearKind,
    Dormer,
    DormerKind,
    ExistingWall,
    KeptClear,
    Passing,
    PitchBreak,
    Project,
    Purlin,
    Room,
    Side,
    Slope,
    StairOpening,
    Timber,
    Wing,
)
from core.roof import roof_of
from gui.edits import usual
from gui.edits.floor import part_id, usual_existing, usual_stair
from gui.edits.stating import stated

Part = PitchBreak | Dormer | Wing | Purlin | KeptClear | StairOpening | ExistingWall
"""What stands in one of the lists of a roof."""


def part(project: Project, where: tuple[str, ...]) -> Part:
    """A new part for the list at this path of the room, of usual size and in a likely place."""
    match where:
        case ("dormers",):
            return _dormer(project)
        case ("wings",):
            return _wing(project)
        case ("purlins",):
            return _purlin(project)
        case ("kept_clear",):
            return _chimney(project)
        case ("stair_openings",):
            return usual_stair(project)
        case ("existing_walls",):
            return usual_existing(project)
    slope: Slope = getattr(project.room, where[0])
    return _break(project, slope)


def hip(project: Project) -> Slope:
    """A hip end like the slope there is on the left, or on the right."""
    return _plain(_slope(project.room)[1])


def _dormer(project: Project) -> Dormer:
    side, room = _slope(project.room)[0], project.room
    start, width = _shown(project, room.length.mm / 3), _shown(project, room.length.mm / 3)
    face, height = _text(project, "24 in", "600 mm"), _text(project, "84 in", "2100 mm")
    front, pitch = usual.stud(project.system).width, _pitch(project, "3 in 12", "15°")
    name, kind = part_id(room, "dormer"), DormerKind.SHED
    return Dormer(name, kind, side, start, width, face, front, height, pitch)


def _wing(project: Project) -> Wing:
    room = project.room
    side, slope = _slope(room)
    start, width = _shown(project, room.length.mm / 4), _shown(project, room.length.mm / 2)
    reach = _text(project, "10'", "3 m")
    plain = _plain(slope)
    return Wing(part_id(room, "wing"), side, start, width, reach, plain, plain)


def _purlin(project: Project) -> Purlin:
    """A purlin a quarter of the way across, hanging under the rafters there."""
    room = project.room
    timber = Timber(_text(project, "3 in", "75 mm"), _text(project, "7 in", "175 mm"))
    left = _shown(project, room.width.mm / 4)
    at = roof_of(room).height((left.mm, room.length.mm / 2))
    lowest = project.habits.tape.step_mm
    under = _shown(project, max(at - timber.width.mm, lowest))
    gap = _text(project, "1/4 in", "5 mm")
    return Purlin(part_id(room, "purlin"), left, timber, under, Passing.THROUGH, gap)


def _chimney(project: Project) -> KeptClear:
    """A chimney of common size in the middle of the room, and 2 in. (50 mm) clear of it.

    The clearance is from memory: the person confirms it with the local code.
    """
    room = project.room
    across, along = (_shown(project, side.mm / 2) for side in (room.width, room.length))
    size, gap = _text(project, "24 in", "600 mm"), _text(project, "2 in", "50 mm")
    name = part_id(room, "chimney")
    return KeptClear(name, ClearKind.CHIMNEY, across, along, size, size, gap)


def _break(project: Project, slope: Slope) -> PitchBreak:
    """A change to a lesser pitch a little farther in than the last one: a gambrel."""
    last = slope.breaks[-1].run.mm if slope.breaks else 0.0
    run = _shown(project, last + project.room.width.mm / 8)
    return PitchBreak(run, _pitch(project, "4 in 12", "20°"))


def _slope(room: Room) -> tuple[Side, Slope]:
    if room.right is not None:
        return Side.RIGHT, room.right
    if room.left is not None:
        return Side.LEFT, room.left
    raise LookupError("a room has at least one slope")


def _plain(slope: Slope) -> Slope:
    return msgspec.structs.replace(slope, breaks=())


def _shown(project: Project, mm: float) -> Length:
    """A length on the tape, in the project's unit, rounded down to the whole inch or 10 mm."""
    step = 25.4 if project.system is System.INCH else 10.0
    return stated(project, mm // step * step)


def _text(project: Project, inch: str, metric: str) -> Length:
    return usual.length(project.system, inch if project.system is System.INCH else metric)


def _pitch(project: Project, inch: str, metric: str) -> Pitch:
    text = inch if project.system is System.INCH else metric
    return parse_pitch(text, project.system.bare_unit)
