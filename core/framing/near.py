"""What a layout stud does near end studs and kings, as the wall's rules state it."""

from core.model import EndLean, EndStud, Near, Wall

CLEAR = 1e-6
"""Two members may touch; they overlap when they share more than this, mm."""

Span = tuple[float, float]
"""The left and the right edge of something that a layout stud keeps off, mm."""


def at_ends(wall: Wall, left: float) -> float | None:
    """The left edge, mm, of a layout stud wanted at `left`, by the rule for end studs; None if out.

    A stud kept tight against an end stud stands beside it; one that would stand in its very place
    is always left out.
    """
    return _beside(wall, left, end_spans(wall), wall.goes_by.near_ends)


def end_spans(wall: Wall) -> tuple[Span, Span]:
    """What the end studs take up along the wall from floor to roof, mm, left end first.

    A plumb one stands clear of a surface that leans in; one that leans with it takes up the ground
    it leans over as well.
    """
    left, right = _taken(wall, wall.left_lean), _taken(wall, wall.right_lean)
    run = wall.run
    return (left[0], left[1]), (run - right[1], run - right[0])


def _taken(wall: Wall, lean: EndLean | None) -> Span:
    """The same for one end, from that end inward."""
    thickness = wall.stud.thickness.mm
    if lean is None or wall.stands_on is not None:
        return 0.0, thickness
    inward = max(0.0, -lean.offset.mm)
    if lean.stud is EndStud.PLUMB:
        return inward, inward + thickness
    # Along the wall a leaning stud is thicker by the secant of its angle: 5 % and less.
    return 0.0, inward + (1.05 if lean.offset.mm else 1.0) * thickness


def at_kings(wall: Wall, left: float, openings: tuple[Span, ...]) -> float | None:
    """The left edge, mm, of a layout stud wanted at `left`, by the rule for kings; None if out.

    `openings` are the outer faces of their kings. A stud inside one of them is none of this rule's:
    it stays where it is, to become cripples.
    """
    return _beside(wall, left, openings, wall.goes_by.near_kings, inside=left)


def _beside(
    wall: Wall, left: float, spans: tuple[Span, ...], rule: Near, inside: float | None = None
) -> float | None:
    thickness = wall.stud.thickness.mm
    for low, high in spans:
        within = low - CLEAR <= left and left + thickness <= high + CLEAR
        if within:
            return inside
        if left + thickness > low + CLEAR and left < high - CLEAR:
            tight = low - thickness if left < low else high
            return tight if rule is Near.KEEP and _free(wall, tight, spans) else None
    return None if rule is Near.MERGE and _too_near(wall, left, spans) else left


def _free(wall: Wall, left: float, spans: tuple[Span, ...]) -> bool:
    """Whether a stud there lies in the wall and clear of all that it keeps off."""
    right = left + wall.stud.thickness.mm
    clear = all(right <= low + CLEAR or left >= high - CLEAR for low, high in spans)
    return clear and left >= -CLEAR and right <= wall.run + CLEAR


def _too_near(wall: Wall, left: float, spans: tuple[Span, ...]) -> bool:
    """Whether less room than stated would be left between the stud and what it stands near."""
    wanted = wall.goes_by.closer_than
    right = left + wall.stud.thickness.mm
    gaps = (low - right if right <= low + CLEAR else left - high for low, high in spans)
    return wanted is not None and any(gap < wanted.mm - CLEAR for gap in gaps)
