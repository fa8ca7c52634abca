"""Which of a wall's things are held together: by clicks, by a rectangle; model mm, no Qt."""

from core.framing.moving import movable
from core.job import WallResult
from gui.desk import Desk
from gui.sketcher.camera import XY
from gui.sketcher.hit import bounds, outline
from gui.things import Kind, Thing, thing_of

_MOVABLE = frozenset({Kind.STUD, Kind.CRIPPLE, Kind.OPENING, Kind.BOX, Kind.FIXTURE, Kind.ZONE})


def once(result: WallResult, keys: tuple[str, ...]) -> tuple[str, ...]:
    """The keys without those that stand for a thing of an earlier one, or go with an opening.

    A cripple of the layout goes with its opening: moved or deleted besides, it would leave a gap.
    """
    seen: dict[Thing | str, str] = {}
    for key in keys:
        seen.setdefault(thing_of(result.wall, key) or key, key)
    whole = {t.id for t in seen if isinstance(t, Thing) and t.kind is Kind.OPENING}
    return tuple(
        key
        for thing, key in seen.items()
        if not (isinstance(thing, Thing) and thing.kind is Kind.CRIPPLE and _cause(key) in whole)
    )


def _cause(key: str) -> str:
    return key.split("/")[1]


def without(result: WallResult, keys: tuple[str, ...], key: str) -> tuple[str, ...]:
    """The keys but for those that stand for the thing of this one."""
    gone = thing_of(result.wall, key) or key
    return tuple(k for k in keys if (thing_of(result.wall, k) or k) != gone)


def same_held(desk: Desk, key: str) -> bool:
    """Whether the thing of this key is among those held."""
    if desk.result is None:
        return False
    return len(without(desk.result, desk.holding, key)) < len(desk.holding)


def within(result: WallResult, one: XY, other: XY) -> tuple[str, ...]:
    """The keys of all that can be moved and has its middle in a rectangle, from the left; mm."""
    found = []
    (left, right), (low, high) = sorted((one[0], other[0])), sorted((one[1], other[1]))
    for key in movable_keys(result):
        shape = outline(result, key)
        if shape is None:
            continue
        a, b, c, d = bounds(shape)
        x, y = (a + c) / 2, (b + d) / 2
        if left <= x <= right and low <= y <= high:
            found.append((a, key))
    return tuple(key for _, key in sorted(found))


def movable_keys(result: WallResult) -> tuple[str, ...]:
    """The keys of all in the wall that can be moved, each thing once."""
    letter, frame = result.wall.letter, result.frame
    if frame is None:
        return ()
    timber = (m.key for m in frame.members if movable(m))
    wall = result.wall
    ids = (
        *(o.id for o in wall.openings),
        *(b.id for b in wall.boxes),
        *(f.id for f in wall.fixtures),
        *(z.id for z in wall.kept_clear),
    )
    keys = (*(f"{letter}/{name}" for name in ids), *timber)
    return tuple(key for key in keys if _movable(result, key))


def _movable(result: WallResult, key: str) -> bool:
    thing = thing_of(result.wall, key)
    return thing is not None and thing.kind in _MOVABLE
