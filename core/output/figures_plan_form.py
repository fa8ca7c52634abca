"""The form of the figures of the room from above: what stands there before any wall is framed."""

from typing import Annotated

import msgspec
from msgspec import Meta

_Spot = Annotated[tuple[float, float], Meta(description="[across, along] in plan, mm.")]


class _Part(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A part of the figures; it has no keys but those described."""


class StairOpeningFigures(_Part, frozen=True):
    """The opening in the floor for a stair."""

    id: Annotated[str, Meta(description="Its id in the room.")]
    corners: Annotated[
        tuple[_Spot, ...],
        Meta(description="Its corners, from the one nearest to the left eave and the start on."),
    ]


class ExistingWallFigures(_Part, frozen=True):
    """A wall that stands there already; it is never framed."""

    id: Annotated[str, Meta(description="Its id in the room.")]
    length: Annotated[float, Meta(description="From its left end to its right end, mm.")]
    corners: Annotated[
        tuple[_Spot, ...],
        Meta(description="Along the face that was measured from left to right, then back."),
    ]


class PlanFigures(_Part, frozen=True):
    """The room from above."""

    outline: Annotated[
        tuple[_Spot, ...],
        Meta(description="The room at the framing faces of its eave walls and gables, wings too."),
    ]
    stair_openings: Annotated[
        tuple[StairOpeningFigures, ...], Meta(description="Openings in the floor for stairs.")
    ]
    existing_walls: Annotated[
        tuple[ExistingWallFigures, ...], Meta(description="Walls that stand there already.")
    ]
