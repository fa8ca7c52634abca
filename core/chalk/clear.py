"""How far a wall in plan is from what stands around it, square to its faces and past its ends."""

import msgspec

from core.framing import Footprint

XY = tuple[float, float]


class Clear(msgspec.Struct, frozen=True):
    """A clear distance: from a point of the wall to the first thing in the way, mm apart."""

    start: XY
    end: XY
    run: float


def clearances(
    ground: Footprint, edge: tuple[XY, ...], others: tuple[Footprint, ...]
) -> tuple[Clear | None, Clear | None, Clear | None, Clear | None]:
    """Clear distances before face A, behind the far face, past the left and the right end.

    Those beside the wall are taken a third of the way along it. `edge` is the outline of the room.
    None where nothing is in the way, or the wall touches it.
    """
    sides = [*_sides(edge), *(side for other in others for side in _sides(_corners(other)))]
    beside, half = ground.run / 3, ground.width / 2
    (du, dv), (au, av) = ground.along, ground.away
    rays = (
        (_on(ground, beside, 0.0), (-au, -av)),
        (_on(ground, beside, ground.width), (au, av)),
        (_on(ground, 0.0, half), (-du, -dv)),
        (_on(ground, ground.run, half), (du, dv)),
    )
    before, behind, left, right = (_clear(start, way, sides) for start, way in rays)
    return before, behind, left, right


def _clear(start: XY, way: XY, sides: list[tuple[XY, XY]]) -> Clear | None:
    distances = (d for side in sides if (d := _along(start, way, side)) is not None)
    run = min(distances, default=None)
    if run is None or run < 1.0:
        return None
    return Clear(start, (start[0] + way[0] * run, start[1] + way[1] * run), run)


def _along(start: XY, way: XY, side: tuple[XY, XY]) -> float | None:
    """How far from a point in a direction a side is met, mm; None where it is not."""
    (ax, ay), (bx, by) = side
    dx, dy = bx - ax, by - ay
    turn = way[0] * dy - way[1] * dx
    if abs(turn) <= 1e-9:
        return None
    to = ((ax - start[0]) * dy - (ay - start[1]) * dx) / turn
    share = ((ax - start[0]) * way[1] - (ay - start[1]) * way[0]) / turn
    return to if to >= -0.5 and -1e-9 <= share <= 1.0 + 1e-9 else None


def _sides(outline: tuple[XY, ...]) -> list[tuple[XY, XY]]:
    return list(zip(outline, (*outline[1:], outline[0]), strict=True))


def _corners(ground: Footprint) -> tuple[XY, ...]:
    run, width = ground.run, ground.width
    return tuple(_on(ground, x, y) for x, y in ((0.0, 0.0), (run, 0.0), (run, width), (0.0, width)))


def _on(ground: Footprint, along: float, away: float) -> XY:
    (u, v), (du, dv), (au, av) = ground.start, ground.along, ground.away
    return u + du * along + au * away, v + dv * along + av * away
