"""The fields of an opening."""

from typing import Any

import msgspec

from core.framing import spoken, thickest_spacer
from core.lengths import Length
from core.model import HeaderKind, HeadLie, Opening, OpeningKind, Project
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import move_opening, set_opening
from gui.edits.stating import stated
from gui.panels.form import Form
from gui.panels.optional import length_row, tick_row
from gui.panels.timber import timber_row
from gui.things import thing_of

_KINDS = tuple((kind, f"kind.{kind.value.replace(' ', '-')}") for kind in OpeningKind)
_HEADERS = tuple((kind, f"header.{kind.value.replace(' ', '-')}") for kind in HeaderKind)
_HEADS: tuple[tuple[HeadLie | None, str], ...] = (
    (None, "head.level"),
    *((lie, f"head.{lie.value}") for lie in HeadLie),
)
_PLIES = tuple((count, f"count.{count}") for count in (1, 2, 3, 4))


class OpeningForm(Form):
    """Place, size and header of the opening that is held."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self._place()
        self._size()
        self._header()

    @property
    def opening(self) -> Opening:
        """The opening held."""
        wall = self.desk.wall
        thing = thing_of(wall, self.desk.held or "") if wall else None
        if wall is None or thing is None:
            raise LookupError("no opening is held")
        return wall.opening(thing.id)

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        return self.words.say(message("undo.field", field=field, thing=spoken(self.opening.id)))

    def _place(self) -> None:
        self.left = self.length("field.left", lambda: self.opening.left, self._move)
        self.row("field.left", self.left)
        self.right = self.shown_length(
            "field.from-right", self._from_right, lambda length: self._move_right(length)
        )
        self.row("field.from-right", self.right)

    def _size(self) -> None:
        self.width_field = self.length(
            "field.width", lambda: self.opening.width, lambda length: self._set(width=length)
        )
        self.row("field.width", self.width_field)
        self.head = self.length(
            "field.head", lambda: self.opening.head, lambda length: self._set(head=length)
        )
        self.row("field.head", self.head)
        self.head_lie = self.choice(
            "field.head-lie",
            _HEADS,
            lambda: self.opening.head_lie,
            lambda lie: self._set(head_lie=lie),
        )
        self.row("field.head-lie", self.head_lie)
        self.sill = self.length(
            "field.sill", lambda: self.opening.sill, lambda length: self._set(sill=length)
        )
        self.row("field.sill", self.sill)
        kind = self.choice(
            "field.kind", _KINDS, lambda: self.opening.kind, lambda kind: self._set(kind=kind)
        )
        self.row("field.kind", kind)

    def _header(self) -> None:
        self.header = self.choice(
            "field.header",
            _HEADERS,
            lambda: self.opening.header.kind,
            lambda kind: self._set_header(kind=kind),
        )
        self.row("field.header", self.header)
        timber_row(
            self,
            "field.header-timber",
            lambda: self.opening.header.timber,
            lambda timber: self._set_header(timber=timber),
        )
        plies = self.choice(
            "field.plies",
            _PLIES,
            lambda: self.opening.header.plies,
            lambda plies: self._set_header(plies=plies),
        )
        self.row("field.plies", plies)
        self.spacer = tick_row(
            self,
            "field.spacer",
            lambda: self.opening.header.spacer is not None,
            lambda on: self._set_header(spacer=self._flush() if on else None),
        )
        self.shows(lambda: self.spacer.setEnabled(self._spaced()))
        self.spacer_field = length_row(
            self,
            "field.spacer-thickness",
            lambda: self.opening.header.spacer,
            lambda length: self._set_header(spacer=length),
        )
        self.sentence("held.header-caution")

    def _move(self, left: Length) -> Project:
        return move_opening(self.desk.project, self._letter, self.opening.id, left)

    def _move_right(self, length: Length) -> Project:
        """Places the right edge so far from the wall's right end."""
        left = self._run - length.mm - self.opening.width.mm
        return move_opening(self.desk.project, self._letter, self.opening.id, left)

    def _from_right(self) -> str:
        right = self.opening.left.mm + self.opening.width.mm
        return self.desk.wording.tape.text_with_unit(self._run - right)

    def _set(self, **changes: Any) -> Project:
        return set_opening(self.desk.project, self._letter, self.opening.id, **changes)

    def _set_header(self, **changes: Any) -> Project:
        return self._set(header=msgspec.structs.replace(self.opening.header, **changes))

    def _spaced(self) -> bool:
        """Whether the header has plies on edge, which spacers may stand between."""
        header = self.opening.header
        return header.kind is HeaderKind.ON_EDGE and header.plies > 1

    def _flush(self) -> Length:
        """The spacer that makes the header flush with the studs; none where its plies are more."""
        wall = self.desk.wall
        width = wall.stud.width.mm if wall else 0.0
        return stated(self.desk.project, thickest_spacer(self.opening.header, width) or 0.0)

    @property
    def _letter(self) -> str:
        return self.desk.letter or ""

    @property
    def _run(self) -> float:
        return self.desk.wall.run if self.desk.wall else 0.0
