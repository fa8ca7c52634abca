"""What else is nailed into a wall, gathered: what it may read, and what follows."""

import msgspec

from core.framing.backing import Unbacked, fixture_backing, meeting_backing, unbacked
from core.framing.bays import Bay, bays
from core.framing.blocking import blocking, highest_row
from core.framing.heads import Over
from core.framing.meeting import Meeting
from core.framing.meeting_studs import meeting_studs
from core.framing.member import Member
from core.framing.rafters import OverPlate, Rafters, between_rafters, over_plate
from core.kept import Kept
from core.model import Wall
from core.roof import PurlinThrough, RoofLine


class Surroundings(msgspec.Struct, frozen=True):
    """What else a wall's frame depends on: walls that end against it, rafters and purlins."""

    meetings: tuple[Meeting, ...] = ()
    rafters: Rafters = Rafters()
    purlins: tuple[PurlinThrough, ...] = ()


class Nailed(msgspec.Struct, frozen=True):
    """Blocks and backing of a wall, and what could not be made of them as stated.

    `empty_rows` are stated rows, counted from 0, that have no block in any bay; `highest_row` is
    the greatest height of a row, mm, that has one.
    """

    members: tuple[Member, ...] = ()
    over_plate: OverPlate = OverPlate()
    unbacked: tuple[Unbacked, ...] = ()
    empty_rows: tuple[int, ...] = ()
    highest_row: float | None = None
    tallest_bay: float = 0.0


def studs_at_meetings(
    wall: Wall, around: Surroundings, over: Over, members: tuple[Member, ...]
) -> tuple[Member, ...]:
    """The studs that a wall gets for all walls that end against it."""
    made: list[Member] = []
    for met in around.meetings:
        made += meeting_studs(wall, met, over, (*members, *made))
    return tuple(made)


def nailed_in(
    wall: Wall,
    around: Surroundings,
    over: Over,
    near: RoofLine,
    members: tuple[Member, ...],
    kept: Kept,
) -> Nailed:
    """Everything nailed into the frame of `members`; backing finds its room before blocking."""
    found = bays(members, over, wall.stud.thickness.mm, kept)
    backing = fixture_backing(wall, found)
    for met in around.meetings:
        backing = (*backing, *meeting_backing(wall, met, found, backing))
    blocks = blocking(wall, found, backing, around.purlins)
    above = over_plate(wall, around.rafters)
    return Nailed(
        members=(*backing, *blocks, *between_rafters(wall, near, above.between)),
        over_plate=above,
        unbacked=unbacked(wall, found, (*members, *backing)),
        empty_rows=_empty(wall, blocks),
        highest_row=highest_row(found, wall.stud.thickness.mm),
        tallest_bay=_tallest(found),
    )


def nailed_on_rafters(
    wall: Wall, around: Surroundings, over: Over, members: tuple[Member, ...], kept: Kept
) -> Nailed:
    """Blocking and fixtures' backing between the studs of a wall that stands on rafters.

    Every bay stands on its rafter where that is highest in it: how far apart rows may be counts
    from there, and stated rows from the subfloor as in any wall.
    """
    thick = wall.stud.thickness.mm
    found = tuple(
        msgspec.structs.replace(bay, datum=bay.foot) for bay in bays(members, over, thick, kept)
    )
    backing = fixture_backing(wall, found)
    blocks = blocking(wall, found, backing, around.purlins)
    return Nailed(
        members=(*backing, *blocks),
        unbacked=unbacked(wall, found, (*members, *backing)),
        empty_rows=_empty(wall, blocks),
        highest_row=highest_row(found, thick),
        tallest_bay=_tallest(found),
    )


def slipped(wall: Wall, line: RoofLine) -> RoofLine:
    """The line that the top plate lies under: the roof line, or as far below it as stated."""
    if wall.slip_gap is None:
        return line
    gap = wall.slip_gap.mm
    lowered = (msgspec.structs.replace(s, height=s.height - gap) for s in line.segments)
    return RoofLine(tuple(lowered))


def _empty(wall: Wall, blocks: tuple[Member, ...]) -> tuple[int, ...]:
    """The stated rows without a block."""
    heights = wall.blocking.heights if wall.blocking else ()
    there = {block.key.split("/")[2] for block in blocks}
    return tuple(n for n in range(len(heights)) if f"row-{n + 1}" not in there)


def _tallest(found: tuple[Bay, ...]) -> float:
    """The greatest clear height of a bay, mm."""
    return max((bay.high - bay.foot for bay in found), default=0.0)
