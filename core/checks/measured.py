"""The cautions that measured lines and measured studs give rise to."""

from core.checks.caution import Caution, Severity
from core.framing import Frame, PlacedOpening, Tried, spoken
from core.model import Wall
from core.roof import Reading, Survey, floor_line
from core.roof.survey import ASTRAY
from core.wording import Message, Mm, message

FLOOR_OFF = 3.175
"""A floor 1/8 in. off the level that an opening's height is taken from is told, mm."""


def measured_cautions(wall: Wall, frame: Frame, survey: Survey | None) -> tuple[Caution, ...]:
    """What looks mistyped, measured studs that are gone, floors that change a clear height."""
    found: list[Message] = []
    if survey is not None:
        found += [_point(wall, "roof", r) for r in survey.roof if r.expected is not None]
        found += [_point(wall, "floor", r) for r in survey.floor if r.expected is not None]
    cautions = [Caution(Severity.WARNING, wall.letter, text) for text in found]
    cautions += [_stud(wall, frame, t) for t in frame.measured if abs(t.difference) >= ASTRAY]
    cautions += _gone(wall, frame)
    cautions += [c for placed in frame.openings for c in _floor_under(wall, placed)]
    return tuple(cautions)


def _point(wall: Wall, line: str, reading: Reading) -> Message:
    off = reading.measured - (reading.expected or 0.0)
    return message(
        f"measured.{line}-astray",
        letter=wall.letter,
        at=Mm(reading.at),
        off=Mm(abs(off)),
        way=message("measured.high" if off > 0 else "measured.low"),
        expected=Mm(_as_read(wall, line, reading)),
    )


def _as_read(wall: Wall, line: str, reading: Reading) -> float:
    """The expected height as the tape would have read it, mm."""
    expected = reading.expected or 0.0
    level = wall.level_line
    if line == "floor":
        return expected if level is None else level.mm - expected
    return expected - (floor_line(wall).height(reading.at) if level is None else level.mm)


def _stud(wall: Wall, frame: Frame, tried: Tried) -> Caution:
    member = frame.member(tried.key)
    text = message(
        "measured.stud-astray",
        letter=wall.letter,
        at=Mm(member.left if member else 0.0),
        length=Mm(tried.length),
        worked=Mm(tried.worked),
        off=Mm(abs(tried.difference)),
    )
    return Caution(Severity.WARNING, tried.key, text)


def _gone(wall: Wall, frame: Frame) -> list[Caution]:
    """Measured studs that do not stand in the wall any more."""
    there = {tried.key for tried in frame.measured}
    return [
        Caution(
            Severity.WARNING,
            stud.key,
            message("measured.stud-gone", letter=wall.letter, length=Mm(stud.length.mm)),
        )
        for stud in wall.measured_studs
        if stud.key not in there
    ]


def _floor_under(wall: Wall, placed: PlacedOpening) -> list[Caution]:
    """Heights are level, from the datum; over a floor out of level the clear height is another."""
    if not wall.floor_points:
        return []
    left = placed.opening.left.mm
    right = left + placed.opening.width.mm
    under = floor_line(wall).between(left, right)
    highest = max(max(s.at(s.left), s.at(s.right)) for s in under)
    if abs(highest) < FLOOR_OFF:
        return []
    text = message(
        "measured.floor-under",
        letter=wall.letter,
        opening=spoken(placed.opening.id),
        off=Mm(abs(highest)),
        way=message("measured.higher" if highest > 0 else "measured.lower"),
        clear=Mm(placed.opening.head.mm - highest),
    )
    return [Caution(Severity.WARNING, placed.key, text)]
