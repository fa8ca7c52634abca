"""Rows for what may be stated or not: a tick, and a length that is there only with its tick."""

from collections.abc import Callable

from core.lengths import Length
from core.model import Project
from gui.fields import LengthField, Tick, shown
from gui.panels.form import Form


def tick_row(
    form: Form, message_id: str, value: Callable[[], bool], edit: Callable[[bool], Project]
) -> Tick:
    """Adds a tick over the whole width that makes one edit when it is set or taken away."""
    tick = Tick(form.words.word(message_id))
    tick.chosen.connect(lambda on: form.apply(tick, lambda: edit(on)))
    form.shows(lambda: tick.setChecked(value()))
    form.wide(tick)
    return tick


def length_row(
    form: Form,
    message_id: str,
    value: Callable[[], Length | None],
    edit: Callable[[Length], Project],
) -> LengthField:
    """Adds a field for a length that can be typed into only while it is stated."""

    def text() -> str:
        length = value()
        return "" if length is None else shown(length, form.desk.wording.tape)

    field = form.shown_length(message_id, text, edit)
    form.row(message_id, field)
    form.shows(lambda: field.setEnabled(value() is not None))
    return field
