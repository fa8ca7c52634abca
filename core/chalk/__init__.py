"""Where chalk lines go in plan: what they are drawn to, and how far they are from what stands."""

from core.chalk.clear import Clear, clearances
from core.chalk.guides import Guide, Kind, guides
from core.chalk.snapping import (
    Caught,
    Direction,
    Grip,
    Line,
    against,
    catch,
    catch_along,
    catch_end,
    moved,
    next_along,
)

__all__ = [
    "Caught",
    "Clear",
    "Direction",
    "Grip",
    "Guide",
    "Kind",
    "Line",
    "against",
    "catch",
    "catch_along",
    "catch_end",
    "clearances",
    "guides",
    "moved",
    "next_along",
]
