"""The numbers of the section: what each is called, how it reads, and stating it anew."""

from core.drawing.section_figures import pitch_of
from core.lengths import Length, Pitch, write_pitch
from core.model import Project, Room, Side
from core.roof import section_of
from core.wording import Message, Mm, Wording, message
from gui.edits.shaping import (
    set_break,
    set_eave,
    set_flat_ceiling,
    set_high_side,
    set_pitch,
    set_ridge_across,
    set_ridge_height,
    set_width,
)
from gui.fields import shown


def is_pitch(key: str) -> bool:
    """Whether the number with this key is a pitch; else it is a length."""
    return key.startswith("pitch/")


def is_missing(room: Room, key: str) -> bool:
    """Whether the room has no such part yet."""
    return key == "ceiling" and room.flat_ceiling is None


def name_of(key: str) -> Message:
    """What the number with this key is called."""
    what, _, rest = key.partition("/")
    side, _, number = rest.partition("/")
    if what == "break":
        return message("shape.break", side=message(f"side.{side}"), number=int(number))
    if what == "pitch" and number != "0":
        return message("shape.upper-pitch", side=message(f"side.{side}"), number=int(number) + 1)
    names = {"ridge": "shape.ridge-height", "ceiling": "shape.ceiling", "width": "shape.width"}
    return message(names[what] if not side else f"shape.{what}-{side}")


def text_of(room: Room, key: str, wording: Wording) -> str:
    """The number as the person would write it; what only follows, on the tape."""
    if is_missing(room, key):
        return ""
    value = _stated(room, key)
    if isinstance(value, Pitch):
        return write_pitch(value)
    if isinstance(value, Length):
        return shown(value, wording.tape)
    return wording.tape.text_with_unit(value)


def told(room: Room, key: str) -> Message:
    """The name of a number and its value, in one line."""
    if is_missing(room, key):
        return message("shape.no-ceiling")
    value = _stated(room, key)
    if isinstance(value, Pitch):
        return message("shape.at", what=name_of(key), value=value.text)
    mm = value.mm if isinstance(value, Length) else value
    return message("shape.at", what=name_of(key), value=Mm(mm))


def state(project: Project, key: str, value: Length | Pitch) -> Project:
    """The project with this number as stated; Refusal where it does not fit."""
    what, _, rest = key.partition("/")
    side, _, number = rest.partition("/")
    if isinstance(value, Pitch):
        return set_pitch(project, Side(side), int(number), value)
    if what == "width":
        return set_width(project, value)
    if what == "ridge":
        return set_ridge_height(project, value)
    if what == "ceiling":
        return set_flat_ceiling(project, value)
    if what == "break":
        return set_break(project, Side(side), int(number), value)
    edits = {"eave": set_eave, "high": set_high_side}
    if what in edits:
        return edits[what](project, Side(side), value)
    return set_ridge_across(project, value, Side(side))


def _stated(room: Room, key: str) -> Length | Pitch | float:
    """The value as stated, or in mm where it follows from others."""
    what, _, rest = key.partition("/")
    side, _, number = rest.partition("/")
    if what == "width":
        return room.width
    if what == "ceiling" and room.flat_ceiling is not None:
        return room.flat_ceiling
    slope = room.left if side == "left" else room.right
    if what in ("eave", "break") and slope is not None:
        return slope.eave_height if what == "eave" else slope.breaks[int(number) - 1].run
    cut = section_of(room)
    if what == "pitch" and (rise := cut.rise(Side(side), int(number))) is not None:
        return pitch_of(room, rise)
    if what == "high":
        return cut.rafters.height(0.0 if side == "left" else cut.width)
    if cut.ridge is not None and what in ("ridge", "run"):
        across, height = cut.ridge
        return {"ridge": height, "left": across, "right": cut.width - across}[side or what]
    raise LookupError(f"the section shows no {key}")
