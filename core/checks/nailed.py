"""The cautions that blocking, backing, walls that meet and a slip gap give rise to."""

import math

from core.checks.caution import Caution, Severity
from core.framing import Frame, Meeting, Surroundings, Unbacked, keys, spoken
from core.model import Wall
from core.wording import Mm, message


def nailed_cautions(wall: Wall, frame: Frame, around: Surroundings) -> tuple[Caution, ...]:
    """What will trouble the builder in what else is nailed into this wall."""
    return (
        *(_in_opening(wall, met, frame) for met in around.meetings if _opening(met, frame)),
        *(_not_chosen(wall, met) for met in around.meetings if wall.meeting is None),
        *(_empty_row(wall, row, frame) for row in frame.nailed.empty_rows),
        *(_unbacked(wall, gap) for gap in frame.nailed.unbacked),
        *_no_rafter(wall, frame),
        *_slip(wall),
    )


def _opening(met: Meeting, frame: Frame) -> str | None:
    """The opening that a wall ends in, if it does."""
    for placed in frame.openings:
        left = placed.opening.left.mm
        right = left + placed.opening.width.mm
        if placed.fit.fits and met.left < right - 1e-6 and met.right > left + 1e-6:
            return placed.opening.id
    return None


def _in_opening(wall: Wall, met: Meeting, frame: Frame) -> Caution:
    opening = spoken(_opening(met, frame) or "")
    text = message("meeting.in-opening", letter=wall.letter, other=met.other, opening=opening)
    return Caution(Severity.WARNING, wall.letter, text)


def _not_chosen(wall: Wall, met: Meeting) -> Caution:
    values = {"letter": wall.letter, "other": met.other}
    text = message("meeting.not-chosen", left=Mm(met.left), right=Mm(met.right), **values)
    return Caution(Severity.WARNING, wall.letter, text)


def _empty_row(wall: Wall, row: int, frame: Frame) -> Caution:
    heights = wall.blocking.heights if wall.blocking else ()
    at, highest = Mm(heights[row].mm), frame.nailed.highest_row
    if highest is None:
        text = message("blocking.nowhere", letter=wall.letter, at=at)
    else:
        text = message("blocking.no-bay", letter=wall.letter, at=at, highest=Mm(highest))
    return Caution(Severity.WARNING, wall.letter, text)


def _unbacked(wall: Wall, gap: Unbacked) -> Caution:
    key = keys.opening(wall.letter, gap.fixture)
    fixture, left, right = spoken(gap.fixture), Mm(gap.left), Mm(gap.right)
    if gap.height is None:
        text = message(
            "fixture.unbacked", letter=wall.letter, fixture=fixture, left=left, right=right
        )
    else:
        text = message(
            "fixture.height",
            letter=wall.letter,
            fixture=fixture,
            left=left,
            right=right,
            nearest=Mm(gap.height),
        )
    return Caution(Severity.WARNING, key, text)


def _no_rafter(wall: Wall, frame: Frame) -> list[Caution]:
    """Blocks between rafters are stated, and there is a rafter on one side only."""
    between = frame.nailed.over_plate.between
    if wall.rafter_backing is None or between is None or math.isfinite(between.clear):
        return []
    text = message("rafters.one-side", letter=wall.letter)
    return [Caution(Severity.WARNING, wall.letter, text)]


def _slip(wall: Wall) -> list[Caution]:
    """A plate short of the rafters: it carries nothing, and leaves a gap for fire to pass."""
    if wall.slip_gap is None:
        return []
    text = message("wall.slip-gap", letter=wall.letter, gap=Mm(wall.slip_gap.mm))
    return [Caution(Severity.WARNING, wall.letter, text)]
