"""Doubled studs: a second one nailed to a stud of the layout, an added one or an end stud."""

from core.framing import keys
from core.framing.ground import foot
from core.framing.member import Member, Role
from core.framing.near import CLEAR
from core.framing.sticks import standing
from core.model import Side, Wall
from core.roof import RoofLine


def doubles(
    wall: Wall,
    uprights: tuple[Member, ...],
    spans: tuple[tuple[float, float], ...],
    over: tuple[RoofLine, RoofLine],
) -> tuple[tuple[Member, ...], tuple[str, ...]]:
    """The second studs beside the stated `uprights`, and the keys of those without room.

    `spans` are the outer faces of openings, mm, that they keep off as they do other uprights. A
    stud that does not stand itself, or is a cripple, has no second one.
    """
    made: list[Member] = []
    no_room = []
    for doubled in wall.doubled:
        stud = next((m for m in uprights if m.key == doubled.stud and m.role is Role.STUD), None)
        if stud is None:
            continue
        thickness, key = wall.stud.thickness.mm, keys.double(stud.key)
        low, high = _span(stud)
        left = low - thickness if doubled.side is Side.LEFT else high
        taken = (*spans, *(_span(m) for m in (*uprights, *made)))
        apart = all(left + thickness <= a + CLEAR or left >= b - CLEAR for a, b in taken)
        within = left >= -CLEAR and left + thickness <= wall.run + CLEAR
        member = standing(key, Role.STUD, wall.stud, left, foot(wall), over)
        if apart and within and member is not None:
            made.append(member)
        else:
            no_room.append(key)
    return tuple(made), tuple(no_room)


def _span(stud: Member) -> tuple[float, float]:
    """What a stud takes up along the wall on both faces, mm: one that leans goes on behind."""
    places = [x for x, _ in (*stud.near, *stud.far)]
    return min(places), max(places)
