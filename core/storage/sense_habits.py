"""The sense of the person's habits: one function for each rule, each giving its faults."""

from collections.abc import Iterator

from core.model import PlateRules
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import within


def plate_rules(rules: PlateRules, place: str) -> Iterator[Fault]:
    """Stock for plates is as long as two studs are apart, and joints are no absurd way apart."""
    if rules.longest is not None:
        yield from within(rules.longest, limits.PLATE_STOCK_MM, limits.WALL_MM, f"{place}.longest")
    if rules.lap is not None:
        yield from within(rules.lap, 0.0, limits.WALL_MM, f"{place}.lap")
