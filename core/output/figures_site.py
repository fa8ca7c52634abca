"""The figures of putting a wall up, out of what core.site makes of it."""

import math

from core.job import Results, raising_of, raising_order
from core.output.figures_site_form import (
    NailFigures,
    PanelFigures,
    RaisingFigures,
    SwingFigures,
    TurnFigures,
)
from core.site import Floor, NailLine, Swing, nails, weights
from core.wording import Wording


def raising_figures(results: Results, letter: str, wording: Wording) -> RaisingFigures | None:
    """The figures of one wall, mm, degrees and kg; None for a wall that has no frame."""
    up, result = raising_of(results, letter), results.wall(letter)
    if up is None or result.frame is None:
        return None
    project = results.project
    weight = weights(result.frame, project.species)
    return RaisingFigures(
        way=up.way,
        laid=up.laid,
        short=up.short,
        swings=tuple(_swing(s, f) for s, f in zip(up.swings, up.floors, strict=True)),
        panels=tuple(PanelFigures(p.left, p.right, p.laid) for p in up.panels),
        order=tuple(step.keys for step in up.steps),
        weight=weight.wall,
        heaviest=weight.heaviest,
        heaviest_piece=weight.key,
        nails=tuple(
            _nails(line, wording) for line in nails(result.wall, result.frame, project.nailing)
        ),
    )


def turn_figures(results: Results) -> tuple[TurnFigures, ...]:
    """The order in which all walls are put up."""
    return tuple(
        TurnFigures(turn.letter, turn.way, turn.laid, turn.short, turn.before, turn.blocked)
        for turn in raising_order(results)
    )


def _swing(swing: Swing, floor: Floor) -> SwingFigures:
    worst = swing.worst
    return SwingFigures(
        laid=swing.laid,
        there=swing.there + 0.0,
        needed=swing.needed,
        clearance=swing.clearance + 0.0,
        angle=math.degrees(swing.angle),
        worst=(worst.x + 0.0, worst.y + 0.0, worst.d + 0.0),
        floor=(floor.length, floor.depth),
        lacking=floor.lacking,
        in_the_way=floor.in_the_way,
        taken=floor.taken,
    )


def _nails(line: NailLine, wording: Wording) -> NailFigures:
    return NailFigures(
        joint=line.joint,
        nail=wording.say(line.nail),
        count=line.count,
        every=line.every,
        places=line.places,
        total=line.total,
        source=line.source,
    )
