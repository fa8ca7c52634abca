"""What a sheet says of a wall's layout: its rules where they are not the usual, its bare marks."""

from core.checks import bare_messages
from core.job import WallResult
from core.model import Near, WallRules
from core.wording import Message, Mm, Wording, message


def layout_notes(result: WallResult, wording: Wording) -> list[str]:
    """The sentences for the strip at the foot of a sheet; none where there is nothing to say."""
    wall, frame = result.wall, result.frame
    said: list[Message] = []
    if wall.layout.origin is not None:
        said.append(message("sheet.layout-point", at=Mm(wall.layout.origin.mm)))
    said += _rules(wall.goes_by)
    said += _soles(result)
    bare = bare_messages(wall, frame, result.label_of) if frame is not None else ()
    notes = [wording.say(text) for text in said]
    if bare:
        marks = "; ".join(wording.say(text) for _, text in bare)
        notes.append(wording.say(message("sheet.bare-marks", marks=marks)))
    return notes


def _rules(rules: WallRules) -> list[Message]:
    """The rules for layout studs near kings and ends, but for the usual one."""
    stated = (("kings", rules.near_kings), ("ends", rules.near_ends))
    closer = Mm(rules.closer_than.mm) if rules.closer_than is not None else Mm(0.0)
    return [
        message(f"sheet.{near.value}-{what}", closer=closer)
        for what, near in stated
        if near is not Near.DROP
    ]


def _soles(result: WallResult) -> list[Message]:
    """Where the sole plate is cut out of the doorways, or that it was cut before."""
    wall, frame = result.wall, result.frame
    placed = frame.openings if frame is not None else ()
    stated = [p.opening for p in placed if p.fit.fits and p.opening.sill.mm <= 0]
    if stated and wall.goes_by.cut_sole_first:
        return [message("sheet.sole-pieces")]
    spans = [(o.left.mm, o.left.mm + o.width.mm) for o in stated]
    return [message("sheet.sole-cut-out", low=Mm(low), high=Mm(high)) for low, high in spans]
