"""The steps to the angles of end cuts, and to what the saw is set to past its stops."""

import math

from core.framing.member import SQUARE_WITHIN, Facet, Member
from core.framing.saw import Setting, Way
from core.framing.working import Term, Unit, Working, degrees
from core.wording import Message, Mm, message


def cut_workings(member: Member) -> tuple[Working, ...]:
    """The bevel and the mitre of every different cut that is not square, step by step."""
    made: dict[tuple[float, float], tuple[Working, ...]] = {}
    for facet in (*member.first_cut, *member.last_cut):
        size = (round(abs(facet.bevel), 9), round(abs(facet.mitre), 9))
        if not facet.is_square and size not in made:
            made[size] = _workings(member, facet)
    return tuple(working for found in made.values() for working in found)


def setting_workings(facet: Facet, setting: Setting) -> tuple[Working, ...]:
    """What the saw is set to for a cut past its stops, from the cut's own bevel and mitre."""
    bevel, mitre = abs(facet.bevel), abs(facet.mitre)
    if setting.way is Way.BY_HAND:
        return ()
    if setting.way in (Way.ON_EDGE, Way.ON_EDGE_SQUARE):
        said = {"bevel": degrees(bevel), "mitre": degrees(mitre)}
        on_edge = math.atan2(math.sin(bevel), math.cos(bevel) * math.cos(mitre))
        tilt = Term(message("working.edge-bevel", **said), setting.bevel, Unit.ANGLE)
        swing = Term(message("working.edge-mitre", **said), on_edge, Unit.ANGLE)
    else:
        swing = Term(message("working.cut-mitre"), mitre, Unit.ANGLE)
        tilt = Term(message("working.cut-bevel"), bevel, Unit.ANGLE)
    steps = [swing]
    if setting.way in (Way.SQUARE, Way.ON_EDGE_SQUARE):
        steps.append(Term(message("working.left-to-90"), setting.mitre, Unit.ANGLE))
    found = []
    if setting.mitre > 1e-4:
        found.append(Working(message("working.set-mitre"), tuple(steps), Unit.ANGLE))
    if setting.bevel > 1e-4:
        found.append(Working(message("working.set-bevel"), (tilt,), Unit.ANGLE))
    return tuple(found)


def _workings(member: Member, facet: Facet) -> tuple[Working, ...]:
    """The mitre first, then the bevel with that mitre set."""
    mitred, bevelled = abs(facet.mitre) >= SQUARE_WITHIN, abs(facet.bevel) >= SQUARE_WITHIN
    along, across = abs(math.tan(facet.bevel) / math.cos(facet.mitre)), abs(math.tan(facet.mitre))
    if member.lies:
        first, second = _over_plate(member, along, across)
    else:
        first, second = _under_roof(along, across, turned=member.key.endswith("/flat"))
    found = []
    if mitred:
        terms = (*second, _arctan("working.mitre", across, abs(facet.mitre)))
        found.append(Working(message("working.mitre-title"), terms, Unit.ANGLE))
    if bevelled:
        name = message("working.bevel", ratio=f"{along:.4f}")
        if mitred:
            name = message(
                "working.bevel-mitred", ratio=f"{along:.4f}", mitre=degrees(abs(facet.mitre))
            )
        terms = (*first, Term(name, abs(facet.bevel), Unit.ANGLE))
        found.append(Working(message("working.bevel-title"), terms, Unit.ANGLE))
    return tuple(found)


def _arctan(message_id: str, ratio: float, angle: float) -> Term:
    return Term(message(message_id, ratio=f"{ratio:.4f}"), angle, Unit.ANGLE)


Steps = tuple[Term, ...]
"""The first steps to an angle."""


def _under_roof(along: float, across: float, *, turned: bool) -> tuple[Steps, Steps]:
    """What a plane overhead rises over the thickness, and over the width, of a stud."""
    if turned:
        along, across = across, along
    own = math.hypot(along, across)
    if min(along, across) < 1e-9:
        rise = (Term(message("working.rises", rise=f"{12 * own:.3g}"), own, Unit.RATIO),)
        return (rise, rise)
    turn = math.atan2(across, along)
    slope = Term(message("working.rises", rise=f"{12 * own:.3g}"), own, Unit.RATIO)
    aside = Term(message("working.turned"), turn, Unit.ANGLE)
    up = message("working.rises-along", slope=f"{own:.4f}", turn=degrees(turn))
    through = message("working.rises-through", slope=f"{own:.4f}", turn=degrees(turn))
    first = (slope, aside, Term(up, along, Unit.RATIO))
    second = (slope, aside, Term(through, across, Unit.RATIO))
    return (second, first) if turned else (first, second)


def _over_plate(member: Member, along: float, across: float) -> tuple[Steps, Steps]:
    """How much further one edge of a plate's end reaches than the other, over the timber."""

    def step(name: str, ratio: float, over: float) -> Term:
        said: Message = message(name, further=Mm(ratio * over), over=Mm(over))
        return Term(said, ratio, Unit.RATIO)

    thick = step("working.reaches-thickness", along, member.thickness)
    wide = step("working.reaches-width", across, member.width)
    return (thick,), (wide,)
