"""The fields of what else is nailed into a wall: blocking, meetings, rafters over the plate."""

from collections.abc import Callable
from functools import partial
from typing import Any

import msgspec
from PySide6.QtWidgets import QLabel

from core.framing import Nailed
from core.lengths import Length
from core.model import Blocking, MeetingKind, Project, RafterBacking, Wall
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_blocking, set_meeting, set_rafter_backing, set_slip_gap, usual
from gui.fields import Field, LengthsField, MaybeLengthField, Tick, shown
from gui.panels.form import Form
from gui.panels.timber import timber_row
from gui.panels.what_is_there import meeting_lines, rafter_line

_MEETINGS = (
    (None, "meeting.none"),
    *((kind, f"meeting.{kind.value.replace(' ', '-')}") for kind in MeetingKind),
)
_NONE = Blocking()


class NailedForm(Form):
    """Blocking, backing where walls meet, blocks between rafters, and the slip gap of a wall."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self._blocking()
        self._meetings()
        self._rafters()
        self._slip()

    @property
    def wall(self) -> Wall:
        """The wall shown."""
        wall = self.desk.wall
        if wall is None:
            raise LookupError("no wall is shown")
        return wall

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        thing = self.words.say(message("undo.wall", letter=self.wall.letter))
        return self.words.say(message("undo.field", field=field, thing=thing))

    def _blocking(self) -> None:
        self.heading("heading.blocking")
        self.rows = LengthsField(self.words.word("field.rows"), self.desk)
        self._field(
            "field.rows",
            self.rows,
            lambda: "; ".join(self._shown(height) for height in self._stated.heights),
            lambda heights: self._block(heights=heights),
        )
        self.at_most = MaybeLengthField(self.words.word("field.rows-at-most"), self.desk)
        self._field(
            "field.rows-at-most",
            self.at_most,
            lambda: self._shown(self._stated.at_most),
            lambda length: self._block(at_most=length),
        )
        self.sentence("field.rows-explained")
        self.staggered = self._tick(
            "field.staggered",
            lambda: self._stated.staggered,
            lambda on: self._block(staggered=on),
        )
        self.shows(lambda: self.staggered.setEnabled(self._has_rows()))
        self._fire()

    def _fire(self) -> None:
        self.fire = self._tick(
            "field.fire",
            lambda: self._stated.fire is not None,
            lambda on: self._block(fire=usual.fire_limit(self.desk.project.system) if on else None),
        )
        over = self.shown_length(
            "field.fire-over",
            lambda: self._shown(self._stated.fire),
            lambda length: self._block(fire=length),
        )
        self.row("field.fire-over", over)
        self.shows(lambda: over.setEnabled(self._stated.fire is not None))
        self.sentence("field.fire-explained")

    def _meetings(self) -> None:
        self.heading("heading.meetings")
        self._told(lambda: meeting_lines(self.desk.result, self.desk.wording))
        self.meeting = self.choice(
            "field.meeting",
            _MEETINGS,
            lambda: self.wall.meeting,
            lambda kind: set_meeting(self.desk.project, self.wall.letter, _kind(kind)),
        )
        self.row("field.meeting", self.meeting)
        self.sentence("field.meeting-explained")

    def _rafters(self) -> None:
        self.heading("heading.over-plate")
        self._told(lambda: rafter_line(self._found(), self.desk.wording))
        self.backing = self._tick(
            "field.rafter-backing",
            lambda: self.wall.rafter_backing is not None,
            lambda on: self._back(self._usual() if on else None),
        )
        self.shows(lambda: self.backing.setEnabled(self._may_back()))
        timber_row(
            self,
            "field.backing",
            lambda: self._backing().timber,
            lambda timber: self._back(msgspec.structs.replace(self._backing(), timber=timber)),
        )
        apart = self.length(
            "field.apart",
            lambda: self._backing().at_most,
            lambda length: self._back(msgspec.structs.replace(self._backing(), at_most=length)),
        )
        self.row("field.apart", apart)
        for field in self.findChildren(Field)[-3:]:
            self.shows(partial(self._enable_backing, field))

    def _enable_backing(self, field: Field) -> None:
        field.setEnabled(self.wall.rafter_backing is not None)

    def _slip(self) -> None:
        self.heading("heading.slip")
        self.slip = MaybeLengthField(self.words.word("field.slip-gap"), self.desk)
        self._field(
            "field.slip-gap",
            self.slip,
            lambda: self._shown(self.wall.slip_gap),
            lambda gap: set_slip_gap(self.desk.project, self.wall.letter, gap),
        )
        self.sentence("field.slip-explained")

    @property
    def _stated(self) -> Blocking:
        return self.wall.blocking or _NONE

    def _has_rows(self) -> bool:
        """Whether any row is stated that could be staggered."""
        stated = self._stated
        return bool(stated.heights or stated.at_most or stated.fire or stated.staggered)

    def _usual(self) -> RafterBacking:
        return usual.rafter_backing(self.desk.project.system, self.wall)

    def _backing(self) -> RafterBacking:
        return self.wall.rafter_backing or self._usual()

    def _may_back(self) -> bool:
        """Whether the plate runs between two rafters, or blocks are stated all the same."""
        found = self._found()
        runs = found is not None and found.over_plate.between is not None
        return runs or self.wall.rafter_backing is not None

    def _found(self) -> Nailed | None:
        result = self.desk.result
        return result.frame.nailed if result and result.frame else None

    def _block(self, **changes: Any) -> Project:
        return set_blocking(self.desk.project, self.wall.letter, **changes)

    def _back(self, backing: RafterBacking | None) -> Project:
        return set_rafter_backing(self.desk.project, self.wall.letter, backing)

    def _shown(self, length: Length | None) -> str:
        return "" if length is None else shown(length, self.desk.wording.tape)

    def _field(
        self, message_id: str, field: Field, text: Callable[[], str], edit: Callable[[Any], Project]
    ) -> None:
        """Adds a row of one field: how its text is read off the project, and the edit it makes."""
        field.stated.connect(lambda value: self.apply(field, lambda: edit(value)))
        self.shows(lambda: field.show_text(text()))
        self.row(message_id, field)

    def _tick(
        self, message_id: str, value: Callable[[], bool], edit: Callable[[bool], Project]
    ) -> Tick:
        tick = Tick(self.words.word(message_id))
        tick.chosen.connect(lambda on: self.apply(tick, lambda: edit(on)))
        self.shows(lambda: tick.setChecked(value()))
        self.wide(tick)
        return tick

    def _told(self, text: Callable[[], str]) -> None:
        """Adds a line that says what follows from the plan."""
        label = QLabel()
        label.setWordWrap(True)
        self.shows(lambda: label.setText(text()))
        self.wide(label)


def _kind(value: object) -> MeetingKind | None:
    return value if isinstance(value, MeetingKind) else None
