"""The same job seen another way: turned in plan, mirrored, or in the other system's unit."""

from __future__ import annotations

from typing import Any

import msgspec

from core.lengths import Length, System
from core.model import (
    Dormer,
    KeptClear,
    Point,
    Project,
    Purlin,
    Room,
    StairOpening,
    WallRules,
    Wing,
)


def half_turned(project: Project) -> Project:
    """The job turned half a turn in plan, so that each wall is as it was.

    It has no purlins that are turned themselves, and nothing hangs on its rafters, whose layout
    begins at the start of the room: see `without_rafters`.
    """
    room, replace = project.room, msgspec.structs.replace
    wide, long = room.width.mm, room.length.mm

    def point(p: Point) -> Point:
        return Point(Length(wide - p.across.mm), Length(long - p.along.mm))

    turned = replace(
        room,
        left=room.right,
        right=room.left,
        start_hip=room.end_hip,
        end_hip=room.start_hip,
        dormers=tuple(_dormer(d, long) for d in room.dormers),
        wings=tuple(_wing(w, long) for w in room.wings),
        purlins=tuple(_purlin(p, wide, long) for p in room.purlins),
        kept_clear=tuple(_kept(k, wide, long) for k in room.kept_clear),
        stair_openings=tuple(_stair(s, wide, long) for s in room.stair_openings),
        existing_walls=tuple(
            replace(e, left_end=point(e.left_end), right_end=point(e.right_end))
            for e in room.existing_walls
        ),
    )

    walls = tuple(
        replace(w, left_end=point(w.left_end), right_end=point(w.right_end)) for w in project.walls
    )
    return replace(project, room=turned, walls=walls)


def quarter_turned(project: Project) -> Project:
    """The job turned a quarter, so that its hips become its slopes: u becomes v.

    The room needs four slopes and nothing else that runs with the ridge.
    """
    room, replace = project.room, msgspec.structs.replace

    # A place (u, v) comes to (length - v, u): the start hip is then on the right.
    def point(p: Point) -> Point:
        return Point(Length(room.length.mm - p.along.mm), p.across)

    turned = replace(
        room,
        width=room.length,
        length=room.width,
        left=room.end_hip,
        right=room.start_hip,
        start_hip=room.left,
        end_hip=room.right,
        stair_openings=tuple(_stair_on_its_side(s, room) for s in room.stair_openings),
        existing_walls=tuple(
            replace(e, left_end=point(e.left_end), right_end=point(e.right_end))
            for e in room.existing_walls
        ),
    )

    walls = tuple(
        replace(w, left_end=point(w.left_end), right_end=point(w.right_end)) for w in project.walls
    )
    return replace(project, room=turned, walls=walls)


def without_rafters(project: Project) -> Project:
    """The job without what depends on where single rafters are, and on turned purlins."""
    replace = msgspec.structs.replace
    purlins = tuple(p for p in project.room.purlins if p.end_left is None)
    kept = {p.id for p in purlins}
    walls = tuple(
        replace(w, rafter_backing=None, passes=tuple(p for p in w.passes if p.purlin in kept))
        for w in project.walls
    )
    return replace(project, room=replace(project.room, purlins=purlins), walls=walls)


def in_the_other_system(project: Project) -> Project:
    """The job with every length written in a unit of the other system, and just as long.

    Rules that are usual in one system are stated, since they differ in the other.
    """
    system = System.METRIC if project.system is System.INCH else System.INCH
    other: Project = _converted(project, system)
    return msgspec.structs.replace(other, system=system)


def with_stated_rules(project: Project) -> Project:
    """The job with the length of its boards stated in every wall."""
    replace = msgspec.structs.replace
    walls = tuple(
        replace(w, rules=replace(w.rules or WallRules(), board=Length(1200.0)))
        for w in project.walls
    )
    return replace(project, walls=walls)


def _converted(value: Any, system: System) -> Any:
    if isinstance(value, Length):
        return Length(value.mm, system.bare_unit)
    if isinstance(value, tuple):
        return tuple(_converted(item, system) for item in value)
    if isinstance(value, msgspec.Struct):
        fields = {f: _converted(getattr(value, f), system) for f in value.__struct_fields__}
        return type(value)(**fields)
    return value


def _dormer(dormer: Dormer, long: float) -> Dormer:
    start = Length(long - dormer.start.mm - dormer.width.mm)
    return msgspec.structs.replace(dormer, side=dormer.side.other, start=start)


def _wing(wing: Wing, long: float) -> Wing:
    start = Length(long - wing.start.mm - wing.width.mm)
    return msgspec.structs.replace(
        wing, side=wing.side.other, start=start, first=wing.last, last=wing.first
    )


def _purlin(purlin: Purlin, wide: float, long: float) -> Purlin:
    ends = (None if at is None else Length(long - at.mm) for at in (purlin.end, purlin.start))
    start, end = ends
    left = Length(wide - purlin.left.mm - purlin.timber.thickness.mm)
    return msgspec.structs.replace(purlin, left=left, start=start, end=end)


def _kept(kept: KeptClear, wide: float, long: float) -> KeptClear:
    across = Length(wide - kept.across.mm - kept.wide.mm)
    along = Length(long - kept.along.mm - kept.deep.mm)
    up_across, up_along = (
        None if at is None else Length(whole - at.mm - size.mm)
        for at, whole, size in ((kept.up_across, wide, kept.wide), (kept.up_along, long, kept.deep))
    )
    return msgspec.structs.replace(
        kept, across=across, along=along, up_across=up_across, up_along=up_along
    )


def _stair(stair: StairOpening, wide: float, long: float) -> StairOpening:
    across = Length(wide - stair.across.mm - stair.wide.mm)
    along = Length(long - stair.along.mm - stair.deep.mm)
    return msgspec.structs.replace(stair, across=across, along=along)


def _stair_on_its_side(stair: StairOpening, room: Room) -> StairOpening:
    across = Length(room.length.mm - stair.along.mm - stair.deep.mm)
    return StairOpening(stair.id, across, stair.across, wide=stair.deep, deep=stair.wide)
