"""Pitches as people would write them: the rise in 12 or whole degrees, else rise over run."""

import math
from fractions import Fraction

from core.lengths import Pitch, System, parse_pitch, write
from core.lengths.pitch import STEEPEST, STEEPEST_DEGREES
from core.lengths.writing import mixed
from core.model import Project
from gui.edits.stating import stated

WHOLE = {System.INCH: 2, System.METRIC: 1}
"""Pitches that are drawn to: so many to a rise of 1 in 12, or to a degree."""

FINE = {System.INCH: 16, System.METRIC: 10}
"""Pitches that are found when nothing is drawn to."""

_SAME = 1e-6


def stepped(tangent: float, system: System, parts: int) -> Pitch:
    """The nearest pitch of so many to a rise of 1 in 12 (inch), or to a degree (metric)."""
    size = tangent * 12 if system is System.INCH else math.degrees(math.atan(tangent))
    most = STEEPEST * 12 if system is System.INCH else STEEPEST_DEGREES
    count = min(max(round(size * parts), 0), math.ceil(most * parts) - 1)
    return of_count(count, system, parts)


def of_count(count: int, system: System, parts: int) -> Pitch:
    """The pitch of so many steps; ValueError where it is too steep for a roof or falls."""
    number = Fraction(count, parts)
    if system is System.INCH:
        return parse_pitch(f"{mixed(number)} in 12", system.bare_unit)
    return parse_pitch(f"{float(number):g}°", system.bare_unit)


def next_whole(pitch: Pitch, system: System, way: int, parts: int) -> Pitch:
    """The next pitch of so many to the step up (1) or down (-1); the same at the last one."""
    size = pitch.rise_in_12 if system is System.INCH else pitch.degrees
    exact = size * parts
    count = math.floor(exact + _SAME) + 1 if way > 0 else math.ceil(exact - _SAME) - 1
    try:
        return of_count(count, system, parts)
    except ValueError:
        return pitch


def of_rise_and_run(project: Project, rise: float, run: float) -> Pitch:
    """The pitch of a rise (mm) in a run, whole where it is one; ValueError where it is no roof."""
    if run <= 0 or rise < 0:
        raise ValueError("a slope rises from its eave to the ridge")
    tangent, system = rise / run, project.system
    if tangent < STEEPEST:
        whole = stepped(tangent, system, WHOLE[system])
        if abs(whole.tangent - tangent) < _SAME:
            return whole
    up, along = (write(stated(project, mm)) for mm in (rise, run))
    return parse_pitch(f"{up} / {along}", system.bare_unit)
