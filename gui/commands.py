"""The command line: `eavewright [FILE]` opens the window; the named commands need no screen."""

import argparse
import io
import os
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import NoReturn

from core import __version__
from core.checks import Severity
from core.drawing.paper import Paper
from core.job import Results, work_out
from core.storage import StorageError, load
from core.wording import Message, Wording, message
from gui.outputs import (
    NothingToShow,
    OutputError,
    demo_bytes,
    drawing_bytes,
    save_output,
    sheets_bytes,
)
from gui.wordings import plain_wording, wording_of

_SCREENS = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
"""What tells a program on Linux where its window may open."""

DONE, CANNOT_BE_BUILT, BAD_INPUT = 0, 1, 2


def main(argv: Sequence[str] | None = None) -> int:
    """The exit code: 0 done, 1 something cannot be built (check), 2 bad input."""
    arguments = list(sys.argv[1:] if argv is None else argv)
    words = plain_wording()
    try:
        if arguments and arguments[0] in _COMMANDS:
            name, *rest = arguments
            _, do = _COMMANDS[name]
            return do(_command_parser(name, words).parse_args(rest))
        return _window(_parser(words).parse_args(arguments))
    except StorageError as error:
        return _refuse(str(error))
    except (OutputError, CommandError) as error:
        return _refuse(words.say(error.message))
    except NothingToShow:
        return _refuse(words.say(message("command.nothing", file=arguments[1])))
    except BrokenPipeError:
        # Whoever read along has seen enough; nothing may be flushed into the pipe any more.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return DONE
    except OSError as error:
        detail = error.strerror or type(error).__name__
        return _refuse(words.say(message("command.disk", detail=detail)))


class CommandError(Exception):
    """What a command line asks for cannot be done; `message` says why and what can."""

    def __init__(self, why: Message) -> None:
        super().__init__(why)
        self.message = why


class _Parser(argparse.ArgumentParser):
    """Says what is wrong with a command line in one sentence."""

    def error(self, message: str) -> NoReturn:
        """Raises CommandError."""
        raise CommandError(Message("command.usage", (("command", self.prog), ("detail", message))))


def _parser(words: Wording) -> _Parser:
    """The parser of a command line that names no command."""
    commands = "\n".join(f"  {name:<8} {words.word(f'command.{name}')}" for name in _COMMANDS)
    parser = _Parser(
        prog="eavewright",
        description=words.word("command.about"),
        epilog=words.say(message("command.list", commands=commands)),
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("file", nargs="?", type=Path, help=words.word("command.file"))
    parser.add_argument("--version", action="version", version=f"%(prog)s {__version__}")
    return parser


def _command_parser(name: str, words: Wording) -> _Parser:
    parser = _Parser(prog=f"eavewright {name}", description=words.word(f"command.{name}"))
    add, _ = _COMMANDS[name]
    add(parser, words)
    return parser


def _add_file(parser: _Parser, words: Wording) -> None:
    parser.add_argument("file", type=Path, metavar="FILE", help=words.word("command.file"))


def _add_out(parser: _Parser, words: Wording) -> None:
    parser.add_argument(
        "--out", type=Path, required=True, metavar="FILE", help=words.word("command.out")
    )


def _add_demo(parser: _Parser, words: Wording) -> None:
    _add_out(parser, words)
    parser.add_argument("--metric", action="store_true", help=words.word("command.metric"))


def _add_sheets(parser: _Parser, words: Wording) -> None:
    _add_drawing(parser, words)
    papers = [paper.value for paper in Paper]
    parser.add_argument("--paper", choices=papers, help=words.word("command.paper"))
    parser.add_argument("--date", type=_date, metavar="YYYY-MM-DD", help=words.word("command.date"))


def _add_drawing(parser: _Parser, words: Wording) -> None:
    _add_file(parser, words)
    _add_out(parser, words)


def _date(text: str) -> str:
    import datetime

    try:
        return datetime.date.fromisoformat(text).isoformat()
    except ValueError as error:
        said = plain_wording().say(message("command.no-date", text=text))
        raise argparse.ArgumentTypeError(said) from error


def _demo(options: argparse.Namespace) -> int:
    path, data = options.out, demo_bytes(metric=options.metric)
    if path.exists() and (not path.is_file() or path.read_bytes() not in (b"", data)):
        raise CommandError(message("command.demo-there", file=str(path)))
    save_output(path, data)
    return DONE


def _sheets(options: argparse.Namespace) -> int:
    results, own = _worked(options.file)
    paper = Paper(options.paper) if options.paper else Paper.usual(results.project.system)
    data = sheets_bytes(results, own, paper, options.date or "")
    save_output(options.out, data, options.file)
    return DONE


def _drawing(options: argparse.Namespace) -> int:
    results, own = _worked(options.file)
    save_output(options.out, drawing_bytes(results, own), options.file)
    return DONE


def _figures(options: argparse.Namespace) -> int:
    from core.output.figures import write_figures

    _print(write_figures(*_worked(options.file)))
    return DONE


def _check(options: argparse.Namespace) -> int:
    results, own = _worked(options.file)
    for caution in results.all_cautions:
        severity = own.word(f"severity.{caution.severity.value}")
        _print(f"{severity}: {own.say(caution.message)}")
    grave = any(c.severity is Severity.UNBUILDABLE for c in results.all_cautions)
    return CANNOT_BE_BUILT if grave else DONE


def _window(options: argparse.Namespace) -> int:
    if not _has_screen():
        raise CommandError(message("command.no-screen"))
    try:
        from gui.opening import open_window
    except ImportError as error:
        raise CommandError(message("command.no-qt", detail=str(error))) from error
    return open_window(options.file)


def _has_screen() -> bool:
    """Whether a window can open here; Qt would end the program if it could not."""
    if not sys.platform.startswith("linux"):
        return True
    return any(os.environ.get(name) for name in _SCREENS)


def _worked(path: Path) -> tuple[Results, Wording]:
    document = load(path)
    return work_out(document.project, document.site), wording_of(document.project)


def _print(text: str) -> None:
    if isinstance(sys.stdout, io.TextIOWrapper):
        sys.stdout.reconfigure(encoding="utf-8")
    sys.stdout.write(text.rstrip("\n") + "\n")
    sys.stdout.flush()


def _refuse(sentence: str) -> int:
    sys.stderr.write(" ".join(sentence.split()) + "\n")
    return BAD_INPUT


_Add = Callable[[_Parser, Wording], None]
_Do = Callable[[argparse.Namespace], int]

_COMMANDS: dict[str, tuple[_Add, _Do]] = {
    "demo": (_add_demo, _demo),
    "sheets": (_add_sheets, _sheets),
    "drawing": (_add_drawing, _drawing),
    "figures": (_add_file, _figures),
    "check": (_add_file, _check),
}
