"""The figures of the room from above."""

from core.drawing.plan_ground import corners
from core.drawing.plan_roof import outline
from core.framing import existing_footprints, stair_footprint
from core.model import Room
from core.output.figures_plan_form import ExistingWallFigures, PlanFigures, StairOpeningFigures

XY = tuple[float, float]


def plan_figures(room: Room) -> PlanFigures:
    """The room's outline, its stair openings and the walls that stand there, mm."""
    stairs = (stair_footprint(stair) for stair in room.stair_openings)
    return PlanFigures(
        _exact(outline(room)),
        tuple(StairOpeningFigures(s.letter, _exact(corners(s))) for s in stairs),
        tuple(
            ExistingWallFigures(g.letter, g.run, _exact(corners(g)))
            for g in existing_footprints(room)
        ),
    )


def _exact(points: tuple[XY, ...]) -> tuple[XY, ...]:
    """The points with no minus before a zero."""
    return tuple((u + 0.0, v + 0.0) for u, v in points)
