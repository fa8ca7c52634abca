"""What is wrong with a project file: where, why, and how to mend it."""

import msgspec

SHOWN: int = 60
"""The most characters of somebody else's text that a sentence quotes."""


class Fault(msgspec.Struct, frozen=True):
    """One thing wrong: its place in the file, the reason, and the remedy.

    The place is a path of keys (`project.walls[2].openings[0].width`), a line and column, or empty
    for the file as a whole. Reason and remedy are clauses, without a full stop.
    """

    place: str
    reason: str
    remedy: str

    def __str__(self) -> str:
        """Return reason and remedy in one sentence, without the place."""
        return f"{self.reason}; {self.remedy}."


class StorageError(Exception):
    """A project file that cannot be read or saved: its path and at least one fault."""

    def __init__(self, path: str, faults: tuple[Fault, ...]) -> None:
        """Keep the parts; both are arguments, so that it can be pickled."""
        super().__init__(path, faults)
        self.path = path
        self.faults = faults

    def __str__(self) -> str:
        """Return one sentence: file, first place, reason, remedy, and how many more faults."""
        first, more = self.faults[0], len(self.faults) - 1
        where = ", ".join(filter(None, (printable(self.path) or "the file", first.place)))
        tail = f" (and {more} more fault{'s' if more > 1 else ''})" if more else ""
        return f"{where}: {first.reason}; {first.remedy}{tail}."


class TooManyFaults(Exception):
    """Enough faults were found; looking for more would help nobody."""


class Faults:
    """Faults as they are found, one for each place, up to a limit; owned by who reads."""

    def __init__(self, limit: int) -> None:
        """No faults yet; `limit` is the number at which to stop."""
        self._limit = limit
        self._found: dict[str, Fault] = {}
        self.told = 0
        """How many were added, with those whose place had one already."""

    def __len__(self) -> int:
        """Return the number of faults found."""
        return len(self._found)

    def add(self, fault: Fault) -> None:
        """Keep a fault, unless its place has one already.

        Raises:
            TooManyFaults: when the limit is reached.
        """
        self.told += 1
        self._found.setdefault(fault.place, fault)
        if len(self._found) >= self._limit:
            raise TooManyFaults

    @property
    def found(self) -> tuple[Fault, ...]:
        """The faults in the order they were found."""
        return tuple(self._found.values())


def key_place(place: str, key: str) -> str:
    """The place of a key in the object at a place.

    >>> key_place("project.room", "width"), key_place("site", "a b")
    ('project.room.width', 'site["a b"]')
    """
    if not key.isidentifier() or len(key) > SHOWN:
        return f'{place}["{quoted(key)}"]'
    return f"{place}.{key}" if place else key


def item_place(place: str, index: int) -> str:
    """The place of an item, counted from 0, in the list at a place."""
    return f"{place}[{index}]"


def quoted(text: str) -> str:
    """A text as it can be quoted in one sentence: on one line, 60 characters at most."""
    line = printable(" ".join(text[: 10 * SHOWN].split()))
    return line if len(line) <= SHOWN else line[: SHOWN - 1] + "…"


def printable(text: str) -> str:
    """The text with a replacement mark for every character that cannot be printed."""
    return "".join(c if c.isprintable() else "\ufffd" for c in text)
