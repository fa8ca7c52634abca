"""Which checks run, in which order, with which options; how a failure is told."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

import check
from prepare import Prepared

PYTHON = Path("/place/.venv/bin/python")


def _pytest_of(*arguments: str) -> tuple[str, ...]:
    return check.steps(PYTHON, check.parsed(list(arguments)))[-1].command[3:]


def test_order() -> None:
    names = [step.name for step in check.steps(PYTHON, check.parsed([]))]
    assert names == ["ruff check", "ruff format", "mypy", "lint-imports", "pytest"]


def test_mutants_are_run_in_the_long_profile_before_the_tests() -> None:
    *_, mutants, last = check.steps(PYTHON, check.parsed(["--long"]))
    assert (mutants.name, mutants.command) == ("mutants", (str(PYTHON), "tests/mutants/hunt.py"))
    assert last.name == "pytest"


def test_every_tool_is_the_environments_own() -> None:
    for step in check.steps(PYTHON, check.parsed([])):
        assert step.command[0].startswith("/place/.venv/bin/")


@pytest.mark.parametrize(
    ("arguments", "expected"),
    [
        ((), ("-n", "2")),
        (("--serial",), ()),
        (("--fast",), ("-n", "2", "-m", "not slow")),
        (("--serial", "--", "-k", "roof", "-x"), ("-k", "roof", "-x")),
        (("--fast", "--serial", "--", "tests/core"), ("-m", "not slow", "tests/core")),
    ],
)
def test_arguments_of_pytest(arguments: tuple[str, ...], expected: tuple[str, ...]) -> None:
    assert _pytest_of(*arguments) == expected


@pytest.mark.parametrize(("long", "profile"), [(False, "check"), (True, "long")])
def test_environment(long: bool, profile: str) -> None:
    env = check.test_environment(long)
    assert (env["EAVEWRIGHT_PROFILE"], env["QT_QPA_PLATFORM"]) == (profile, "offscreen")


def _printing(text: str, code: int) -> tuple[str, ...]:
    return (sys.executable, "-c", f"import sys; print({text!r}); sys.exit({code})")


CLOSING = "===== 1 failed, 2 passed in 0.12s ====="


@pytest.mark.parametrize(
    ("codes", "code", "told"),
    [
        ((0, 0), 0, "Every step passed."),
        ((1, 0), 1, "Failed: first"),
        ((0, 3), 1, "Failed: second"),
        ((1, 1), 1, "Failed: first, second"),
    ],
)
def test_all_steps_run_and_the_last_line_is_the_last_steps(
    codes: tuple[int, int],
    code: int,
    told: str,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    steps = (
        check.Step("first", _printing("one", codes[0])),
        check.Step("second", _printing(f"two\n\n{CLOSING}\n", codes[1])),
    )
    monkeypatch.setattr(check, "prepare", lambda *_: Prepared(PYTHON, ""))
    monkeypatch.setattr(check, "steps", lambda *_: steps)
    assert check.main([]) == code
    lines = capsys.readouterr().out.splitlines()
    assert lines[-2:] == [told, CLOSING]
    assert {"one", "two"} <= set(lines)


def test_what_the_system_lacks_is_repeated_at_the_end(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(check, "prepare", lambda *_: Prepared(PYTHON, "Missing: qpdf"))
    monkeypatch.setattr(check, "steps", lambda *_: (check.Step("only", _printing(CLOSING, 1)),))
    assert check.main([]) == 1
    assert capsys.readouterr().out.splitlines()[-3:] == ["Missing: qpdf", "Failed: only", CLOSING]
