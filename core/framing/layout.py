"""Where studs stand: the places of the layout, and the person's changes to it."""

import msgspec

from core.framing import keys
from core.framing.near import CLEAR, at_ends, end_spans
from core.model import Side, Wall

__all__ = [
    "CLEAR",
    "Place",
    "between_ends",
    "end_lefts",
    "layout_lefts",
    "stud_places",
    "wanted_left",
]


class Place(msgspec.Struct, frozen=True):
    """A stud wanted with its left edge at `left`, mm; `cause` is the last part of its key.

    `stated` tells a stud that the person put there from one that the layout put there.
    """

    key: str
    cause: str
    left: float
    stated: bool = False


def layout_lefts(wall: Wall) -> tuple[tuple[int, float], ...]:
    """The places of the layout as (place, left edge in mm), whether or not a stud ends up there.

    Centres stand at n times the spacing, n = 1, 2, ..., from where layout starts, so that board
    edges land on them: the first left edge of a 16 in. layout of 1 1/2 in. studs is at 15 1/4 in.
    A layout from the right end runs the same way to the left. With a stated origin the places run
    on from it both ways, and are numbered from the end where layout starts.
    """
    half, spacing = wall.stud.thickness.mm / 2, wall.layout.spacing.mm
    run, first = wall.run, _first_centre(wall)
    places = []
    place = 1
    while first + (place - 1) * spacing + half <= run + CLEAR:
        centre = first + (place - 1) * spacing
        left = centre - half if wall.layout.start is Side.LEFT else run - centre - half
        places.append((place, left))
        place += 1
    return tuple(places)


def _first_centre(wall: Wall) -> float:
    """The first centre from the end where layout starts, mm.

    With a stated point it is the first centre in line with it whose stud lies within the wall.
    """
    layout, half = wall.layout, wall.stud.thickness.mm / 2
    if layout.origin is None:
        return layout.hung_board.mm + layout.spacing.mm
    origin = layout.origin.mm if layout.start is Side.LEFT else wall.run - layout.origin.mm
    return half + _over(origin - half, layout.spacing.mm)


def _over(length: float, step: float) -> float:
    """What is left of a length after whole steps; next to nothing where the steps fill it."""
    rest = length % step
    return 0.0 if step - rest <= CLEAR else rest


def stud_places(wall: Wall) -> tuple[Place, ...]:
    """Every stud wanted between the end studs: layout places with moves and gaps, then additions.

    Layout studs that would overlap an end stud go by the wall's rule for end studs.
    """
    moved = {m.place: m.left.mm for m in wall.moved}
    places = []
    for number, left in layout_lefts(wall):
        if number in wall.left_out:
            continue
        at = moved[number] if number in moved else at_ends(wall, left)
        if at is not None:
            key = keys.layout(wall.letter, number)
            places.append(Place(key, f"{number}", at, number in moved))
    places += [Place(keys.added(wall.letter, a.id), a.id, a.left.mm, True) for a in wall.added]
    return tuple(places)


def wanted_left(wall: Wall, key: str) -> float | None:
    """The left edge that the end stud, layout stud or added stud with this key is wanted at, mm."""
    ends = {keys.end(wall.letter, side): left for side, left in end_lefts(wall)}
    return {**ends, **{place.key: place.left for place in stud_places(wall)}}.get(key)


def between_ends(wall: Wall, left: float) -> bool:
    """Whether a stud with this left edge stands clear of both end studs."""
    before, after = end_spans(wall)
    return before[1] - CLEAR <= left <= after[0] - wall.stud.thickness.mm + CLEAR


def end_lefts(wall: Wall) -> tuple[tuple[Side, float], ...]:
    """The left edges of the end studs, at the wall's ends; one where both would overlap.

    They are flush with the ends, or set in from a surface that leans in.
    """
    thickness = wall.stud.thickness.mm
    left, right = end_spans(wall)
    ends = ((Side.LEFT, left[0]), (Side.RIGHT, right[1] - thickness))
    return ends if left[1] <= right[0] + CLEAR else ends[:1]
