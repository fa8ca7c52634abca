"""The form of the figures of a piece of timber: its place, its lengths, and how it is cut."""

from typing import Annotated

import msgspec
from msgspec import Meta

from core.framing import Role, Way
from core.model import Side

Key = Annotated[str, Meta(description="The lasting key of what is meant, a path from the wall.")]
Mm = Annotated[float, Meta(description="A length in mm.")]
Spot = Annotated[
    tuple[float, float],
    Meta(
        description="A point [x, y], mm: x from the wall's left end seen from face A, y up from"
        " the subfloor."
    ),
]
Outline = Annotated[
    tuple[Spot, ...], Meta(description="The corners of an outline, counter-clockwise, mm.")
]


class _Part(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A part of the figures; it has no keys but those described."""


class SawFigures(_Part, frozen=True):
    """How a piece is held and what the saw is set to, within the stops stated for it."""

    way: Annotated[
        Way,
        Meta(
            description="flat on the wide face along the fence; on edge along it; square: along a"
            " block clamped square to the fence, flat or on edge; or by hand."
        ),
    ]
    bevel: Annotated[float, Meta(description="Degrees that the blade is tilted, from 0 up.")]
    mitre: Annotated[float, Meta(description="Degrees that the saw is swung, from 0 up.")]


class FacetFigures(_Part, frozen=True):
    """One flat of an end cut, as the saw is set from a square cut."""

    bevel: Annotated[
        float,
        Meta(
            description="Degrees that the blade is tilted with the mitre set; positive where the"
            " cut rises to the right."
        ),
    ]
    mitre: Annotated[
        float,
        Meta(
            description="Degrees that the saw is swung across the wide face; positive where the"
            " cut rises away from face A."
        ),
    ]
    face_up: Annotated[
        str,
        Meta(
            description="The face of the member that lies up on the saw: left, right, top,"
            " underside, or any."
        ),
    ]
    saw: SawFigures


class RipFigures(_Part, frozen=True):
    """How a plate is ripped so that both its edges are plumb."""

    width: Annotated[
        float, Meta(description="The width of each broad face, square to the plate's run, mm.")
    ]
    bevel: Annotated[
        float,
        Meta(
            description="Degrees that the blade is tilted from square; positive where the plate"
            " rises away from face A."
        ),
    ]
    saw: SawFigures


class NotchFigures(_Part, frozen=True):
    """What is cut out of one side of a standing member, through its whole width."""

    purlin: Annotated[str, Meta(description="The id of the purlin that it goes round.")]
    side: Side
    depth: Mm
    bottom: Annotated[float, Meta(description="Its height above the member's foot there, mm.")]
    top: Annotated[
        float | None,
        Meta(description="Where it ends above the foot, mm; null where it goes up to the top."),
    ]


class MemberFigures(_Part, frozen=True):
    """A piece of timber in its place, and how it is cut."""

    key: Key
    label: Annotated[str, Meta(description="The label pencilled on the piece: letter and number.")]
    role: Annotated[Role, Meta(description="What the member is in the wall.")]
    section: Annotated[
        tuple[float, float], Meta(description="[thickness, width] of the timber as dressed, mm.")
    ]
    count: Annotated[
        int, Meta(description="Pieces alike that stand side by side through the wall.", ge=1)
    ]
    spacer: Annotated[
        float, Meta(description="Thickness of the spacers between those pieces, mm; 0 if none.")
    ]
    left: Annotated[float, Meta(description="x of its left edge or tip on face A, mm.")]
    bottom: Annotated[float, Meta(description="y of its lowest point on face A, mm.")]
    edges: Annotated[
        tuple[float, float, float, float],
        Meta(
            description="Lengths of the four long edges, mm. Of a standing member: near left, near"
            " right, far left, far right; of a lying one: near underside, near top, far underside,"
            " far top. Near is face A."
        ),
    ]
    long_point: Annotated[float, Meta(description="The greatest length that the cuts leave, mm.")]
    short_point: Annotated[float, Meta(description="The least length that the cuts leave, mm.")]
    overall: Annotated[float, Meta(description="The length from tip to tip, mm.")]
    top_cut: Annotated[
        tuple[FacetFigures, ...],
        Meta(
            description="The cut of the top end, a facet for each plane it meets. Of a lying"
            " member (plate, header, sill): the right end."
        ),
    ]
    bottom_cut: Annotated[
        tuple[FacetFigures, ...],
        Meta(description="The cut of the bottom end. Of a lying member: the left end."),
    ]
    near: Annotated[Outline, Meta(description="The outline on face A, mm.")]
    far: Annotated[Outline, Meta(description="The outline on the far face, mm.")]
    rip: Annotated[
        RipFigures | None,
        Meta(description="How its edges are ripped plumb; null where they are square."),
    ]
    notches: Annotated[
        tuple[NotchFigures, ...],
        Meta(description="Notches in its sides; lengths and cuts are those before these are cut."),
    ]
    stops: Annotated[
        bool, Meta(description="Whether it ends under a purlin or beam, short of the plates.")
    ]
    lean: Annotated[
        float,
        Meta(
            description="Degrees that an end stud leans to the right with the surface it stands"
            " against; its lengths and cuts are those along it."
        ),
    ]
