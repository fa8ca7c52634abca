"""The fields of what the floor has: stair openings, and walls that stand there already."""

from core.wording import Wording
from gui.desk import Desk
from gui.panels.form import Form
from gui.panels.part_list import PartList, Row

_STAIR: tuple[Row, ...] = (
    ("field.corner-across", "across", "length"),
    ("field.corner-along", "along", "length"),
    ("field.wide", "wide", "length"),
    ("field.deep", "deep", "length"),
)
_EXISTING: tuple[Row, ...] = (
    ("field.left-end-across", "left_end.across", "length"),
    ("field.left-end-along", "left_end.along", "length"),
    ("field.right-end-across", "right_end.across", "length"),
    ("field.right-end-along", "right_end.along", "length"),
    ("field.existing-thickness", "thickness", "length"),
)


class FloorForm(Form):
    """A list of stair openings, and one of existing walls."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.lists: dict[str, PartList] = {}
        for heading, name, rows in (
            ("heading.stair-openings", "stair_openings", _STAIR),
            ("heading.existing-walls", "existing_walls", _EXISTING),
        ):
            made = PartList(desk, wording, heading, (name,), rows)
            self.lists[name] = made
            self.wide(made)
            self.shows(made.refresh)
        self.sentence("floor.explained")
