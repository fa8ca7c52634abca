"""What the plan says of a wall's neighbours, in words: walls that meet it, rafters over it."""

import math

from core.framing import Nailed
from core.job import WallResult
from core.wording import Mm, Wording, message


def meeting_lines(result: WallResult | None, wording: Wording) -> str:
    """Which walls end against this one and where, a line each; that none does."""
    met = result.inputs.around.meetings if result else ()
    lines = [
        wording.say(message("held.met", other=m.other, left=Mm(m.left), right=Mm(m.right)))
        for m in met
    ]
    return "\n".join(lines) or wording.word("held.met-none")


def rafter_line(found: Nailed | None, wording: Wording) -> str:
    """Where the plate crosses rafters, or how wide the gap is that it runs in."""
    if found is None:
        return ""
    crossings, between = found.over_plate.crossings, found.over_plate.between
    if crossings:
        places = ", ".join(wording.length((c.left + c.right) / 2) for c in crossings)
        return wording.say(message("held.crosses", count=len(crossings), places=places))
    if between is None:
        return wording.word("held.under-rafter")
    if not math.isfinite(between.clear):
        return wording.word("held.one-rafter")
    pieces = sum("/rafters/" in m.key for m in found.members)
    clear = Mm(between.clear)
    if not pieces:
        return wording.say(message("held.between-bare", clear=clear))
    return wording.say(message("held.between", clear=clear, count=pieces))
