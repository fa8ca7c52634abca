"""Generated hips, dormers, wings, purlins and chimneys for a room that is there already."""

from __future__ import annotations

import msgspec
from hypothesis import strategies as st

from core.lengths import Length, System
from core.model import (
    ClearKind,
    Dormer,
    DormerKind,
    ExistingWall,
    KeptClear,
    Passing,
    PitchBreak,
    Point,
    Purlin,
    Room,
    Side,
    Slope,
    StairOpening,
    Wing,
)
from strategies import lengths, pitches, timbers


@st.composite
def with_roof_parts(draw: st.DrawFn, room: Room, system: System) -> Room:
    """The room with some of what a roof may have beside its slopes."""
    sides = [side for side in Side if getattr(room, side.value) is not None]
    dormers = [_dormer(f"dormer-{n}", room, sides, system) for n in range(draw(st.integers(0, 2)))]
    wings = [_wing(f"wing-{n}", room, system) for n in range(draw(st.integers(0, 1)))]
    purlins = [_purlin(f"purlin-{n}", room, system) for n in range(draw(st.integers(0, 2)))]
    kept = [_kept(f"chimney-{n}", room, system) for n in range(draw(st.integers(0, 1)))]
    stairs = [_stair(f"stair-opening-{n}", room, system) for n in range(draw(st.integers(0, 1)))]
    old = [_existing(f"existing-wall-{n}", room, system) for n in range(draw(st.integers(0, 1)))]
    return msgspec.structs.replace(
        room,
        left=draw(_broken(room.left, system)),
        right=draw(_broken(room.right, system)),
        start_hip=draw(st.none() | slopes(system)),
        end_hip=draw(st.none() | slopes(system)),
        dormers=tuple(draw(dormer) for dormer in dormers),
        wings=tuple(draw(wing) for wing in wings),
        purlins=tuple(draw(purlin) for purlin in purlins),
        kept_clear=tuple(draw(item) for item in kept),
        stair_openings=tuple(draw(stair) for stair in stairs),
        existing_walls=tuple(draw(wall) for wall in old),
    )


@st.composite
def slopes(draw: st.DrawFn, system: System) -> Slope:
    """A slope with up to two changes of pitch."""
    plain = Slope(draw(lengths(0, 2000, system)), draw(pitches()))
    broken: Slope | None = draw(_broken(plain, system))
    assert broken is not None
    return broken


@st.composite
def _broken(draw: st.DrawFn, slope: Slope | None, system: System) -> Slope | None:
    if slope is None:
        return None
    breaks, run = [], 0.0
    for _ in range(draw(st.integers(0, 2))):
        at: Length = draw(lengths(run + 300, run + 1500, system))
        breaks.append(PitchBreak(at, draw(pitches())))
        run = at.mm
    return msgspec.structs.replace(slope, breaks=tuple(breaks))


@st.composite
def _dormer(draw: st.DrawFn, name: str, room: Room, sides: list[Side], system: System) -> Dormer:
    return Dormer(
        name,
        draw(st.sampled_from(DormerKind)),
        draw(st.sampled_from(sides)),
        start=draw(lengths(0, 0.5 * room.length.mm, system)),
        width=draw(lengths(600, 0.45 * room.length.mm, system)),
        face=draw(lengths(0, 0.4 * room.width.mm, system)),
        front=draw(lengths(60, 200, system)),
        height=draw(lengths(1500, 3500, system)),
        pitch=draw(pitches()),
    )


@st.composite
def _wing(draw: st.DrawFn, name: str, room: Room, system: System) -> Wing:
    return Wing(
        name,
        draw(st.sampled_from(Side)),
        start=draw(lengths(0, 0.5 * room.length.mm, system)),
        width=draw(lengths(900, 0.45 * room.length.mm, system)),
        reach=draw(lengths(600, 6000, system)),
        first=draw(slopes(system)),
        last=draw(slopes(system)),
    )


@st.composite
def _purlin(draw: st.DrawFn, name: str, room: Room, system: System) -> Purlin:
    start = draw(st.none() | lengths(0, 0.4 * room.length.mm, system))
    end = draw(st.none() | lengths(0.5 * room.length.mm, room.length.mm, system))
    turned = draw(st.none() | st.none() | lengths(0, room.width.mm, system))
    return Purlin(
        name,
        draw(lengths(0, room.width.mm, system)),
        draw(timbers(system)),
        draw(lengths(800, 2500, system)),
        draw(st.sampled_from(Passing)),
        draw(lengths(0, 20, system)),
        start,
        end,
        turned,
    )


@st.composite
def _stair(draw: st.DrawFn, name: str, room: Room, system: System) -> StairOpening:
    across, along = (draw(lengths(0, side.mm, system)) for side in (room.width, room.length))
    wide, deep = (draw(lengths(600, 3000, system)) for _ in "wd")
    return StairOpening(name, across, along, wide, deep)


@st.composite
def _existing(draw: st.DrawFn, name: str, room: Room, system: System) -> ExistingWall:
    """A wall across the room or along it, so that its ends are apart."""
    across, along = (draw(lengths(0, side.mm, system)) for side in (room.width, room.length))
    long, thick = draw(lengths(500, 4000, system)), draw(lengths(60, 300, system))
    end = Point(long, along) if draw(st.booleans()) else Point(across, long)
    start = Point(Length(0.0), along) if end.along == along else Point(across, Length(0.0))
    return ExistingWall(name, start, end, thick)


@st.composite
def _kept(draw: st.DrawFn, name: str, room: Room, system: System) -> KeptClear:
    across, along = (
        draw(lengths(0, room.width.mm, system)),
        draw(lengths(0, room.length.mm, system)),
    )
    leans = draw(st.booleans())
    return KeptClear(
        name,
        draw(st.sampled_from(ClearKind)),
        across,
        along,
        draw(lengths(200, 900, system)),
        draw(lengths(200, 900, system)),
        draw(lengths(0, 100, system)),
        draw(lengths(1000, 3000, system)) if leans else None,
        draw(lengths(across.mm - 300, across.mm + 300, system)) if leans else None,
        draw(st.none() | lengths(along.mm - 300, along.mm + 300, system)) if leans else None,
    )
