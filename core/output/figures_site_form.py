"""The form of the figures of putting a wall up: swing, floor, weight, nails."""

from typing import Annotated

import msgspec
from msgspec import Meta

from core.model import Joint
from core.site import Laid, Source, Way

_Mm = Annotated[float, Meta(description="A length in mm.")]
_Laid = Annotated[Laid, Meta(description="The side it lies on before; it pivots on that face.")]


class _Part(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A part of the figures; it has no keys but those described."""


class TurnFigures(_Part, frozen=True):
    """A wall in the order in which all of them are put up."""

    wall: Annotated[str, Meta(description="Its letter.")]
    way: Annotated[Way, Meta(description="How it is put up in its turn.")]
    laid: Annotated[
        Laid | None, Meta(description="The side it lies on before; null if not tilted up whole.")
    ]
    short: Annotated[float, Meta(description="How much less high it is then built, mm.")]
    before: Annotated[
        tuple[str, ...], Meta(description="The walls still to come whose place is where it lies.")
    ]
    blocked: Annotated[
        tuple[str, ...],
        Meta(description="The walls that stand where it would lie, so that it is not tilted."),
    ]


class SwingFigures(_Part, frozen=True):
    """How a wall swings up on one side, and the floor it takes there."""

    laid: _Laid
    there: Annotated[float, Meta(description="The gap over its top once it stands, mm.")]
    needed: Annotated[
        float | None,
        Meta(description="The gap with which it just passes, mm; null where none would do."),
    ]
    clearance: Annotated[
        float, Meta(description="How near its top comes to the roof, mm; minus: into it.")
    ]
    angle: Annotated[
        float, Meta(description="Degrees from lying to the moment when it comes nearest.")
    ]
    worst: Annotated[
        tuple[float, float, float],
        Meta(description="The point that does, [x, y, d away from face A], mm."),
    ]
    floor: Annotated[tuple[float, float], Meta(description="[length, depth] of floor, mm.")]
    lacking: Annotated[float, Meta(description="How far it would lie out of the room, mm.")]
    in_the_way: Annotated[
        tuple[str, ...], Meta(description="Letters of walls that have to come after it.")
    ]
    taken: Annotated[
        tuple[str, ...],
        Meta(description="What is there for good where it would lie, by its id."),
    ]


class PanelFigures(_Part, frozen=True):
    """A stretch of the wall that goes up by itself."""

    left: _Mm
    right: _Mm
    laid: _Laid


class NailFigures(_Part, frozen=True):
    """The nails of one kind of joint."""

    joint: Annotated[Joint, Meta(description="What is nailed to what.")]
    nail: Annotated[str, Meta(description="The nail, in words.")]
    count: Annotated[int, Meta(description="How many in each place.")]
    every: Annotated[
        float | None,
        Meta(description="The most between places, mm; null where each joint is one."),
    ]
    places: Annotated[int, Meta(description="How many places.")]
    total: Annotated[int, Meta(description="All nails of the kind of joint.")]
    source: Annotated[Source, Meta(description="How well the row of the schedule is founded.")]


class RaisingFigures(_Part, frozen=True):
    """How a wall goes up, what it weighs, and its nails."""

    way: Annotated[Way, Meta(description="Tilted up, built short, in panels, or in place.")]
    laid: Annotated[
        Laid | None, Meta(description="The side to lay it on; null where not tilted whole.")
    ]
    short: Annotated[float, Meta(description="How much less high it is built, mm, on the tape.")]
    swings: tuple[SwingFigures, ...]
    panels: Annotated[
        tuple[PanelFigures, ...], Meta(description="Panels that go up between standing walls.")
    ]
    order: Annotated[
        tuple[tuple[str, ...], ...],
        Meta(description="Keys of the pieces, step by step, for building it in place."),
    ]
    weight: Annotated[float, Meta(description="What it weighs, kg.")]
    heaviest: Annotated[float, Meta(description="What its heaviest piece weighs, kg.")]
    heaviest_piece: Annotated[str, Meta(description="The key of that piece.")]
    nails: tuple[NailFigures, ...]
