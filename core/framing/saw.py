"""How a cut is made on a saw with stops: as it stands, or turned so that the stops allow it.

A piece that lies on its wide face against the fence is cut along a plane whose normal has the
shares cos(bevel) cos(mitre) along the piece, cos(bevel) sin(mitre) across its wide face and
sin(bevel) through its thickness. Turning the piece changes which of them the saw swings and tilts.
"""

import enum
import math

import msgspec

from core.framing.member import Facet, Member, Rip
from core.model import Saw

_STOP = math.radians(0.005)
"""A setting this little past a stop is at the stop."""

Angles = tuple[float, float]
"""Bevel and mitre from square, both from 0 up, radians."""


class Way(enum.Enum):
    """How the piece is held against the saw.

    FLAT: on its wide face along the fence. ON_EDGE: on its narrow edge along the fence.
    SQUARE: flat along a block that is clamped square to the fence, so that the saw is set to what
    is left to 90 degrees; ON_EDGE_SQUARE: on edge along such a block. BY_HAND: no setting does it.
    """

    FLAT = "flat"
    ON_EDGE = "on edge"
    SQUARE = "square"
    ON_EDGE_SQUARE = "on edge square"
    BY_HAND = "by hand"


class Setting(msgspec.Struct, frozen=True):
    """How a piece is held, and what the saw is set to, radians from square, without signs."""

    way: Way
    bevel: float
    mitre: float


def saw_setting(facet: Facet, saw: Saw) -> Setting:
    """The first way to hold a piece in which the saw's stops allow this facet.

    BY_HAND names the angles of the piece flat on the saw.
    """
    bevel, mitre = abs(facet.bevel), abs(facet.mitre)
    if bevel <= saw.bevel.angle + _STOP and mitre <= saw.mitre.angle + _STOP:
        return Setting(Way.FLAT, bevel, mitre)
    edge = _on_edge(bevel, mitre)
    ways = (
        (Way.ON_EDGE, edge),
        (Way.SQUARE, (bevel, math.pi / 2 - mitre)),
        (Way.ON_EDGE_SQUARE, (edge[0], math.pi / 2 - edge[1])),
    )
    for way, angles in ways:
        if angles[0] <= saw.bevel.angle + _STOP and angles[1] <= saw.mitre.angle + _STOP:
            return Setting(way, *angles)
    return Setting(Way.BY_HAND, bevel, mitre)


def rip_setting(rip: Rip, saw: Saw) -> Setting:
    """How a plate's edges are ripped: flat, or on edge with the blade at what is left to 90."""
    bevel = abs(rip.bevel)
    for way, tilt in ((Way.FLAT, bevel), (Way.ON_EDGE, math.pi / 2 - bevel)):
        if tilt <= saw.bevel.angle + _STOP:
            return Setting(way, tilt, 0.0)
    return Setting(Way.BY_HAND, bevel, 0.0)


def past_stops(member: Member, saw: Saw) -> tuple[tuple[Facet, Setting], ...]:
    """The facets of a member's ends that the saw cannot cut flat, with how it can; each once."""
    found: dict[Setting, Facet] = {}
    for facet in (*member.first_cut, *member.last_cut):
        setting = saw_setting(facet, saw)
        if setting.way is not Way.FLAT:
            found.setdefault(setting, facet)
    return tuple((facet, setting) for setting, facet in found.items())


def _on_edge(bevel: float, mitre: float) -> Angles:
    """The angles of the same cut with the piece on its narrow edge: swing and tilt change places.

    What the blade tilted through the thickness the saw now swings, tan(bevel) / cos(mitre).
    """
    swing = math.atan2(math.sin(bevel), math.cos(bevel) * math.cos(mitre))
    return math.asin(math.cos(bevel) * math.sin(mitre)), swing
