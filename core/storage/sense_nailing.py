"""The sense of the schedule of nails: one function for each rule, each giving its faults."""

from collections.abc import Iterator

from core.model import Joint, Nailing
from core.storage import limits
from core.storage.faults import Fault
from core.storage.ranges import count_within, within
from core.storage.sentences import Why, fault


def nailing_faults(nailing: tuple[Nailing, ...], place: str) -> Iterator[Fault]:
    """Every fault in what differs from the usual schedule; no joint stands in it twice."""
    taken: set[Joint] = set()
    for index, row in enumerate(nailing):
        at = f"{place}[{index}]"
        if row.joint in taken:
            yield fault(f"{at}.joint", Why.SAME_JOINT, text=row.joint.value)
        taken.add(row.joint)
        yield from nail_name(row, f"{at}.nail")
        if row.count is not None:
            yield from count_within(row.count, 1, limits.NAILS, f"{at}.count")
        if row.every is not None:
            yield from within(row.every, limits.SPACING_MM, limits.WALL_MM, f"{at}.every")


def nail_name(row: Nailing, place: str) -> Iterator[Fault]:
    """The name of a nail is short, and can be read."""
    name = row.nail
    if name is None:
        return
    if not name.strip() or len(name) > limits.NAIL_CHARACTERS or not name.isprintable():
        yield fault(place, Why.BAD_NAIL, text=name, limit=limits.NAIL_CHARACTERS)
