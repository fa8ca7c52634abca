"""How a chalk line is held with the pointer: round steps and a reach that suit the zoom."""

from core.chalk import Grip
from core.lengths import System, Tape

REACH_PX = 9.0
"""How near, on screen, a point has to come to a line to be drawn to it."""

_STEP_PX = 1.2
"""The least of a step on screen."""

_STEPS = {
    System.INCH: tuple(25.4 * inches for inches in (1, 2, 3, 6, 12)),
    System.METRIC: (10.0, 20.0, 50.0, 100.0, 200.0),
}
"""Round steps coarser than the tape's, mm."""


def grip_of(tape: Tape, scale: float, *, free: bool) -> Grip:
    """The grip at `scale` px for each mm; held freely the tape's own step counts."""
    if free:
        return Grip(tape.step_mm, 0.0, free=True)
    steps = (tape.step_mm, *_STEPS[tape.system])
    step = next((s for s in steps if s * scale >= _STEP_PX), steps[-1])
    return Grip(step, REACH_PX / scale)


def larger_step(tape: Tape) -> float:
    """A step of an arrow key that is held with Ctrl: a foot, or 250 mm."""
    return 304.8 if tape.system is System.INCH else 250.0
