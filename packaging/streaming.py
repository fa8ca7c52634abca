"""Long commands: all their output kept in a log, a condensed line of it shown as they run."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Callable, Mapping, Sequence

from plain import say


def run_logged(
    command: Sequence[str],
    log: Path,
    condense: Callable[[str], str | None],
    env: Mapping[str, str] | None = None,
) -> tuple[int, str]:
    """Returns the exit code and the whole output of ``command``, which is also in ``log``.

    ``condense`` gives the words to show for a line of output, or None for nothing.
    """
    log.parent.mkdir(parents=True, exist_ok=True)
    lines: list[str] = []
    ticker = Ticker()
    with log.open("w", encoding="utf-8") as record, subprocess.Popen(
        list(command),
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        encoding="utf-8",
        errors="replace",
        env=None if env is None else dict(env),
    ) as process:
        assert process.stdout is not None
        try:
            for line in process.stdout:
                lines.append(line)
                record.write(line)
                shown = condense(line.rstrip())
                if shown:
                    ticker.show(shown)
        except BaseException:
            # Left alone, it would go on changing files while the next run starts.
            process.terminate()
            raise
    ticker.close()
    return process.returncode, "".join(lines)


def environment(changes: Mapping[str, str], without: Sequence[str] = ()) -> dict[str, str]:
    """Returns this process's environment with ``changes``, and free of the names in ``without``."""
    kept = {name: value for name, value in os.environ.items() if name not in without}
    return {**kept, **changes}


class Ticker:
    """One line that is written over on a terminal; a line for each text anywhere else."""

    def __init__(self) -> None:
        self._over = sys.stderr.isatty()
        self._count = 0

    def show(self, text: str) -> None:
        """Shows ``text`` in place of the last one, cut to the width of the terminal."""
        self._count += 1
        if not self._over:
            say(f"  {text}")
            return
        width = shutil.get_terminal_size().columns - 1
        sys.stderr.write(f"\r  {self._count:3d}  {text}"[:width].ljust(width))
        sys.stderr.flush()

    def close(self) -> None:
        """Leaves the line, so that the next text starts on a fresh one."""
        if self._over and self._count:
            sys.stderr.write("\n")
