"""Runs every check of the project and says what failed: style, types, imports, tests.

Anything after ``--`` goes to pytest: ``python3 packaging/check.py --fast -- tests/core -x``.
"""

from __future__ import annotations

import argparse
import subprocess
import time
from pathlib import Path
from typing import Mapping, NamedTuple

import system_needs
from plain import ROOT, leave_with
from prepare import prepare
from streaming import environment


class Step(NamedTuple):
    """One check: its name and the command that runs it from the checkout's root."""

    name: str
    command: tuple[str, ...]


class Outcome(NamedTuple):
    """How a step ended: its exit code and the last line it printed."""

    code: int
    closing_line: str


def main(arguments: list[str]) -> int:
    """Returns 0 if every step passed, 1 if one failed."""
    options = parsed(arguments)
    tools = system_needs.QT + system_needs.X11 + system_needs.TEST_TOOLS
    ready = prepare(tools, frozenset({"test"}))
    failed = []
    closing_line = ""
    for step in steps(ready.python, options):
        outcome = _run(step, test_environment(options.long))
        closing_line = outcome.closing_line
        if outcome.code:
            failed.append(step.name)
    if ready.lacking:
        print(ready.lacking)
    print(f"Failed: {', '.join(failed)}" if failed else "Every step passed.")
    print(closing_line, flush=True)
    return 1 if failed else 0


def parsed(arguments: list[str]) -> argparse.Namespace:
    """Returns the options ``long``, ``fast``, ``serial`` and the list ``pytest``."""
    parser = argparse.ArgumentParser(prog="check.py", description="Run every check.")
    parser.add_argument(
        "--long", action="store_true", help="full counts of generated cases, mutants"
    )
    parser.add_argument("--fast", action="store_true", help="leave out tests marked slow")
    parser.add_argument("--serial", action="store_true", help="run the tests in one process")
    parser.add_argument("pytest", nargs="*", help="after --: arguments for pytest")
    return parser.parse_args(arguments)


def steps(python: Path, options: argparse.Namespace) -> tuple[Step, ...]:
    """Returns the checks in the order they run; pytest is the last."""
    folder, here = python.parent, str(python)
    lint_imports = str(folder / f"lint-imports{python.suffix}")
    tests = [here, "-m", "pytest"]
    tests += [] if options.serial else ["-n", "2"]
    tests += ["-m", "not slow"] if options.fast else []
    mutants = (Step("mutants", (here, "tests/mutants/hunt.py")),) if options.long else ()
    return (
        Step("ruff check", (here, "-m", "ruff", "check", ".")),
        Step("ruff format", (here, "-m", "ruff", "format", "--check", ".")),
        Step("mypy", (here, "-m", "mypy", "core", "gui", "packaging", "tests")),
        Step("lint-imports", (lint_imports,)),
        *mutants,
        Step("pytest", (*tests, *options.pytest)),
    )


def test_environment(long: bool) -> dict[str, str]:
    """Returns the environment of the steps: windows off screen, the profile of generated cases."""
    profile = "long" if long else "check"
    return environment({"QT_QPA_PLATFORM": "offscreen", "EAVEWRIGHT_PROFILE": profile})


def _run(step: Step, env: Mapping[str, str]) -> Outcome:
    print(f"== {step.name}", flush=True)
    start = time.monotonic()
    closing_line = ""
    with subprocess.Popen(
        step.command,
        cwd=ROOT,
        env=dict(env),
        stdout=subprocess.PIPE,
        encoding="utf-8",
        errors="replace",
    ) as process:
        assert process.stdout is not None
        for line in process.stdout:
            print(line, end="", flush=True)
            closing_line = line.rstrip("\n") if line.strip() else closing_line
    verdict = "FAILED" if process.returncode else "ok"
    print(f"== {step.name}: {verdict}, {time.monotonic() - start:.1f} s\n", flush=True)
    return Outcome(process.returncode, closing_line)


if __name__ == "__main__":
    leave_with(main)
