"""Tilting a wall up under its upper top plate, which was nailed up first."""

import msgspec

from core.framing import Frame, Member, Role, keys
from core.roof import Part, Plane
from core.site.outline import top_places
from core.site.surroundings import Surroundings
from core.site.swing import Laid, Swing
from core.site.tilt import swing


def under_the_upper_plate(around: Surroundings, frame: Frame) -> tuple[Swing, Swing] | None:
    """The swings of the wall less its upper plate, laid down on face A's side, then far.

    None with a single top plate, and where the wall was framed to a line measured on site: the
    plate up there then follows no plane of the stated roof.
    """
    plates = [m for m in frame.members if m.role is Role.TOP_PLATE]
    upper = [m for m in plates if keys.is_uppermost(m.key)]
    lower = tuple(m for m in frame.members if m not in upper)
    if around.wall.top_plate.count < 2 or not upper:
        return None
    places = top_places(msgspec.structs.replace(frame, members=lower), around.depth, sampled=True)
    if not places or any(around.offsets(tuple(p.x for p in places))):
        return None
    ceilings = (*around.roof.ceilings, *(_as_ceiling(around, plate) for plate in upper))
    roof = msgspec.structs.replace(around.roof, ceilings=ceilings)
    beneath = msgspec.structs.replace(around, roof=roof)
    points = tuple((place, 0.0) for place in places)
    near, far = (swing(beneath, points, laid) for laid in Laid)
    return near, far


def _as_ceiling(around: Surroundings, plate: Member) -> Part:
    """A plate overhead as a ceiling over its own place, at its underside."""
    (left, low), (right, high) = plate.near[:2]
    far_left, far_low = plate.far[0]
    along = (high - low) / (right - left)
    aside = (far_low - low - along * (far_left - left)) / around.depth
    slopes = [along * w + aside * a for w, a in zip(around.along, around.away, strict=True)]
    corner = around.plan(left, 0.0)
    height = low - slopes[0] * corner[0] - slopes[1] * corner[1]
    outline = (
        around.plan(left, 0.0),
        around.plan(right, 0.0),
        around.plan(right, around.depth),
        around.plan(left, around.depth),
    )
    return Part((Plane(slopes[0], slopes[1], height),), outline)
