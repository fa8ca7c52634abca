"""The fields of the room: its plan, its slopes, its rafters."""

from collections.abc import Callable
from typing import Any

import msgspec

from core.lengths import Length, write_pitch
from core.model import FloorSeen, Project, RidgeBeam, RoofBuilt, Room, Side, Slope
from core.roof import ridge
from core.wording import Wording, message
from gui.desk import Desk
from gui.edits import set_name, set_room
from gui.edits.shaping import (
    likely_ceiling,
    set_eave,
    set_flat_ceiling,
    set_pitch,
    set_width,
)
from gui.edits.stating import stated
from gui.fields import Field, LengthField, LengthsField, PitchField, TextField, Tick, shown
from gui.panels.form import Form
from gui.panels.timber import timber_row

ROOF_BUILT = (
    (None, "answer.not-yet"),
    (RoofBuilt.RAFTERS, "answer.rafters"),
    (RoofBuilt.TRUSSES, "answer.trusses"),
)
"""What the roof may be made of, each with the id of its words."""

FLOOR_SEEN = (
    (None, "answer.not-yet"),
    (FloorSeen.NOBODY, "answer.nobody"),
    (FloorSeen.PAPERS, "answer.papers"),
    (FloorSeen.LICENSED, "answer.licensed"),
)
"""Who may have looked at the floor, each with the id of its words."""


