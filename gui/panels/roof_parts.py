"""The fields of what a roof has beside its slopes: hips, changes of pitch, dormers, wings, purlins.

What keeps clear of chimneys and ducts is stated here too.
"""

from collections.abc import Callable
from typing import Any

import msgspec

from core.lengths import write_pitch
from core.model import ClearKind, DormerKind, Passing, Project, Side, Slope
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_room
from gui.edits.usual_roof import hip
from gui.fields import Field, PitchField, Tick, shown
from gui.panels.form import Form
from gui.panels.part_list import PartList, Row

_SIDES = ((Side.LEFT, "side.left"), (Side.RIGHT, "side.right"))
_BREAK: tuple[Row, ...] = (
    ("field.break-run", "run", "length"),
    ("field.break-pitch", "pitch", "pitch"),
)
_DORMER: tuple[Row, ...] = (
    (
        "field.dormer-kind",
        "kind",
        ((DormerKind.SHED, "dormer.shed"), (DormerKind.GABLE, "dormer.gable")),
    ),
    ("field.on-side", "side", _SIDES),
    ("field.part-start", "start", "length"),
    ("field.dormer-width", "width", "length"),
    ("field.dormer-face", "face", "length"),
    ("field.dormer-front", "front", "length"),
    ("field.dormer-height", "height", "length"),
    ("field.pitch", "pitch", "pitch"),
)
_WING: tuple[Row, ...] = (
    ("field.on-side", "side", _SIDES),
    ("field.part-start", "start", "length"),
    ("field.width", "width", "length"),
    ("field.wing-reach", "reach", "length"),
    ("field.first-eave", "first.eave_height", "length"),
    ("field.first-pitch", "first.pitch", "pitch"),
    ("field.last-eave", "last.eave_height", "length"),
    ("field.last-pitch", "last.pitch", "pitch"),
)
_PURLIN: tuple[Row, ...] = (
    ("field.purlin-left", "left", "length"),
    ("field.purlin-start", "start", "maybe"),
    ("field.purlin-end", "end", "maybe"),
    ("field.purlin-end-left", "end_left", "maybe"),
    ("field.purlin-timber", "timber", "timber"),
    ("field.underside", "underside", "length"),
    (
        "field.passing",
        "passing",
        ((Passing.THROUGH, "passing.through"), (Passing.UNDER, "passing.under")),
    ),
    ("field.gap", "gap", "length"),
)
_CLEAR: tuple[Row, ...] = (
    (
        "field.clear-kind",
        "kind",
        ((ClearKind.CHIMNEY, "clear.chimney"), (ClearKind.DUCT, "clear.duct")),
    ),
    ("field.corner-across", "across", "length"),
    ("field.corner-along", "along", "length"),
    ("field.wide", "wide", "length"),
    ("field.deep", "deep", "length"),
    ("field.gap", "gap", "length"),
    ("field.up-to", "up_to", "maybe"),
    ("field.up-across", "up_across", "maybe"),
    ("field.up-along", "up_along", "maybe"),
)


class RoofPartsForm(Form):
    """Hips at both ends, changes of pitch, dormers, wings, purlins, and what is kept clear."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self._hip("heading.start-hip", "start_hip")
        self._hip("heading.end-hip", "end_hip")
        self.lists: dict[str, PartList] = {}
        for heading, where, rows in (
            ("heading.left-breaks", ("left", "breaks"), _BREAK),
            ("heading.right-breaks", ("right", "breaks"), _BREAK),
            ("heading.dormers", ("dormers",), _DORMER),
            ("heading.wings", ("wings",), _WING),
            ("heading.purlins", ("purlins",), _PURLIN),
            ("heading.kept-clear", ("kept_clear",), _CLEAR),
        ):
            self._list(heading, where, rows)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        thing = self.words.word("undo.room")
        return self.words.say(message("undo.field", field=field, thing=thing))

    def _list(self, heading: str, where: tuple[str, ...], rows: tuple[Row, ...]) -> None:
        made = PartList(self.desk, self.words, heading, where, rows)
        self.lists["-".join(where)] = made
        self.wide(made)

        def show() -> None:
            # A slope that is not there has no changes of pitch.
            there = len(where) == 1 or getattr(self.desk.project.room, where[0]) is not None
            made.setVisible(there)
            made.refresh()

        self.shows(show)

    def _hip(self, message_id: str, name: str) -> None:
        """A tick for whether there is a hip at this end, its eave height and its pitch."""

        def slope() -> Slope | None:
            found: Slope | None = getattr(self.desk.project.room, name)
            return found

        def put(new: Slope | None) -> Project:
            return set_room(self.desk.project, **{name: new})

        def part(**changes: Any) -> Project:
            return put(msgspec.structs.replace(slope() or hip(self.desk.project), **changes))

        tick = Tick(self.words.word(message_id))
        tick.chosen.connect(
            lambda on: self.apply(tick, lambda: put(hip(self.desk.project) if on else None))
        )
        self.shows(lambda: tick.setChecked(slope() is not None))
        self.wide(tick)
        eave = self.shown_length(
            "field.hip-eave", lambda: self._text(slope()), lambda length: part(eave_height=length)
        )
        pitch = PitchField(self.words.word("field.pitch"), self.desk)
        pitch.stated.connect(lambda p: self.apply(pitch, lambda: part(pitch=p)))
        self.shows(lambda: pitch.show_text(_pitch_text(slope())))
        for row, field in (("field.hip-eave", eave), ("field.pitch", pitch)):
            self._dependent(row, field, tick, lambda: slope() is not None)

    def _dependent(self, row: str, field: Field, tick: Tick, there: Callable[[], bool]) -> None:
        field.setAccessibleName(f"{tick.text()}, {self.words.word(row)}")
        self.row(row, field)
        self.shows(lambda: field.setEnabled(there()))

    def _text(self, slope: Slope | None) -> str:
        return "" if slope is None else shown(slope.eave_height, self.desk.wording.tape)


def _pitch_text(slope: Slope | None) -> str:
    return "" if slope is None else write_pitch(slope.pitch)
