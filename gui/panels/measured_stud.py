"""The fields of a stud that is cut to a measured length, and of a test stud."""

from PySide6.QtWidgets import QLabel

from core.drawing.measured import stud_told
from core.framing import Member, Tried, reaches_plates
from core.lengths import Length
from core.model import MeasuredStud, Project
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import forget_stud, measure_stud
from gui.edits.stating import stated
from gui.fields import Tick, shown
from gui.panels.form import Form


class MeasuredStudForm(Form):
    """Whether the stud that is held is cut as measured, and whether it corrects its neighbours."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.heading("heading.measured-stud")
        self.measured = Tick(wording.word("field.measured-stud"))
        self.measured.chosen.connect(lambda on: self.apply(self.measured, lambda: self._take(on)))
        self.shows(lambda: self.measured.setChecked(self._stated() is not None))
        self.wide(self.measured)
        self.long_point = self.shown_length("field.measured-length", self._text, self._cut)
        self.row("field.measured-length", self.long_point)
        self.test = Tick(wording.word("field.test-stud"))
        self.test.chosen.connect(lambda on: self.apply(self.test, lambda: self._try(on)))
        self.wide(self.test)
        self.said = QLabel()
        self.said.setWordWrap(True)
        self.wide(self.said)
        self.shows(self._show)

    @property
    def shows_held(self) -> bool:
        """Whether what is held is a stud that reaches the plates."""
        member = self._member()
        return member is not None and reaches_plates(member)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        result, key = self.desk.result, self.desk.held or ""
        label = result.label_of.get(key, key) if result else key
        return self.words.say(message("undo.field", field=field, thing=label))

    def _member(self) -> Member | None:
        result = self.desk.result
        return result.frame.member(self.desk.held or "") if result and result.frame else None

    def _stated(self) -> MeasuredStud | None:
        wall, held = self.desk.wall, self.desk.held
        return next((s for s in wall.measured_studs if s.key == held), None) if wall else None

    def _tried(self) -> Tried | None:
        frame = self.desk.result.frame if self.desk.result else None
        return next((t for t in frame.measured if t.key == self.desk.held), None) if frame else None

    def _text(self) -> str:
        found, member, tape = self._stated(), self._member(), self.desk.wording.tape
        if found is not None:
            return shown(found.length, tape)
        return tape.text_with_unit(member.long_point) if member else ""

    def _show(self) -> None:
        found, tried, result = self._stated(), self._tried(), self.desk.result
        self.long_point.setEnabled(found is not None)
        self.test.setEnabled(found is not None)
        self.test.setChecked(found is not None and found.is_test)
        said = stud_told(tried, result.label_of[tried.key]) if tried and result else None
        self.said.setText(self.desk.wording.say(said) if said else "")
        self.said.setVisible(said is not None)

    def _take(self, on: bool) -> Project:
        """Starts out from the length that was worked out, as the tape shows it."""
        member = self._member()
        if not on or member is None:
            return forget_stud(self.desk.project, self._letter, self.desk.held or "")
        return self._cut(stated(self.desk.project, self.desk.wording.tape.round(member.long_point)))

    def _cut(self, length: Length) -> Project:
        found = self._stated()
        return self._measure(length, found is not None and found.is_test)

    def _try(self, on: bool) -> Project:
        found = self._stated()
        return self._measure(found.length, on) if found else self.desk.project

    def _measure(self, length: Length, is_test: bool) -> Project:
        key = self.desk.held or ""
        return measure_stud(self.desk.project, self._letter, key, length, is_test)

    @property
    def _letter(self) -> str:
        return self.desk.letter or ""
