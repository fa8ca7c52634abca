"""Duplicating along the wall: again at the same distance, as often as is stated."""

import re
from collections.abc import Callable

import msgspec

from core.lengths import parse
from core.model import Project
from core.wording import Mm, message
from gui.desk import Desk
from gui.edits import Refusal
from gui.edits.repeating import free_distance, repeat
from gui.sketcher.choosing import once
from gui.sketcher.pulls import take
from gui.sketcher.several import named, take_all

_COUNT = re.compile(r"^(?P<apart>.*?)\s*[x×*]\s*(?P<count>\d+)\s*$", re.IGNORECASE)


class Made(msgspec.Struct, frozen=True):
    """What the last duplicating made: of what, at what distance, how often, and in what project."""

    before: Project
    after: Project
    sources: tuple[str, ...]
    copies: tuple[str, ...]
    apart: float
    count: int


class Repeating:
    """Copies of what is held; the last of them are held then, so that it can go on from there."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self._made: Made | None = None

    @property
    def made(self) -> Made | None:
        """What was made last, as long as its copies are held and nothing else has been done."""
        made, desk = self._made, self._desk
        fresh = made and made.after is desk.project and made.copies == desk.holding
        return made if fresh else None

    def again(self) -> None:
        """One more of what is held: as far on as the last copy is from what it was made from."""
        desk = self._desk
        if desk.result is None or desk.held is None:
            return
        keys = once(desk.result, desk.holding)
        apart = self._same_distance(keys)
        if apart is None:
            apart = free_distance(desk.project, desk.result.wall.letter, keys)
        self._say(lambda: self._make(desk.project, keys, apart, 1))

    def state(self, text: str) -> None:
        """Makes the last copies anew as a text says: a distance, "x 3", or both.

        Refusal if a copy has no place, ValueError if the text says neither.
        """
        made = self.made
        if made is None:
            return
        found = _COUNT.match(text)
        count = int(found["count"]) if found else made.count
        distance = found["apart"] if found else text
        apart = made.apart
        if distance.strip():
            typed = parse(distance, self._desk.project.system.bare_unit).mm
            apart = typed if made.apart > 0 else -typed
        copies = repeat(made.before, self._letter, made.sources, apart, count)
        self._desk.undo()
        if self._desk.project != made.before:
            return
        self._done(made.before, copies.project, made.sources, copies.keys, apart, count)

    @property
    def _letter(self) -> str:
        return self._desk.letter or ""

    def _make(self, before: Project, keys: tuple[str, ...], apart: float, count: int) -> None:
        copies = repeat(before, self._letter, keys, apart, count)
        self._done(before, copies.project, keys, copies.keys, apart, count)

    def _done(
        self,
        before: Project,
        after: Project,
        keys: tuple[str, ...],
        copies: tuple[str, ...],
        apart: float,
        count: int,
    ) -> None:
        """One step of undo with the copies, and the last of them held."""
        desk = self._desk
        held = take_all(desk.project, desk.result, keys) if desk.result else None
        what = named(held) if held else ""
        many = message("repeat.times", what=what, count=count)
        text = message("repeat.edit", what=what if count == 1 else many)
        desk.commit(desk.wording.say(text), after)
        if desk.project != after:
            # The step would spoil what is cut: the person is asked, and may make it all the same.
            return
        desk.hold(copies[0], copies[1:])
        self._made = Made(before, desk.project, keys, copies, apart, count)
        said = message("repeat.done", what=what, count=count, apart=Mm(abs(apart)))
        desk.said.emit(desk.wording.say(said))

    def _same_distance(self, keys: tuple[str, ...]) -> float | None:
        """How far the copies that are held stand now from those before them, mm.

        None if what is held was not made by this.
        """
        made, result = self._made, self._desk.result
        if made is None or result is None or made.copies != keys:
            return None
        ends = (take(self._desk.project, result, key) for key in (made.sources[0], keys[0]))
        source, copy = ends
        if source is None or copy is None:
            return None
        # The last copy may have been moved since: what counts is how far it is from the one before.
        before = source.start[0] + made.apart * (made.count - 1)
        return copy.start[0] - before or None

    def _say(self, make: Callable[[], None]) -> None:
        try:
            make()
        except Refusal as refusal:
            self._desk.said.emit(self._desk.wording.say(refusal.message))
