"""What is this: the trade's words explained wherever they stand in the window."""

import re
from functools import cache

from PySide6.QtCore import QEvent
from PySide6.QtGui import QHelpEvent
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLabel, QToolTip, QWhatsThis, QWidget

from core.wording import Wording, message

WORDS = (
    "backing",
    "bearing",
    "bevel",
    "blocking",
    "box",
    "casing",
    "chalk-line",
    "cheek",
    "collar-tie",
    "course",
    "cripple",
    "dormer",
    "eave",
    "face-a",
    "fit",
    "flat-ceiling",
    "gambrel",
    "header",
    "hip",
    "king",
    "knee-wall",
    "lap",
    "layout",
    "leaf",
    "long-point",
    "mitre",
    "on-centre",
    "pitch",
    "plumb",
    "purlin",
    "rafter",
    "ridge",
    "ripped",
    "rough-opening",
    "run",
    "saw-setting",
    "short-point",
    "sill",
    "sole-plate",
    "species",
    "stud",
    "subfloor",
    "tape-step",
    "top-plate",
    "trimmer",
    "truss",
    "valley",
)
"""The words that are explained: trade.WORD in the catalogues is the word, tip.WORD what it means.

A word may be written in several ways, parted by a stroke; the first is the one that is shown.
"""

_MOST = 3
"""So many words of one text are explained."""


def tip_for(text: str, wording: Wording) -> str:
    """What the trade's words in a text mean, a line for each; "" if there are none."""
    found = [(match.start(), word) for word, match in _matches(text, wording)]
    lines = (_line(word, wording) for _, word in sorted(found)[:_MOST])
    return "\n".join(lines)


def glossary(wording: Wording) -> tuple[tuple[str, str], ...]:
    """Every word that is explained, with what it means, by the alphabet."""
    pairs = ((_ways(word, wording)[0], wording.word(f"tip.{word}")) for word in WORDS)
    return tuple(sorted(pairs))


def answer(event: QEvent, window: QWidget, wording: Wording) -> bool:
    """Whether a question what something is, which no widget answered by itself, was answered.

    Such questions come up from the widget under the pointer to its window.
    """
    if not isinstance(event, QHelpEvent):
        return False
    asked = window.childAt(window.mapFromGlobal(event.globalPos()))
    tip = tip_for(text_of(asked), wording) if asked is not None else ""
    if not tip:
        return False
    if event.type() is QEvent.Type.ToolTip:
        QToolTip.showText(event.globalPos(), tip, asked)
    elif event.type() is QEvent.Type.WhatsThis:
        QWhatsThis.showText(event.globalPos(), tip, asked)
    event.accept()
    return True


def text_of(widget: QWidget) -> str:
    """The words that a widget shows or is named by."""
    if isinstance(widget, QLabel | QAbstractButton):
        return widget.text()
    if isinstance(widget, QComboBox):
        return f"{widget.accessibleName()} {widget.currentText()}"
    return widget.accessibleName()


def _matches(text: str, wording: Wording) -> list[tuple[str, re.Match[str]]]:
    """Each word that stands in a text, where it stands first; longer words before their parts."""
    taken: list[tuple[str, re.Match[str]]] = []
    for word, pattern in _patterns(wording):
        for match in pattern.finditer(text):
            if all(match.end() <= m.start() or m.end() <= match.start() for _, m in taken):
                taken.append((word, match))
                break
    return taken


@cache
def _patterns(wording: Wording) -> tuple[tuple[str, re.Pattern[str]], ...]:
    ways = [(word, way) for word in WORDS for way in _ways(word, wording)]
    ways.sort(key=lambda pair: -len(pair[1]))
    return tuple(
        (word, re.compile(rf"(?<![\w-]){re.escape(way)}(?:s|es)?(?![\w-])", re.IGNORECASE))
        for word, way in ways
    )


def _ways(word: str, wording: Wording) -> list[str]:
    return wording.word(f"trade.{word}").split("|")


def _line(word: str, wording: Wording) -> str:
    named = message("tip.line", word=_ways(word, wording)[0], means=wording.word(f"tip.{word}"))
    return wording.say(named)
