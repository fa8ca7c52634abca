"""A slope as lines over its own section: distance in from the eave wall, height up."""

import math

import msgspec

from core.model import Slope


class Line(msgspec.Struct, frozen=True):
    """The line `height` + `rise` * distance, mm, that a slope follows from a distance `start` on.

    `height` is where the line would be at the eave wall.
    """

    start: float
    height: float
    rise: float


class Stretch(msgspec.Struct, frozen=True):
    """A stretch of a slope from `start` to `end` in from the eave: the lowest of its `lines`."""

    start: float
    end: float
    lines: tuple[Line, ...]


def lines(slope: Slope) -> tuple[Line, ...]:
    """The lines of a slope from the eave inward, each beginning where the last one ends."""
    found = [Line(-math.inf, slope.eave_height.mm, slope.pitch.tangent)]
    for at in slope.breaks:
        last, run = found[-1], at.run.mm
        height = last.height + (last.rise - at.pitch.tangent) * run
        found.append(Line(run, height, at.pitch.tangent))
    return tuple(found)


def stretches(slope: Slope) -> tuple[Stretch, ...]:
    """A slope cut where it is hollow, so that every stretch is the lowest of its lines.

    A gambrel's change to a lesser pitch bulges: there the lines below count on both sides. A kicked
    eave's change to a greater one is hollow, and one stretch ends and the next begins.
    """
    found: list[Stretch] = []
    for line in lines(slope):
        if found and line.rise <= found[-1].lines[-1].rise:
            found[-1] = msgspec.structs.replace(found[-1], lines=(*found[-1].lines, line))
            continue
        if found:
            found[-1] = msgspec.structs.replace(found[-1], end=line.start)
        found.append(Stretch(line.start, math.inf, (line,)))
    return tuple(found)
