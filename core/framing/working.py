"""The working of a number: named terms that add up to it, and how they are printed."""

import enum
import math
from collections.abc import Callable

import msgspec

from core.lengths import Tape, write_degrees
from core.wording import Message, Wording, message


class Unit(enum.Enum):
    """What a number counts: mm, pieces, kg, radians, or nothing (one over the other)."""

    LENGTH = "length"
    COUNT = "count"
    WEIGHT = "weight"
    ANGLE = "angle"
    RATIO = "ratio"


class Term(msgspec.Struct, frozen=True):
    """One line of a sum: what it is, and its signed value in mm, pieces, kg, radians or nothing."""

    name: Message
    value: float
    unit: Unit = Unit.LENGTH


class Working(msgspec.Struct, frozen=True):
    """How a number comes about.

    The terms of a length, a count or a weight add up to it. Those of an angle are the steps to it,
    each from the ones before; the last of them is the angle.
    """

    title: Message
    terms: tuple[Term, ...]
    unit: Unit = Unit.LENGTH

    @property
    def exact(self) -> float:
        """The number in full, mm, pieces, kg or radians."""
        if self.unit is Unit.ANGLE:
            return self.terms[-1].value
        return math.fsum(term.value for term in self.terms)


class Line(msgspec.Struct, frozen=True):
    """A printed line: its name, its number, and that number in the finest steps (0 in angles)."""

    name: str
    text: str
    steps: int = 0


class Printed(msgspec.Struct, frozen=True):
    """A working as it is read: lines that add up as they stand, and what they come to.

    `steps` is the result as the lines count: in 1/64 in., 0.1 mm, 0.1 lb, 0.1 kg or pieces.
    """

    title: str
    lines: tuple[Line, ...]
    result: str
    steps: int = 0

    @property
    def text(self) -> str:
        """All of it as plain text, a line each, name and number parted by a tab."""
        rows = (f"{line.name}\t{line.text}" for line in self.lines)
        return "\n".join((self.title, *rows, f"=\t{self.result}"))


def printed(working: Working, wording: Wording) -> Printed:
    """A working in words and numbers.

    Terms are shown to 1/64 in. or 0.1 mm. What they are short of the number on the person's tape
    stands in the last line as the rounding, so that the lines add up as they are printed.
    """
    finest = wording.finest
    title = finest.say(working.title)
    if working.unit is Unit.ANGLE:
        lines = tuple(Line(finest.say(t.name), _step_text(t, finest)) for t in working.terms)
        return Printed(title, lines, write_degrees(working.exact))
    if working.unit is Unit.COUNT:
        counts = [(finest.say(term.name), round(term.value)) for term in working.terms]
        total = sum(count for _, count in counts)
        return Printed(title, _lines(counts, str), str(total), total)
    if working.unit is Unit.WEIGHT:
        return _weighed(working, wording, title)
    fine, tape = finest.tape, wording.tape
    counts = [(finest.say(term.name), fine.steps(term.value)) for term in working.terms]
    total = tape.steps(working.exact) * _fine_in_a_step(tape)
    if rest := total - sum(count for _, count in counts):
        counts.append((finest.say(message("working.rounding")), rest))
    lines = _lines(counts, lambda count: fine.text(count * fine.step_mm))
    return Printed(title, lines, tape.text(working.exact), total)


def _weighed(working: Working, wording: Wording, title: str) -> Printed:
    """A sum of weights to a tenth, rounded last as weights are shown."""
    tenths = [
        (wording.say(term.name), round(10 * wording.weighed(term.value))) for term in working.terms
    ]
    result = wording.weight(working.exact)
    total = round(10 * float(result.split()[0]))
    if rest := total - sum(count for _, count in tenths):
        tenths.append((wording.say(message("working.rounding-weight")), rest))
    lines = _lines(tenths, lambda count: f"{count / 10:.1f}")
    return Printed(title, lines, result, total)


def degrees(radians: float) -> str:
    """An angle in degrees, fine enough to work on with: to a thousandth, without needless zeros."""
    return f"{math.degrees(radians):.3f}".rstrip("0").rstrip(".") + "°"


def _fine_in_a_step(tape: Tape) -> int:
    return round(tape.step_mm / tape.finest.step_mm)


def _lines(counts: list[tuple[str, int]], text: Callable[[int], str]) -> tuple[Line, ...]:
    """The lines with their signs: none before the first number unless it is taken off."""
    made = []
    for number, (name, count) in enumerate(counts):
        sign = "−" if count < 0 else "+" if number else ""
        made.append(Line(name, f"{sign} {text(abs(count))}".strip(), count))
    return tuple(made)


def _step_text(term: Term, finest: Wording) -> str:
    if term.unit is Unit.ANGLE:
        return degrees(term.value)
    if term.unit is Unit.RATIO:
        return f"{term.value:.4f}"
    return finest.length(term.value)
