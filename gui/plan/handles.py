"""What the held wall can be taken by in plan: its ends, and the knobs that turn it. No Qt."""

import enum
import math

import msgspec

from core.drawing.plan_ground import at
from core.framing import Footprint
from core.model import Side
from gui.sketcher.camera import XY, Camera

REACH_PX = 9.0
"""How near to a handle the pointer has to be."""

BEYOND_PX = 20.0
"""How far past an end the knob stands that turns the wall."""


class Grasp(enum.Enum):
    """What a handle does: LENGTHEN draws its end along, TURN goes about the other end."""

    LENGTHEN = "lengthen"
    TURN = "turn"


class Handle(msgspec.Struct, frozen=True):
    """A handle of a wall at one of its ends, px, and the plan point (mm) it turns about."""

    grasp: Grasp
    end: Side
    pos: XY
    about: XY


def handles(ground: Footprint, camera: Camera, *, turns: bool) -> tuple[Handle, ...]:
    """The handles of a wall: squares at both ends, knobs beyond them if it can be turned."""
    half, beyond = ground.width / 2, BEYOND_PX / camera.scale
    left, right = at(ground, 0.0, 0.0), at(ground, ground.run, 0.0)
    places = (
        (Grasp.LENGTHEN, Side.LEFT, 0.0, right),
        (Grasp.LENGTHEN, Side.RIGHT, ground.run, left),
        (Grasp.TURN, Side.LEFT, -beyond, right),
        (Grasp.TURN, Side.RIGHT, ground.run + beyond, left),
    )
    return tuple(
        Handle(grasp, end, camera.to_screen(at(ground, along, half)), about)
        for grasp, end, along, about in places
        if turns or grasp is Grasp.LENGTHEN
    )


def handle_at(found: tuple[Handle, ...], pos: XY) -> Handle | None:
    """The handle nearest to a px, if it is near enough."""
    near = [h for h in found if math.dist(h.pos, pos) <= REACH_PX]
    return min(near, key=lambda h: math.dist(h.pos, pos)) if near else None
