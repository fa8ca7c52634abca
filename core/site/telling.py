"""How a wall goes up, as messages: the same for window, sheet and figures."""

import math
from collections.abc import Mapping

from core.framing import spoken
from core.site.raising import GoingUp, Way, rounded_up
from core.site.swing import Laid, Swing
from core.site.turns import Turn
from core.site.weight import Weights
from core.wording import Kg, Message, Mm, message

FACES = {Laid.FACE_A: "up.face-a", Laid.FAR_FACE: "up.far-face"}


def verdict(up: GoingUp) -> Message:
    """Whether the wall goes up whole, in panels, or is built in place."""
    if up.laid is not None:
        short = {"short": Mm(up.short)} if up.way is Way.SHORT else {}
        return message(f"up.{up.way.value}", face=_face(up.laid), **short)
    return message("up.panels" if up.way is Way.PANELS else "up.in-place")


def conditions(up: GoingUp) -> tuple[Message, ...]:
    """What the verdict asks for: the walls to come later, and panels with how they go up."""
    told = []
    if up.laid is not None and up.floor.in_the_way:
        told.append(message("up.before", walls=", ".join(up.floor.in_the_way)))
        if up.panels:
            told.append(message("up.or-panels"))
    for number, panel in enumerate(up.panels, start=1):
        reach = {"left": Mm(panel.left), "right": Mm(panel.right)}
        told.append(message("up.panel", number=number, face=_face(panel.laid), **reach))
    if up.panels:
        extra = len(up.panels) - 1
        if extra:
            told.append(message("up.panel-studs", count=extra))
        if up.panel_short:
            told.append(message("up.panel-short", short=Mm(up.panel_short)))
    return tuple(told)


def gaps(up: GoingUp, step: float) -> tuple[Message, ...]:
    """For each side the gap needed and the gap there is, and the floor; needs rounded up, mm."""
    told = []
    for swing, floor in zip(up.swings, up.floors, strict=True):
        told.append(_gap(swing, step))
        if floor.lacking:
            told.append(message("up.lacking", face=_face(swing.laid), lacking=Mm(floor.lacking)))
        for kept in floor.taken:
            told.append(message("up.taken", face=_face(swing.laid), what=spoken(kept)))
    if up.beneath is not None:
        told.append(_beneath(up.beneath[list(Laid).index(up.best.laid)], step))
    reach = {"length": Mm(up.floor.length), "depth": Mm(up.floor.depth)}
    return (*told, message("up.floor", **reach))


def weighed(found: Weights, labels: Mapping[str, str]) -> Message:
    """What the wall and its heaviest piece weigh."""
    return message(
        "up.weight",
        weight=Kg(found.wall),
        heaviest=Kg(found.heaviest),
        piece=labels[found.key],
    )


def order(up: GoingUp, labels: Mapping[str, str]) -> tuple[Message, ...]:
    """The steps of building the wall in place, with the labels of their pieces."""
    return tuple(
        message(f"up.step-{step.kind.value}", pieces=_pieces([labels[k] for k in step.keys]))
        for step in up.steps
    )


def in_turn(found: tuple[Turn, ...]) -> tuple[Message, ...]:
    """The order of raising: for each wall, in its turn, how it goes up and why then."""
    return tuple(
        message("turn.line", number=n, letter=turn.letter, how=_how(turn), why=_why(turn))
        for n, turn in enumerate(found, start=1)
    )


def turn_of(found: tuple[Turn, ...], letter: str) -> tuple[Message, ...]:
    """The turn of one wall and why; nothing where it is the only one, or none that goes up."""
    if len(found) < 2:
        return ()
    n = next((n for n, turn in enumerate(found) if turn.letter == letter), None)
    if n is None:
        return ()
    place = {"number": n + 1, "count": len(found)}
    if found[n].before:
        # Which walls have to come later is said with how it goes up.
        return (message("turn.of-before", **place),)
    return (message("turn.of", why=_why(found[n]), **place),)


def _how(turn: Turn) -> Message:
    if turn.laid is None:
        return message("turn.panels" if turn.way is Way.PANELS else "turn.in-place")
    face = _face(turn.laid)
    if turn.way is Way.SHORT:
        return message("turn.short", face=face, short=Mm(turn.short))
    return message("turn.tilt", face=face)


def _why(turn: Turn) -> Message:
    if turn.blocked:
        return message("turn.blocked", walls=", ".join(turn.blocked))
    if turn.laid is None:
        return message(f"turn.{turn.way.value.replace(' ', '-')}-late")
    if turn.before:
        return message("turn.before", walls=", ".join(turn.before))
    return message("turn.free")


def _gap(swing: Swing, step: float) -> Message:
    face, at = _face(swing.laid), {"angle": round(math.degrees(swing.angle))}
    if swing.needed is None:
        return message("up.never", face=face, deep=Mm(-swing.clearance), **at)
    needed, there = Mm(rounded_up(swing.needed, step)), Mm(swing.there)
    if swing.needed <= 1e-3:
        return message("up.tight-passes", face=face)
    return message("up.gap", face=face, needed=needed, there=there, **at)


def _beneath(swing: Swing, step: float) -> Message:
    """What the wall needs once its upper top plate is up there."""
    face = _face(swing.laid)
    if swing.needed is None:
        return message("up.never-beneath", face=face)
    return message("up.beneath", face=face, needed=Mm(rounded_up(swing.needed, step)))


def _face(laid: Laid) -> Message:
    return message(FACES[laid])


def _pieces(labels: list[str]) -> str:
    return ", ".join(labels)
