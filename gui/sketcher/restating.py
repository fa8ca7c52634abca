"""Typing over a dimension of what is held: the project in which it reads what was typed. No Qt.

What cannot be is refused in one sentence that names the nearest value that would do.
"""

from core.framing.layout import CLEAR
from core.framing.moving import Grip, Moved, Snap, box_move, opening_move, stud_move
from core.lengths import Length
from core.model import Project
from core.wording import Mm, message
from gui.edits import (
    Refusal,
    move_box,
    move_opening,
    move_stud,
    set_box,
    set_fixture,
    set_opening,
    set_zone,
)
from gui.edits.stating import stated
from gui.sketcher.measures import Measure, Ruler, whole_bounds
from gui.sketcher.pulls import Hold, stop_message
from gui.things import Kind

_EXACT = Grip(step=1.0, reach=0.0, free=True)

_SHORT_OF = {Ruler.LEFT_END: 1, Ruler.LEFT_NEIGHBOUR: 1, Ruler.RIGHT_NEIGHBOUR: -1}
"""Which way the thing goes when a dimension along the wall grows; else to the left."""


def restate(hold: Hold, measure: Measure, to: Length) -> Project:
    """The project in which a dimension of what is held reads `to`; Refusal if that cannot be."""
    if measure.ruler.upright:
        return _height(hold, measure, to)
    way = _SHORT_OF.get(measure.ruler, -1)
    wanted = hold.start[0] + way * (to.mm - measure.reads)
    # What is stated is what was typed, where it can be.
    exact = to if measure.ruler is Ruler.LEFT_END else stated(hold.project, wanted)
    if hold.thing.kind is Kind.FIXTURE:
        return set_fixture(hold.project, hold.letter, hold.thing.id, left=exact)
    if hold.thing.kind is Kind.ZONE:
        return set_zone(hold.project, hold.letter, hold.thing.id, left=exact)
    if hold.thing.kind is Kind.BOX:
        return _box(hold, measure, wanted, to)
    moved = _move(hold, exact.mm)
    if moved.snap is Snap.LIMIT:
        raise _no_place(hold, measure, to, moved)
    if hold.thing.kind is Kind.OPENING:
        return move_opening(hold.project, hold.letter, hold.thing.id, exact)
    return move_stud(hold.project, hold.letter, hold.key, exact)


def _move(hold: Hold, left: float) -> Moved:
    """Where an opening or a stud goes when it is to stand exactly at `left`, mm."""
    if hold.thing.kind is Kind.OPENING:
        return opening_move(hold.result.wall, hold.frame, hold.thing.id, left, _EXACT)
    return stud_move(hold.result.wall, hold.frame, hold.key, left, _EXACT)


def _no_place(hold: Hold, measure: Measure, to: Length, moved: Moved) -> Refusal:
    """Why there is no place there, and the nearest reading on the tape for which there is one."""
    way = _SHORT_OF.get(measure.ruler, -1)
    nearest = measure.reads + way * (moved.left - hold.start[0])
    tape = hold.project.habits.tape
    for reading in (tape.round(nearest) + n * tape.step_mm for n in (0, 1, -1)):
        left = hold.start[0] + way * (reading - measure.reads)
        if _move(hold, left).snap is not Snap.LIMIT:
            nearest = reading
            break
    return Refusal(
        message(
            "measure.no-place",
            what=hold.named,
            to=Mm(to.mm),
            where=message(f"measure.{measure.ruler.value}"),
            why=stop_message(hold.result, moved),
            nearest=Mm(nearest),
        )
    )


def _box(hold: Hold, measure: Measure, wanted: float, to: Length) -> Project:
    """A box on the side of a stud that puts it there; it hangs on studs and nowhere else."""
    wall, box = hold.result.wall, hold.result.wall.box(hold.thing.id)
    moved = box_move(wall, hold.frame, box.id, (wanted, hold.start[1]), _EXACT)
    project = move_box(hold.project, hold.letter, box.id, moved.stud, moved.side, box.height)
    stud = hold.frame.member(moved.stud)
    if stud is None:
        return project
    left = stud.left - box.width.mm if moved.side.value == "left" else stud.right
    if abs(left - wanted) <= hold.project.habits.tape.step_mm / 2 + CLEAR:
        return project
    way = _SHORT_OF.get(measure.ruler, -1)
    nearest = measure.reads + way * (left - hold.start[0])
    raise Refusal(
        message(
            "measure.box-on-studs",
            what=hold.named,
            to=Mm(to.mm),
            where=message(f"measure.{measure.ruler.value}"),
            nearest=Mm(nearest),
        )
    )


def _height(hold: Hold, measure: Measure, to: Length) -> Project:
    """What is held with a dimension up from the floor or down from the plates restated."""
    around = whole_bounds(hold)
    _, bottom, _, top = around or (0.0, 0.0, 0.0, 0.0)
    if measure.ruler is Ruler.SLOPE:
        to = stated(hold.project, measure.start[1] - to.mm)
    match hold.thing.kind:
        case Kind.OPENING:
            return _opening_height(hold, measure.ruler, to, top - bottom)
        case Kind.BOX if measure.ruler is Ruler.SLOPE:
            box = hold.result.wall.box(hold.thing.id)
            to = stated(hold.project, box.height.mm + to.mm - top)
        case Kind.ZONE:
            if measure.ruler is Ruler.SLOPE:
                to = stated(hold.project, to.mm - (top - bottom))
            return set_zone(hold.project, hold.letter, hold.thing.id, bottom=to)
    if hold.thing.kind is Kind.BOX:
        return set_box(hold.project, hold.letter, hold.thing.id, height=to)
    return set_fixture(hold.project, hold.letter, hold.thing.id, height=to)


def _opening_height(hold: Hold, ruler: Ruler, to: Length, tall: float) -> Project:
    """A door with another head; a window as tall as it is, higher or lower."""
    opening = hold.result.wall.opening(hold.thing.id)
    changes = {"head": to}
    if opening.sill.mm > 0:
        sill = to if ruler is Ruler.FLOOR else stated(hold.project, to.mm - tall)
        changes = {"sill": sill, "head": stated(hold.project, sill.mm + tall)}
    return set_opening(hold.project, hold.letter, opening.id, **changes)
