"""A wall that stands on rafters: a dormer's cheek, with no sole plate and mostly no top plate."""

import math

import msgspec

from core.framing import keys
from core.framing.cut_short import stopped
from core.framing.fitted import fitted, one_cut
from core.framing.frame import Frame
from core.framing.layout import CLEAR, end_lefts, stud_places
from core.framing.marks import Mark
from core.framing.member import Member, Role
from core.framing.nailed import Surroundings, nailed_on_rafters
from core.framing.plate_section import plate_sections
from core.framing.plates import NO_RULES, nailed_under, plates_underside, top_plates
from core.framing.sticks import standing
from core.kept import Kept
from core.model import Letters, LineEdge, PlateRules, Side, Wall
from core.roof import RoofLine, Segment

_ALONE = Surroundings()

Lines = tuple[RoofLine, RoofLine]
"""A line on face A, and the same on the far face."""


def frame_on_rafters(
    wall: Wall,
    roof: Lines,
    foot: Lines,
    around: Surroundings = _ALONE,
    rules: PlateRules = NO_RULES,
    kept: Kept | None = None,
) -> Frame:
    """The frame of a wall whose studs stand on the `foot` lines, under the `roof` lines.

    Studs of the layout and end studs that have no room, or are shorter than they are thick, are
    left out: a cheek ends in a point, and there rafters are nailed to each other. Openings are not
    framed in such a wall. Blocks and backing go between its studs, and lengths are fitted, as in
    any other.
    """
    sections = plate_sections(wall, roof[0])
    near, far = nailed_under(wall, *roof)
    over = (plates_underside(wall, near, rules), plates_underside(wall, far, rules))
    made: list[Member] = []
    no_room, low = [], []
    wanted = [(keys.end(wall.letter, side), left, False) for side, left in end_lefts(wall)]
    wanted += [(place.key, place.left, place.stated) for place in stud_places(wall)]
    for key, left, stated in wanted:
        stud = standing(key, Role.STUD, wall.stud, left, foot, over)
        if _in_the_way(wall, left, made):
            no_room.append(key)
        elif stud is not None and stud.short_point >= wall.stud.thickness.mm - CLEAR:
            made.append(stud)
        elif stated:
            low.append(key)
    straight = tuple(one_cut(m) for m in sorted(made, key=lambda m: m.left))
    short, under = stopped(straight, around.purlins)
    members = (*short, *top_plates(wall, near, far, rules))
    kept = kept or Kept()
    cut, tried = fitted(wall, members, kept)
    nailed = nailed_on_rafters(wall, around, over, cut, kept)
    return Frame(
        over[0],
        over[1],
        (*cut, *nailed.members),
        (),
        tuple(no_room),
        tuple(low),
        tried,
        nailed,
        sections,
        no_room_under=under,
    )


def rafter_marks(
    wall: Wall, frame: Frame, foot: RoofLine, line_edge: LineEdge, letters: Letters
) -> tuple[Mark, ...]:
    """The marks of the studs along the rafter that they stand on, from its low end.

    A mark's `along_top` runs along the rafter and its `along_sole` level, both from the end of the
    wall where the rafter is lower; the line stands for the edge that the person lines.
    """
    made = []
    plate = keys.rafters(wall.letter)
    standing_on_it = (m for m in frame.members if m.role is Role.STUD and not keys.is_over(m.key))
    for stud in standing_on_it:
        low = Side.LEFT if _under(foot, stud).along >= 0 else Side.RIGHT
        edge = low.other if line_edge is LineEdge.UPHILL else low
        x = stud.left if edge is Side.LEFT else stud.right
        level = x if low is Side.LEFT else wall.run - x
        along = _length(foot, x) if low is Side.LEFT else _length(foot, wall.run) - _length(foot, x)
        made.append(Mark(stud.key, plate, letters.stud, low, edge, level, along, x))
    return tuple(sorted(made, key=lambda m: m.along))


def _in_the_way(wall: Wall, left: float, made: list[Member]) -> bool:
    right = left + wall.stud.thickness.mm
    outside = left < -CLEAR or right > wall.run + CLEAR
    return outside or any(left < m.right - CLEAR and right > m.left + CLEAR for m in made)


def _under(foot: RoofLine, stud: Member) -> Segment:
    x = (stud.left + stud.right) / 2
    return next((s for s in foot.segments if s.left <= x <= s.right), foot.segments[-1])


def _length(foot: RoofLine, x: float) -> float:
    """The length along the foot line from the wall's left end to the place x, mm."""
    pieces = (msgspec.structs.replace(s, right=min(s.right, x)) for s in foot.segments)
    return sum((p.right - p.left) * math.hypot(1.0, p.along) for p in pieces if p.right > p.left)
