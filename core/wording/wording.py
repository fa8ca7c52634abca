"""The catalogues of texts, and saying a message in one of them."""

import functools
import importlib.resources

import resources
from core.lengths import System, Tape, write_degrees
from core.wording.message import Kg, Message, Mm, Rad

CATALOGUES = ("us", "metric")
"""The catalogues there are: US trade words, and the wording of metric countries."""


_POUND = 0.45359237
"""One pound in kg."""


class Wording:
    """Says messages in the words of one catalogue and the numbers of one tape.

    The metric catalogue holds only what differs; all else is taken from the US one.
    """

    def __init__(self, catalogue: str, tape: Tape) -> None:
        """A wording of the named catalogue; KeyError if there is no such catalogue."""
        if catalogue not in CATALOGUES:
            raise KeyError(catalogue)
        self._texts = {**texts("us"), **texts(catalogue)}
        self.catalogue, self.tape = catalogue, tape

    @property
    def finest(self) -> "Wording":
        """The same words with lengths to 1/64 in. or 0.1 mm."""
        return Wording(self.catalogue, self.tape.finest)

    def say(self, message: Message) -> str:
        """The text of a message; KeyError if no catalogue has its id."""
        values = {name: self._value(value) for name, value in message.values}
        return self._texts[message.id].format_map(values)

    def word(self, message_id: str) -> str:
        """The text of a message without values."""
        return self._texts[message_id]

    def length(self, mm: float) -> str:
        """A length on the person's tape."""
        return self.tape.text(mm)

    def weight(self, kg: float) -> str:
        """A weight in whole pounds or kilograms; under ten with one decimal.

        What a stick weighs differs by a tenth and more with its moisture: no finer number holds.
        """
        number = self.weighed(kg)
        unit = "lb" if self.tape.system is System.INCH else "kg"
        return f"{number:.{0 if number >= 9.95 else 1}f} {unit}"

    def weighed(self, kg: float) -> float:
        """A weight in the unit that it is shown in: pounds or kilograms."""
        return kg / _POUND if self.tape.system is System.INCH else kg

    def _value(self, value: object) -> str:
        if isinstance(value, Mm):
            return self.tape.text_with_unit(value.mm)
        if isinstance(value, Rad):
            return write_degrees(value.radians)
        if isinstance(value, Kg):
            return self.weight(value.kg)
        if isinstance(value, Message):
            return self.say(value)
        if isinstance(value, tuple):
            return self.word("list.joint").join(self.say(item) for item in value)
        return str(value)


@functools.cache
def texts(catalogue: str) -> dict[str, str]:
    """The texts of a packaged catalogue by message id."""
    path = importlib.resources.files(resources) / "texts" / f"{catalogue}.po"
    import polib

    entries = polib.pofile(path.read_text(encoding="utf-8"))
    return {entry.msgid: entry.msgstr for entry in entries}
