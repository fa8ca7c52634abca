"""A member's cut as a small picture: its ends, and how the saw is set for each of them."""

from collections.abc import Iterator

from core.drawing.cut_end import end_pictures
from core.drawing.elements import Drawing
from core.drawing.flow import flow
from core.drawing.pen import Pen
from core.drawing.saw_picture import saw_pictures
from core.framing import CutEnd, Member, Setting, cut_ends, saw_setting
from core.model import Saw
from core.wording import Wording

GAP = 4.0
"""Between two pictures, mm on paper."""


def cut_picture(member: Member, saw: Saw, width: float, wording: Wording) -> Drawing:
    """The ends of a member that are not square, each with the saw's setting; mm on paper.

    `width` is the room there is. Empty for a member that is square at both ends.
    """
    pictures = [
        flow(list(_of_end(member, end, saw, wording)), width, GAP) for end in cut_ends(member)
    ]
    return flow(pictures, width, GAP)


def _of_end(member: Member, end: CutEnd, saw: Saw, wording: Wording) -> Iterator[Drawing]:
    pen, timber = Pen(member.role.value), (member.thickness, member.width)
    yield from end_pictures(end, pen, lies=member.lies, wording=wording)
    for setting in _settings(end, saw):
        yield from saw_pictures(setting, timber, saw, pen, wording)


def _settings(end: CutEnd, saw: Saw) -> list[Setting]:
    """The different settings that an end needs."""
    found: dict[tuple[object, float, float], Setting] = {}
    for facet in end.facets:
        if not facet.is_square:
            setting = saw_setting(facet, saw)
            found.setdefault(
                (setting.way, round(setting.bevel, 6), round(setting.mitre, 6)), setting
            )
    return list(found.values())
