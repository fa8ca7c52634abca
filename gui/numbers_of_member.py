"""The numbers of a piece of timber, in words and figures; no Qt."""

import math

from core.checks import cut_message, rip_message, setting_message
from core.drawing.table import cuts_text, notches_text, stock_name
from core.framing import Mark, Member, Role, past_stops
from core.job import Number, WallResult
from core.model import USUAL_SAW
from core.wording import Mm, Rad, Wording, message
from gui.figure import Figure, Numbers, role_word


def member_numbers(result: WallResult, member: Member, wording: Wording) -> Numbers:
    figures = [
        *_lengths(member, wording),
        _cuts(member, wording),
        *_notches(member, wording),
        *_face_up(member, wording),
        *_past_stops(result, member, wording),
        _stock_figure(member, wording),
        *(_mark(result, mark, wording) for mark in result.marks if mark.member == member.key),
        *_rafters(result, member, wording),
    ]
    what = role_word(member.role, wording)
    return Numbers(result.label_of[member.key], what, tuple(figures))


def _lengths(member: Member, wording: Wording) -> list[Figure]:
    long, short = wording.length(member.long_point), wording.length(member.short_point)
    if long == short:
        return [Figure(wording.word("held.length"), long, large=True, number=Number.LONG)]
    figures = [
        Figure(wording.word("held.long-point"), long, large=True, number=Number.LONG),
        Figure(wording.word("held.short-point"), short, large=True, number=Number.SHORT),
    ]
    overall = wording.length(member.overall)
    if overall != long:
        caption = wording.word("held.overall")
        figures.append(Figure(caption, overall, number=Number.OVERALL))
    return figures


def _cuts(member: Member, wording: Wording) -> Figure:
    """Both end cuts; a square one has no angle to work."""
    facets = (*member.first_cut, *member.last_cut)
    angled = member.rip is not None or not all(facet.is_square for facet in facets)
    text = cuts_text(member, wording)
    number = Number.CUTS if angled else None
    return Figure(wording.word("held.cuts"), text, large=True, number=number)


def _notches(member: Member, wording: Wording) -> list[Figure]:
    caption, texts = wording.word("held.notch"), notches_text(member, wording)
    return [
        Figure(caption, text, number=Number.NOTCH, plate=notch.purlin)
        for notch, text in zip(member.notches, texts, strict=True)
    ]


def _face_up(member: Member, wording: Wording) -> list[Figure]:
    """Which face lies up on the saw, where it makes a difference."""
    faces = [f.face_up for f in (*member.first_cut, *member.last_cut) if f.face_up != "any"]
    texts = [wording.word(f"face.{face}") for face in dict.fromkeys(faces)]
    return [Figure(wording.word("held.face-up"), " · ".join(texts))] if texts else []


def _rafters(result: WallResult, member: Member, wording: Wording) -> list[Figure]:
    """The middles of the rafters that a top plate crosses, along it from its left end."""
    crossings = result.frame.nailed.over_plate.crossings if result.frame else ()
    if member.role is not Role.TOP_PLATE:
        return []
    (left, low), (right, high), *_ = member.near
    run = math.hypot(1.0, (high - low) / (right - left))
    middles = ((c.left + c.right) / 2 for c in crossings)
    along = [wording.length((x - left) * run) for x in middles if left <= x <= right]
    if not along:
        return []
    caption = wording.word("held.rafters-over")
    return [Figure(caption, ", ".join(along), number=Number.RAFTERS)]


def _past_stops(result: WallResult, member: Member, wording: Wording) -> list[Figure]:
    """How the cuts are made that the saw does not reach as it stands."""
    saw = result.inputs.habits.saw or USUAL_SAW
    hows = [(cut_message(f), setting_message(s)) for f, s in past_stops(member, saw)]
    if member.rip is not None and (how := rip_message(member.rip, saw)) is not None:
        hows.append((message("saw.rip-cut", bevel=Rad(abs(member.rip.bevel))), how))
    return [
        Figure(
            wording.say(message("held.past-stops", cut=cut)), wording.say(how), number=Number.SAW
        )
        for cut, how in hows
    ]


def _stock_figure(member: Member, wording: Wording) -> Figure:
    number = Number.BUILT_UP if member.spacer > 0 else None
    return Figure(wording.word("held.stock"), _stock(member, wording), number=number)


def _stock(member: Member, wording: Wording) -> str:
    name = stock_name(member, wording)
    if member.spacer > 0:
        count = member.count - 1
        said = message("table.spacers", count=count, thick=Mm(member.spacer))
        thick = member.count * member.thickness + count * member.spacer
        built = message("held.built-up", thick=Mm(thick))
        return f"{member.count} × {name}, {wording.say(said)}: {wording.say(built)}"
    return name if member.count == 1 else f"{member.count} × {name}"


def _mark(result: WallResult, mark: Mark, wording: Wording) -> Figure:
    plate = result.frame.member(mark.plate) if result.frame else None
    caption = role_word(plate.role, wording) if plate else wording.word("held.rafter")
    label = result.label_of.get(mark.plate, "")
    text = wording.say(
        message(
            "held.mark",
            along=Mm(mark.along),
            end=wording.word(f"end.{mark.origin.value}"),
            letter=mark.letter,
            side=wording.word(f"side.{mark.x_side.value}"),
        )
    )
    on = wording.say(message("held.mark-on", plate=caption, label=label))
    return Figure(on, text, number=Number.MARK, plate=mark.plate)
