"""The cautions of kept-clear zones: what timber and boxes stand in them."""

from collections.abc import Iterator

from core.checks.caution import Caution, Severity
from core.framing import Frame, Member, PlacedBox, Role, keys, spoken
from core.framing.layout import CLEAR
from core.model import ClearZone, Wall
from core.wording import Message, Mm, message

_PLATES = frozenset({Role.SOLE_PLATE, Role.TOP_PLATE})
"""Plates run through: nothing is kept clear of them."""

Rect = tuple[float, float, float, float]
"""left, bottom, right, top in mm."""


def zone_cautions(
    wall: Wall, frame: Frame, boxes: tuple[PlacedBox, ...], labels: dict[str, str]
) -> Iterator[Caution]:
    """One warning for each kept-clear zone that something stands in, naming all of it."""
    for zone in wall.kept_clear:
        found = [labels[m.key] for m in frame.members if _in_the_way(m, zone)]
        rects = ((b, (b.left, b.bottom, b.right, b.top)) for b in boxes)
        found += [spoken(b.box.id) for b, rect in rects if _overlap(rect, zone_rect(zone))]
        if found:
            yield Caution(
                Severity.WARNING,
                keys.opening(wall.letter, zone.id),
                _text(wall.letter, zone, found),
            )


def zone_rect(zone: ClearZone) -> Rect:
    """left, bottom, right and top of a zone, mm."""
    left, bottom = zone.left.mm, zone.bottom.mm
    return left, bottom, left + zone.width.mm, bottom + zone.height.mm


def _text(letter: str, zone: ClearZone, found: list[str]) -> Message:
    left, bottom, right, top = zone_rect(zone)
    return message(
        "zone.in-the-way",
        letter=letter,
        zone=spoken(zone.id),
        things=", ".join(found),
        left=Mm(left),
        right=Mm(right),
        bottom=Mm(bottom),
        top=Mm(top),
    )


def _in_the_way(member: Member, zone: ClearZone) -> bool:
    rect = (member.left, member.bottom, member.right, member.top)
    return member.role not in _PLATES and _overlap(rect, zone_rect(zone))


def _overlap(a: Rect, b: Rect) -> bool:
    beside = a[2] <= b[0] + CLEAR or a[0] >= b[2] - CLEAR
    return not beside and a[1] < b[3] - CLEAR and a[3] > b[1] + CLEAR
