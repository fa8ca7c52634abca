"""The cautions that go with the work itself, whatever the drawing says.

What the person has answered about the roof and the floor decides which of them stand. No answer
makes anything safe: somebody licensed decides what may be cut and what a floor carries.
"""

from core.checks.caution import Caution, Severity
from core.model import FloorSeen, RoofBuilt, Room
from core.wording import message

_FLOORS = {
    None: "standing.floor",
    FloorSeen.NOBODY: "standing.floor",
    FloorSeen.PAPERS: "standing.floor-papers",
    FloorSeen.LICENSED: "standing.floor-licensed",
}
_ALWAYS = ("lifting", "dust", "exits", "codes")


def standing_cautions(room: Room) -> tuple[Caution, ...]:
    """Structure, floor load, lifting alone, dust and saw, ways out, and the local code.

    Under trusses their members and the walls below them come first.
    """
    names = (*_structure(room), _FLOORS[room.floor_seen], *(f"standing.{n}" for n in _ALWAYS))
    return tuple(Caution(Severity.STANDING, "", message(name)) for name in names)


def answered_cautions(room: Room) -> tuple[Caution, ...]:
    """Those of the standing cautions that an answer has brought up: trusses, a floor not looked at.

    They belong beside every wall, on its sheet.
    """
    names = _trusses(room)
    if room.floor_seen is FloorSeen.NOBODY:
        names = (*names, "standing.floor")
    return tuple(Caution(Severity.STANDING, "", message(name)) for name in names)


def _structure(room: Room) -> tuple[str, ...]:
    return (*_trusses(room), "standing.structure")


def _trusses(room: Room) -> tuple[str, ...]:
    if room.roof_built is not RoofBuilt.TRUSSES:
        return ()
    return "standing.trusses", "standing.under-trusses"
