"""What was measured, in words for sheet and window, and the lines that it is drawn by."""

import math

from core.drawing import timber
from core.drawing.elements import Drawing, Stroke
from core.drawing.pen import Pen
from core.drawing.view import View
from core.framing import Tried
from core.job import WallResult
from core.lengths import write
from core.model import Station, Wall
from core.roof import BestFit, Reading, Survey, floor_line
from core.wording import Message, Mm, Rad, Wording, message

SLIGHT = 0.4
"""What is less than this (mm) is not told: no tape shows it."""


AS_STATED = 0.05 / 12
"""A pitch within a twentieth in 12 of the stated one is as stated."""


def floor(wall: Wall, view: View) -> Drawing:
    """The floor line, through its measured points, a little longer than the wall."""
    if not wall.floor_points:
        return timber.floor(wall.run, view)
    past, line = view.model(4.0), floor_line(wall)
    left, right = (-past, line.height(-past)), (wall.run + past, line.height(wall.run + past))
    return (Stroke((left, *line.points(), right), Pen.FLOOR),)


def lowest(wall: Wall) -> float:
    """The height of the lowest place of the floor under a wall, 0 at most, mm."""
    return min(0.0, *(y for _, y in floor_line(wall).points()))


def stated_roof(result: WallResult) -> Drawing:
    """The stated roof line beside the measured one."""
    stated = result.inputs.stated
    if stated is None or not result.wall.roof_points:
        return ()
    return (Stroke(stated.points(), Pen.ABOVE_ROOF),)


def told(result: WallResult, wording: Wording) -> list[str]:
    """Everything measured at a wall in words, for its sheet: points, what follows, studs, fit."""
    wall, survey = result.wall, result.survey
    lines = summary(result, wording, brief=True)
    if survey and wall.floor_points:
        points = _points(wall.floor_points, survey.floor, wording)
        lines.insert(0, wording.say(message("measured.floor-points", points=points)))
    if survey and wall.roof_points:
        points = _points(wall.roof_points, survey.roof, wording)
        lines.insert(0, wording.say(message("measured.roof-points", points=points)))
    return [*lines, *studs(result, wording), *fit(wall, wording)]


def summary(result: WallResult, wording: Wording, brief: bool = False) -> list[str]:
    """Where heights were read from, the worst point, best-fit pitches, the fall of the floor.

    A `brief` one leaves out pitches that come out as stated.
    """
    survey = result.survey
    if survey is None:
        return []
    said = [*_read_from(result.wall), *_worst(survey)]
    sloping = [fit for fit in survey.slopes if abs(fit.stated) > 1e-9]
    said += [_best_fit(f) for f in sloping if not brief or abs(f.fitted - f.stated) > AS_STATED]
    if result.wall.floor_points:
        said += [_fall(survey), message("measured.floor-follows")]
    return [wording.say(text) for text in said]


def studs(result: WallResult, wording: Wording) -> list[str]:
    """The measured studs, and what test studs correct."""
    tried = result.frame.measured if result.frame else ()
    return [wording.say(stud_told(t, result.label_of[t.key])) for t in tried]


def stud_told(tried: Tried, label: str) -> Message:
    """What one measured stud differs by, and whom that corrects."""
    off, count = tried.difference, len(tried.corrected)
    name = "stud" if not tried.corrected else "one-corrected" if count == 1 else "corrected"
    return message(
        f"measured.{name}",
        label=label,
        length=Mm(tried.length),
        off=Mm(abs(off)),
        way=message("measured.longer" if off >= 0 else "measured.shorter"),
        count=count,
    )


def fit(wall: Wall, wording: Wording) -> list[str]:
    """How far studs are cut short of the plates, or long for a tight fit."""
    if wall.fit is None or abs(wall.fit.mm) < SLIGHT:
        return []
    name = "measured.gap" if wall.fit.mm > 0 else "measured.tight"
    return [wording.say(message(name, gap=Mm(abs(wall.fit.mm))))]


def signed(mm: float, wording: Wording) -> str:
    """A difference with its sign as the tape shows it.

    >>> from core.lengths import System, Tape
    >>> signed(-15.875, Wording("us", Tape.usual(System.INCH)))
    '−5/8"'
    """
    if abs(mm) < SLIGHT:
        return "±0"
    return f"{'−' if mm < 0 else '+'}{wording.length(abs(mm))}"


def _points(points: tuple[Station, ...], readings: tuple[Reading, ...], wording: Wording) -> str:
    """Each point as it was typed, with the difference from what is stated."""
    ordered = sorted(points, key=lambda p: p.at.mm)
    return ", ".join(
        f"{write(p.height)} @ {write(p.at)}{_off(reading, wording)}"
        for p, reading in zip(ordered, readings, strict=True)
    )


def _off(reading: Reading, wording: Wording) -> str:
    off = reading.difference
    return "" if abs(off) < SLIGHT else f" ({signed(off, wording)})"


def _read_from(wall: Wall) -> list[Message]:
    """What heights were read from, where the floor is not level or a line was used."""
    if wall.level_line is not None:
        return [message("measured.from-line", height=Mm(wall.level_line.mm))]
    both = wall.roof_points and wall.floor_points
    return [message("measured.from-floor")] if both else []


def _worst(survey: Survey) -> list[Message]:
    worst = survey.worst
    if worst is None:
        return []
    off = worst.difference
    if abs(off) < SLIGHT:
        return [message("measured.as-stated")]
    way = message("measured.higher" if off > 0 else "measured.lower")
    return [message("measured.worst", off=Mm(abs(off)), way=way, at=Mm(worst.at))]


def _best_fit(fit: BestFit) -> Message:
    return message(
        "measured.best-fit",
        left=Mm(fit.left),
        right=Mm(fit.right),
        fitted=_pitch(fit.fitted),
        stated=_pitch(fit.stated),
    )


def _pitch(slope: float) -> Message:
    rise = f"{abs(slope) * 12:.2f}".rstrip("0").rstrip(".")
    return message("measured.pitch", rise=rise, angle=Rad(math.atan(abs(slope))))


def _fall(survey: Survey) -> Message:
    if abs(survey.fall) < SLIGHT:
        return message("measured.no-fall")
    way = message("measured.lower" if survey.fall > 0 else "measured.higher")
    return message("measured.fall", off=Mm(abs(survey.fall)), way=way)
