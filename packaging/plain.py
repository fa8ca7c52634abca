"""Plain words on the terminal: the one sentence that stops a script, and its exit code."""

from __future__ import annotations

import errno
import signal
import sys
from pathlib import Path
from typing import Callable, NoReturn

ROOT = Path(__file__).resolve().parent.parent
OLDEST_PYTHON = (3, 11)


class Refusal(Exception):
    """A reason to stop that the person can mend; its text is one sentence."""


def say(text: str) -> None:
    """Shows a line of progress at once; standard output is left to the program's own answers."""
    print(text, file=sys.stderr, flush=True)


def require_python(version: tuple[int, ...]) -> None:
    """Returns nothing for Python 3.11 or newer; refuses an older one in one sentence."""
    if version[:2] < OLDEST_PYTHON:
        found = ".".join(str(part) for part in version[:3])
        raise Refusal(
            f"Python 3.11 or newer is needed, and this is Python {found}; "
            "start the same script with a newer one, for instance python3.11."
        )


def sentence_for(error: OSError) -> str:
    """Returns what an operating system error means here, in one sentence."""
    place = error.filename or ROOT
    if error.errno in (errno.ENOSPC, errno.EDQUOT):
        return f"The disk is full at {place}; free about 1 GB and run this again."
    if error.errno in (errno.EACCES, errno.EPERM, errno.EROFS):
        return f"{place} cannot be written; use a copy of the folder that belongs to you."
    return f"{place}: {error.strerror or error}."


def leave_with(main: Callable[[list[str]], int]) -> NoReturn:
    """Runs ``main`` on the command line's arguments and ends the process.

    Exit code 2 stands for a refusal, 130 for Ctrl-C; neither shows a traceback.
    """
    signal.signal(signal.SIGTERM, _interrupt)
    try:
        require_python(tuple(sys.version_info[:3]))
        code = main(sys.argv[1:])
    except Refusal as refusal:
        code = _complain(str(refusal))
    except OSError as error:
        code = _complain(sentence_for(error))
    except KeyboardInterrupt:
        print("\nStopped; run it again to go on from here.", file=sys.stderr)
        code = 130
    sys.exit(code)


def _complain(sentence: str) -> int:
    print(sentence, file=sys.stderr, flush=True)
    return 2


def _interrupt(_number: int, _frame: object) -> NoReturn:
    raise KeyboardInterrupt
