"""What the menus do to the project: each one edit, or a refusal said at the foot."""

from collections.abc import Callable

from core.framing import spoken
from core.model import OpeningKind, Project
from core.wording import message
from gui.desk import Desk
from gui.edits import (
    Refusal,
    add_box,
    add_fixture,
    add_opening,
    add_stud,
    add_wall,
    add_zone,
    delete_wall,
    put_back,
)
from gui.edits.floor import without
from gui.sketcher.choosing import movable_keys
from gui.sketcher.keyboard import delete_held
from gui.things import Kind, thing_of

_REPEATED = frozenset({Kind.STUD, Kind.OPENING, Kind.BOX, Kind.FIXTURE, Kind.ZONE})


class Doing:
    """The edits of the menus, on the wall shown and what is held of it."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def delete(self) -> None:
        """Deletes what is held."""
        desk = self._desk
        if desk.letter is not None:
            delete_held(desk)
        elif self.wall_letter is not None:
            self.delete_wall()
        elif desk.held is not None:
            what = message("plan.thing-named", what=spoken(desk.held))
            text = desk.wording.say(message("drag.delete", what=what))
            desk.commit(text, without(desk.project, desk.held))

    def hold_all(self) -> None:
        """Takes hold of all in the wall shown that can be moved."""
        desk = self._desk
        if desk.result is not None and (keys := movable_keys(desk.result)):
            desk.hold(keys[0], keys[1:])
            several = message("held.several", count=len(desk.holding))
            desk.said.emit(desk.wording.say(message("held.several-held", what=several)))

    def add_stud(self) -> None:
        """Adds a stud in the middle of the widest bay, and holds it."""
        self._add("undo.add-stud", lambda: add_stud(self._desk.project, self._letter), "added")

    def put_back(self) -> None:
        """Fills the places of the layout that were left empty."""
        self._do("undo.put-back", lambda: put_back(self._desk.project, self._letter))

    def add_opening(self, kind: OpeningKind) -> None:
        """Adds an opening near the middle, and holds it."""
        text = f"undo.add-{kind.value.replace(' ', '-')}"
        self._add(text, lambda: add_opening(self._desk.project, self._letter, kind), "openings")

    def add_box(self) -> None:
        """Adds a box on the stud that is held, or near the middle, and holds it."""
        stud = self._desk.held
        self._add("undo.add-box", lambda: add_box(self._desk.project, self._letter, stud), "boxes")

    def add_fixture(self) -> None:
        """Adds backing for a rail in the middle of the wall, and holds it."""
        self._add(
            "undo.add-fixture", lambda: add_fixture(self._desk.project, self._letter), "fixtures"
        )

    def add_zone(self) -> None:
        """Adds a kept-clear zone in the middle of the wall, and holds it."""
        self._add(
            "undo.add-kept-clear", lambda: add_zone(self._desk.project, self._letter), "kept_clear"
        )

    def add_wall(self) -> None:
        """Adds a wall like the one shown or held, and shows it, or holds it in the room."""
        desk = self._desk
        spent = frozenset(p.key.partition("/")[0] for p in desk.site.printed)
        name, like = desk.wording.word("new.wall"), self.wall_letter
        done = self._do("undo.add-wall", lambda: add_wall(desk.project, name, like, spent))
        if done:
            self._turn_to(desk.project.walls[-1].letter)

    def _turn_to(self, letter: str) -> None:
        """Shows a wall, or holds it where the room is shown."""
        if self._desk.letter is None:
            self._desk.hold(letter)
        else:
            self._desk.show_wall(letter)

    def delete_wall(self) -> None:
        """Deletes the wall shown, or the one held in the room."""
        letter = self.wall_letter
        if letter is None:
            return
        text = self._desk.wording.say(message("undo.delete-wall", letter=letter))
        self._desk.commit(text, delete_wall(self._desk.project, letter))

    @property
    def wall_letter(self) -> str | None:
        """The letter of the wall shown, or of the one held in the room."""
        desk = self._desk
        held = any(wall.letter == desk.held for wall in desk.project.walls)
        return (desk.held if held else None) if desk.letter is None else desk.letter

    @property
    def can_delete(self) -> bool:
        """Whether what is held can be deleted."""
        wall, held = self._desk.wall, self._desk.held
        if self._desk.letter is None:
            return held is not None
        thing = thing_of(wall, held) if wall and held else None
        return thing is not None and thing.kind not in (Kind.END, Kind.PLATE, Kind.BLOCK)

    @property
    def can_duplicate(self) -> bool:
        """Whether there can be another of what is held along the wall."""
        wall, held = self._desk.wall, self._desk.held
        thing = thing_of(wall, held) if wall and held else None
        return thing is not None and thing.kind in _REPEATED

    @property
    def can_put_back(self) -> bool:
        """Whether the wall shown has places that were left empty."""
        return self._desk.wall is not None and bool(self._desk.wall.left_out)

    @property
    def _letter(self) -> str:
        return self._desk.letter or ""

    def _add(self, text: str, edit: Callable[[], Project], things: str) -> None:
        """Makes an edit and holds the last of what it added to."""
        if self._do(text, edit) and self._desk.wall is not None:
            new = getattr(self._desk.wall, things)[-1]
            self._desk.hold(f"{self._letter}/{new.id}")

    def _do(self, text: str, edit: Callable[[], Project]) -> bool:
        words = self._desk.wording
        try:
            project = edit()
        except Refusal as refusal:
            self._desk.said.emit(words.say(refusal.message))
            return False
        self._desk.said.emit("")
        self._desk.commit(words.word(text), project)
        return True
