"""Surfaces out of plumb that a wall ends against, told in words."""

from core.framing import Frame, Lean, Member, Role, keys
from core.job import WallResult
from core.model import EndStud, Side
from core.wording import Message, Mm, Rad, Wording, message


def lean_notes(result: WallResult, wording: Wording) -> tuple[str, ...]:
    """A few sentences for each end against a surface out of plumb."""
    frame = result.frame
    if frame is None:
        return ()
    said = [told for lean in frame.leans for told in _told(result, frame, lean)]
    return tuple(wording.say(told) for told in said)


def _told(result: WallResult, frame: Frame, lean: Lean) -> list[Message]:
    end = message(f"end.{lean.side.value}")
    way = "lean.out" if lean.offset > 0 else "lean.in"
    found = [message(way, end=end, by=Mm(abs(lean.offset)))]
    stud = frame.member(keys.end(result.wall.letter, lean.side))
    if stud is not None:
        found.append(_stud(lean, stud, result.label_of[stud.key]))
    plate = _plate(frame, lean)
    if plate is not None:
        longer = _outward(lean, plate)
        name = "lean.plate-longer" if longer > 0 else "lean.plate-shorter"
        found.append(message(name, label=result.label_of[plate.key], by=Mm(abs(longer))))
    return found


def _stud(lean: Lean, stud: Member, label: str) -> Message:
    """How the end stud stands: the gap that tapers, or how far it leans."""
    if lean.stud is EndStud.LEANING:
        angle = Rad(abs(stud.lean))
        return message("lean.stud-leans", label=label, angle=angle, long=Mm(stud.long_point))
    foot, top = (_gap(lean, stud, y) for y in (stud.bottom, _top(lean, stud)))
    return message("lean.stud-plumb", label=label, foot=Mm(foot), top=Mm(top))


def _top(lean: Lean, stud: Member) -> float:
    """The height of a stud's top at its outer edge, mm."""
    return stud.span(lean.side)[1]


def _gap(lean: Lean, stud: Member, y: float) -> float:
    """How far a plumb stud stands from the surface at a height, mm."""
    return stud.left - lean.at(y) if lean.side is Side.LEFT else lean.at(y) - stud.right


def _plate(frame: Frame, lean: Lean) -> Member | None:
    """The lowest top plate at that end."""
    plates = [m for m in frame.members if m.role is Role.TOP_PLATE]
    outer = min if lean.side is Side.LEFT else max
    return outer(plates, key=lambda m: (_tip(lean, m), m.bottom), default=None)


def _tip(lean: Lean, plate: Member) -> float:
    return plate.left if lean.side is Side.LEFT else plate.right


def _outward(lean: Lean, plate: Member) -> float:
    """How far a plate reaches past the end of the chalk line, mm; less than 0: short of it."""
    return lean.foot - plate.left if lean.side is Side.LEFT else plate.right - lean.foot
