"""The top plates along every slope, with their end cuts."""

import math

import msgspec

from core.framing import keys
from core.framing.bending import BENDS, bends, bent, runs
from core.framing.cuts import plate_facet
from core.framing.member import SQUARE_WITHIN, XY, Facet, Member, Role
from core.framing.plate_section import ripped
from core.model import PlateJoint, PlateLie, PlateRules, Wall
from core.roof import RoofLine, Segment, level_line, lowered, underside
from core.roof.line import TOUCH, Joint, never

NO_RULES = PlateRules()
"""Nothing stated of how plates are made up."""

Slab = tuple[Segment, Segment]
"""The top and the underside of a plate on one face of the wall."""


def nailed_under(wall: Wall, near: RoofLine, far: RoofLine) -> tuple[RoofLine, RoofLine]:
    """The lines that the top plates lie under, over face A and over the far face.

    These are the roof lines, or for a level plate the line that its eave-side corner just clears.
    """
    if not wall.top_plate.is_level:
        return near, far
    beyond = max(wall.top_plate.timber.width.mm - wall.stud.width.mm, 0.0)
    level = level_line(near, far, beyond)
    return level, level


def plates_underside(wall: Wall, line: RoofLine, rules: PlateRules = NO_RULES) -> RoofLine:
    """The line that studs reach: the underside of all top plates nailed up under `line`."""
    thickness = wall.top_plate.count * wall.top_plate.timber.thickness.mm
    return underside(line, thickness, plumb=_plumb(wall, rules))


def top_plates(
    wall: Wall, near: RoofLine, far: RoofLine, rules: PlateRules = NO_RULES
) -> tuple[Member, ...]:
    """The top plates under the roof lines of face A and of the far face, the uppermost layer first.

    One plate for each segment over face A, or for several that it can bend along. Ends are cut
    plumb at the wall's ends and at steps; where two slopes meet, both plates are cut along the
    plane that halves the angle between them: it runs from the break of the roof line to the break
    of the undersides, on both faces. Where plumb joints are stated, both are cut plumb there
    instead.
    """
    plates = []
    for layer in range(wall.top_plate.count):
        on_near, on_far = (_slabs(wall, line, layer, rules) for line in (near, far))
        for number, run in enumerate(runs(near, _roll(wall))):
            key, pieces = keys.top(wall.letter, number, layer), []
            for index in run:
                if (slab := on_near[index]) is not None:
                    away = wall.stud.width.mm
                    behind = _behind(near.segments[index], far, on_far, away)
                    pieces.append(_plate(key, wall, slab, behind or _moved(slab, away)))
            plates += [bent(key, pieces)] if pieces else []
    return tuple(plates)


def _slabs(wall: Wall, line: RoofLine, layer: int, rules: PlateRules) -> tuple[Slab | None, ...]:
    """The top and the underside of a layer of plates, for each segment of the roof line."""
    thickness = wall.top_plate.timber.thickness.mm
    lines = (lowered(line, n * thickness, plumb=_plumb(wall, rules)) for n in (layer, layer + 1))
    return tuple(
        None if above is None or below is None else (above, below)
        for above, below in zip(*lines, strict=True)
    )


def _plumb(wall: Wall, rules: PlateRules) -> Joint:
    """Between which neighbours plates are joined plumb: at most where no plate runs on."""
    if rules.joint is not PlateJoint.PLUMB:
        return never
    return lambda a, b: not bends(a, b, _roll(wall))


def _roll(wall: Wall) -> float:
    """How far a plate may roll about its length: edges ripped at one angle fit one tilt."""
    return SQUARE_WITHIN if wall.top_plate.lie is PlateLie.RIPPED else BENDS


def _behind(
    segment: Segment, far: RoofLine, slabs: tuple[Slab | None, ...], away: float
) -> Slab | None:
    """The slab on the far face under the same plane; None where that plane ends short of it."""
    found = []
    for other, slab in zip(far.segments, slabs, strict=True):
        here = abs(segment.height + segment.across * away - other.height) <= TOUCH
        if here and abs(segment.along - other.along) <= 1e-9 and slab is not None:
            # A plane may come down to the wall more than once: on either side of a dormer.
            apart = abs(segment.left + segment.right - other.left - other.right)
            found.append((apart, slab))
    return min(found, key=lambda pair: pair[0])[1] if found else None


def _moved(slab: Slab, away: float) -> Slab:
    """The slab carried square through the wall to the far face."""
    above, below = (msgspec.structs.replace(s, height=s.height + s.across * away) for s in slab)
    return above, below


def _plate(key: str, wall: Wall, slab: Slab, behind: Slab) -> Member:
    timber, away = wall.top_plate.timber, wall.stud.width.mm
    near, far = _outline(slab), _outline(behind)
    lengths = [
        math.hypot(1.0, s.along) * (s.right - s.left) for pair in (slab, behind) for s in pair
    ]
    return Member(
        key=key,
        role=Role.TOP_PLATE,
        thickness=timber.thickness.mm,
        width=timber.width.mm,
        near=near,
        far=far,
        edges=(lengths[1], lengths[0], lengths[3], lengths[2]),
        long_point=max(lengths),
        short_point=min(lengths),
        overall=_extent((*near, *far), slab[1].along),
        first_cut=_end_cut(slab[1], near[0], near[3], far[0], away),
        last_cut=_end_cut(slab[1], near[1], near[2], far[1], away),
        rip=ripped(wall, slab[1]),
    )


def _outline(slab: Slab) -> tuple[XY, XY, XY, XY]:
    """The plate's outline on one face: underside left and right, top right and left."""
    above, below = slab
    return (
        (below.left, below.at(below.left)),
        (below.right, below.at(below.right)),
        (above.right, above.at(above.right)),
        (above.left, above.at(above.left)),
    )


def _end_cut(plate: Segment, under: XY, over: XY, behind: XY, away: float) -> tuple[Facet, ...]:
    """The cut through three corners of a plate's end; `behind` is the far underside corner."""
    up = (over[0] - under[0], over[1] - under[1], 0.0)
    back = (behind[0] - under[0], behind[1] - under[1], away)
    facet = plate_facet(plate, up, back)
    if facet.is_square:
        facet = msgspec.structs.replace(facet, face_up="any")
    return (facet,)


def _extent(points: tuple[XY, ...], along: float) -> float:
    """The length from tip to tip measured along the plate, mm."""
    run = math.hypot(1.0, along)
    reaches = [(x + along * y) / run for x, y in points]
    return max(reaches) - min(reaches)
