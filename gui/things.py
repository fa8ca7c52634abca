"""What a key stands for: the thing a person can hold, move or delete."""

import enum

import msgspec

from core.framing import keys, spoken
from core.job import WallResult
from core.model import Wall

_AROUND = frozenset({"king", "trimmer", "header", "sill"})


class Kind(enum.Enum):
    """The kinds of thing that a key of a wall can stand for."""

    STUD = "stud"
    CRIPPLE = "cripple"
    DOUBLE = "double"
    END = "end"
    PLATE = "plate"
    OPENING = "opening"
    BOX = "box"
    FIXTURE = "fixture"
    BLOCK = "block"
    ZONE = "zone"


class Thing(msgspec.Struct, frozen=True):
    """A thing of a wall; `id` is its own name there.

    Studs and cripples have the place in the layout ("3") or the id of an added stud, openings
    and boxes their ids, a second stud the end of its stud's key, the rest the end of their key.
    """

    kind: Kind
    id: str

    @property
    def place(self) -> int | None:
        """The place in the layout of a stud or cripple; None beside the layout."""
        stands = self.kind in (Kind.STUD, Kind.CRIPPLE)
        return int(self.id) if stands and self.id.isdecimal() else None


def thing_of(wall: Wall, key: str) -> Thing | None:
    """The thing that `key` stands for; None if it is nothing of this wall.

    Kings, trimmers, headers and sills stand for their opening, backing for its fixture.
    """
    letter, _, path = key.partition("/")
    if letter != wall.letter or not path:
        return None
    path = keys.stud_of(path)
    if keys.is_double(path):
        return Thing(Kind.DOUBLE, path.rpartition("/")[0])
    cause, *rest = path.split("/")
    if cause == "layout" and rest:
        return Thing(Kind.STUD, rest[0])
    if cause == "end":
        return Thing(Kind.END, path)
    if cause in ("blocking", "meets", "rafters"):
        return Thing(Kind.BLOCK, path)
    if cause in ("top", "sole"):
        return Thing(Kind.PLATE, path)
    return _stated(wall, cause, rest)


def name_of(result: WallResult, key: str) -> str:
    """What a thing is called: openings and boxes by their id, a piece of timber by its label."""
    thing = thing_of(result.wall, key)
    if thing is not None and thing.kind in (Kind.OPENING, Kind.BOX, Kind.FIXTURE, Kind.ZONE):
        return spoken(thing.id)
    return result.label_of.get(key, key)


def _stated(wall: Wall, cause: str, rest: list[str]) -> Thing | None:
    """The thing whose cause is something stated under an id."""
    if any(opening.id == cause for opening in wall.openings):
        if rest and rest[0] not in _AROUND:
            return Thing(Kind.CRIPPLE, rest[-1])
        return Thing(Kind.OPENING, cause)
    if any(stud.id == cause for stud in wall.added):
        return Thing(Kind.STUD, cause)
    if any(fixture.id == cause for fixture in wall.fixtures):
        return Thing(Kind.FIXTURE, cause)
    if any(box.id == cause for box in wall.boxes):
        return Thing(Kind.BOX, cause)
    if any(zone.id == cause for zone in wall.kept_clear):
        return Thing(Kind.ZONE, cause)
    return None
