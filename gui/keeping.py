"""What the program remembers of this person from one day to the next; never a part of a project."""

from pathlib import Path
from typing import Any, Protocol

from PySide6.QtCore import QByteArray, QSettings

RECENT = 8
"""So many files are remembered."""


class Store(Protocol):
    """Where settings are put: Qt's own store, or one that lasts no longer than the program."""

    def value(self, key: str, default: Any = None) -> Any:
        """What is kept under a key."""

    def setValue(self, key: str, value: Any) -> None:  # noqa: N802
        """Keeps a value under a key."""

    def remove(self, key: str) -> None:
        """Forgets a key."""


class Fleeting:
    """A store that is gone with the program."""

    def __init__(self) -> None:
        self._values: dict[str, Any] = {}

    def value(self, key: str, default: Any = None) -> Any:
        """What is kept under a key."""
        return self._values.get(key, default)

    def setValue(self, key: str, value: Any) -> None:  # noqa: N802
        """Keeps a value under a key."""
        self._values[key] = value

    def remove(self, key: str) -> None:
        """Forgets a key."""
        self._values.pop(key, None)


class Kept:
    """The person's own settings, in a file of their own.

    What the file holds was perhaps written by another version, or by hand: whatever makes no sense
    there is passed over.
    """

    def __init__(self, settings: Store) -> None:
        self._settings = settings

    @classmethod
    def nothing(cls) -> "Kept":
        """Settings of nobody: the usual ones, with no card and no memory."""
        kept = cls(Fleeting())
        kept.put_card_away()
        return kept

    @classmethod
    def of_this_person(cls) -> "Kept":
        """Settings kept where this system keeps those of its users."""
        return cls(QSettings("eavewright", "eavewright"))

    @classmethod
    def in_file(cls, path: Path) -> "Kept":
        """Settings kept in this file."""
        return cls(QSettings(str(path), QSettings.Format.IniFormat))

    def sync(self) -> None:
        """Brings to the disk what is kept, where it is kept on one."""
        if isinstance(self._settings, QSettings):
            self._settings.sync()

    @property
    def recent(self) -> tuple[Path, ...]:
        """The files opened or saved last, the latest first; those that are gone are left out."""
        found = self._settings.value("recent")
        names = [found] if isinstance(found, str) else found if isinstance(found, list) else []
        paths = (Path(name) for name in names if isinstance(name, str) and name)
        return tuple(path for path in paths if path.is_file())[:RECENT]

    def note(self, path: Path) -> None:
        """Puts a file at the head of the recent ones."""
        others = (str(other) for other in self.recent if other != path)
        self._settings.setValue("recent", [str(path), *others][:RECENT])

    def forget_recent(self) -> None:
        """Forgets the recent files; the files themselves stay."""
        self._settings.remove("recent")

    @property
    def night(self) -> bool | None:
        """Whether the window is dark; None as long as it follows the system."""
        return {"night": True, "day": False}.get(str(self._settings.value("light")))

    @night.setter
    def night(self, night: bool | None) -> None:
        if night is None:
            self._settings.remove("light")
        else:
            self._settings.setValue("light", "night" if night else "day")

    @property
    def lists_members(self) -> bool:
        """Whether the list of members is shown below the sheet."""
        return str(self._settings.value("list")) == "shown"

    @lists_members.setter
    def lists_members(self, shown: bool) -> None:
        self._settings.setValue("list", "shown" if shown else "hidden")

    @property
    def text_step(self) -> int:
        """How many steps larger than usual texts are shown; negative is smaller."""
        try:
            return int(str(self._settings.value("text", 0)))
        except ValueError:
            return 0

    @text_step.setter
    def text_step(self, step: int) -> None:
        self._settings.setValue("text", step)

    @property
    def frame(self) -> QByteArray | None:
        """Size and place of the window when it was closed last."""
        found = self._settings.value("frame")
        return found if isinstance(found, QByteArray) else None

    @frame.setter
    def frame(self, frame: QByteArray) -> None:
        self._settings.setValue("frame", frame)

    @property
    def welcomed(self) -> bool:
        """Whether the card for the first start was put away."""
        return str(self._settings.value("welcomed")) == "yes"

    def put_card_away(self) -> None:
        """Notes that the card for the first start was read."""
        self._settings.setValue("welcomed", "yes")