class RoomForm(Form):
    """The room as it is spoken of: width, length, eave heights, pitches, flat ceiling."""

    def __init__(self, desk: Desk, wording: Wording) -> None:
        super().__init__(desk, wording)
        self.name = TextField(wording.word("field.project"))
        self.name.stated.connect(
            lambda name: self.apply(self.name, lambda: set_name(desk.project, name))
        )
        self.shows(lambda: self.name.show_text(desk.project.name))
        self.row("field.project", self.name)
        self.across = self._plain(
            "field.room-width",
            lambda: self.room.width,
            lambda length: set_width(desk.project, length),
        )
        self.along = self._plain(
            "field.room-length", lambda: self.room.length, lambda length: self._set(length=length)
        )
        self._slope("left")
        self._slope("right")
        self._ceiling()
        self._beam()
        self._rafters()
        self._answers()

    @property
    def room(self) -> Room:
        """The room of the project on the desk."""
        return self.desk.project.room

    def edit_text(self, field: str) -> str:
        """What undo says of a change of this field."""
        thing = self.words.word("undo.room")
        return self.words.say(message("undo.field", field=field, thing=thing))

    def _plain(
        self, message_id: str, value: Callable[[], Length], edit: Callable[[Length], Project]
    ) -> LengthField:
        field = self.length(message_id, value, edit)
        self.row(message_id, field)
        return field

    def _slope(self, side: str) -> None:
        """A tick for whether there is this slope, its eave height and its pitch."""

        def slope() -> Slope | None:
            found: Slope | None = getattr(self.room, side)
            return found

        tick = self._tick(
            f"heading.{side}-slope",
            lambda: slope() is not None,
            lambda on: self._set(**{side: self._new() if on else None}),
        )
        eave = self.shown_length(
            "field.eave-height",
            lambda: self._text(slope(), "eave_height"),
            lambda length: set_eave(self.desk.project, Side(side), length),
        )
        pitch = PitchField(self.words.word("field.pitch"), self.desk)
        pitch.stated.connect(
            lambda p: self.apply(pitch, lambda: set_pitch(self.desk.project, Side(side), 0, p))
        )
        self.shows(lambda: pitch.show_text(_pitch_text(slope())))
        for message_id, field in (("field.eave-height", eave), ("field.pitch", pitch)):
            field.setAccessibleName(f"{tick.text()}, {self.words.word(message_id)}")
            self._dependent(message_id, field, lambda: slope() is not None)

    def _new(self) -> Slope:
        """A slope like the one there is on the other side."""
        slope = self.room.left or self.room.right
        if slope is None:
            raise LookupError("a room has at least one slope")
        return slope

    def _ceiling(self) -> None:
        self._tick(
            "heading.flat-ceiling",
            lambda: self.room.flat_ceiling is not None,
            lambda on: self._set(flat_ceiling=self._likely_ceiling() if on else None),
        )
        field = self.shown_length(
            "field.flat-ceiling",
            lambda: self._text(self.room, "flat_ceiling"),
            lambda length: set_flat_ceiling(self.desk.project, length),
        )
        self._dependent("field.flat-ceiling", field, lambda: self.room.flat_ceiling is not None)

    def _beam(self) -> None:
        self._tick(
            "heading.ridge-beam",
            lambda: self.room.ridge_beam is not None,
            lambda on: self._set(ridge_beam=self._new_beam() if on else None),
        )
        self._beam_part("field.beam-width", "width")
        self._beam_part("field.underside", "underside")

    def _beam_part(self, message_id: str, name: str) -> None:
        field = self.shown_length(
            message_id,
            lambda: self._text(self.room.ridge_beam, name),
            lambda length: self._set_beam(**{name: length}),
        )
        self._dependent(message_id, field, lambda: self.room.ridge_beam is not None)

    def _dependent(self, message_id: str, field: Field, there: Callable[[], bool]) -> None:
        """Adds a row that can be typed into only while the part of the roof is there."""
        self.row(message_id, field)
        self.shows(lambda: field.setEnabled(there()))

    def _rafters(self) -> None:
        self.heading("heading.rafters")
        timber_row(
            self,
            "field.rafter",
            lambda: self.room.rafter.timber,
            lambda timber: self._set_rafter(timber=timber),
        )
        spacing = self.length(
            "field.rafter-spacing",
            lambda: self.room.rafter.spacing,
            lambda length: self._set_rafter(spacing=length),
        )
        self.row("field.rafter-spacing", spacing)
        self.places = LengthsField(self.words.word("field.rafter-places"), self.desk)
        self.places.stated.connect(
            lambda places: self.apply(self.places, lambda: self._set_rafter(places=places))
        )
        self.shows(lambda: self.places.show_text(self._places()))
        self.row("field.rafter-places", self.places)
        self.sentence("field.rafter-places-explained")

    def _answers(self) -> None:
        """What the roof is made of and who has looked at the floor: cautions follow from them."""
        self.heading("heading.answers")
        self._answer("field.roof-built", "roof_built", ROOF_BUILT)
        self._answer("field.floor-seen", "floor_seen", FLOOR_SEEN)
        self.sentence("answer.explained")

    def _answer(self, message_id: str, name: str, values: tuple[tuple[object, str], ...]) -> None:
        choice = self.choice(
            message_id,
            values,
            lambda: getattr(self.room, name),
            lambda value: self._set(**{name: value}),
        )
        self.long_choice(message_id, choice)

    def _places(self) -> str:
        return "; ".join(shown(p, self.desk.wording.tape) for p in self.room.rafter.places)

    def _tick(
        self, message_id: str, value: Callable[[], bool], edit: Callable[[bool], Project]
    ) -> Tick:
        tick = Tick(self.words.word(message_id))
        tick.chosen.connect(lambda on: self.apply(tick, lambda: edit(on)))
        self.shows(lambda: tick.setChecked(value()))
        self.wide(tick)
        return tick

    def _likely_ceiling(self) -> Length:
        """A height at which a flat ceiling may come in, on the tape."""
        height = self.desk.wording.tape.round(likely_ceiling(self.room))
        return stated(self.desk.project, height)

    def _below_ridge(self, share: float) -> Length:
        """A height at a share of the ridge's, on the tape."""
        at = ridge(self.room)
        height = at[1] if at else self._new().eave_height.mm + self.room.width.mm / 2
        return stated(self.desk.project, self.desk.wording.tape.round(height * share))

    def _new_beam(self) -> RidgeBeam:
        return RidgeBeam(self.room.rafter.timber.thickness, self._below_ridge(0.9))

    def _text(self, part: object, name: str) -> str:
        """A length of a part of the roof; nothing where there is no such part."""
        length: Length | None = getattr(part, name, None)
        return "" if length is None else shown(length, self.desk.wording.tape)

    def _set(self, **changes: Any) -> Project:
        return set_room(self.desk.project, **changes)

    def _set_rafter(self, **changes: Any) -> Project:
        return self._set(rafter=msgspec.structs.replace(self.room.rafter, **changes))

    def _set_beam(self, **changes: Any) -> Project:
        beam = self.room.ridge_beam or self._new_beam()
        return self._set(ridge_beam=msgspec.structs.replace(beam, **changes))


def _pitch_text(slope: Slope | None) -> str:
    return "" if slope is None else write_pitch(slope.pitch)
