"""Rows for a cross-section of timber: thickness by width."""

from collections.abc import Callable

import msgspec

from core.lengths import Length
from core.model import Project, Timber
from gui.fields import LengthField
from gui.panels.form import Form


def timber_row(
    form: Form,
    message_id: str,
    value: Callable[[], Timber],
    edit: Callable[[Timber], Project],
) -> tuple[LengthField, LengthField]:
    """Adds a row of two fields for a cross-section, thickness first; gives the two fields."""

    def thickness(length: Length) -> Project:
        return edit(msgspec.structs.replace(value(), thickness=length))

    def width(length: Length) -> Project:
        return edit(msgspec.structs.replace(value(), width=length))

    first = form.length(message_id, lambda: value().thickness, thickness)
    second = form.length(message_id, lambda: value().width, width)
    for field, part in ((first, "part.thickness"), (second, "part.width")):
        field.setAccessibleName(f"{form.words.word(message_id)}, {form.words.word(part)}")
    form.row(message_id, first, "×", second)
    return first, second
