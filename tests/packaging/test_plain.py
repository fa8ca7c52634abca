"""The sentences and exit codes of the scripts in packaging/."""

from __future__ import annotations

import ast
import errno
from collections.abc import Callable
from pathlib import Path

import pytest

import plain

SCRIPTS = sorted((plain.ROOT / "packaging").glob("*.py"))


@pytest.mark.parametrize("version", [(3, 11, 0), (3, 11, 7), (3, 13, 0), (4, 0, 0)])
def test_new_enough_python_goes_on(version: tuple[int, ...]) -> None:
    plain.require_python(version)


@pytest.mark.parametrize(
    ("version", "named"), [((3, 8, 18), "3.8.18"), ((3, 10, 13), "3.10.13"), ((2, 7, 18), "2.7.18")]
)
def test_old_python_is_named_in_the_refusal(version: tuple[int, ...], named: str) -> None:
    with pytest.raises(plain.Refusal, match=rf"Python 3\.11 or newer.*this is Python {named};"):
        plain.require_python(version)


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda path: path.name)
def test_scripts_parse_on_the_oldest_python_that_gets_a_sentence(script: Path) -> None:
    tree = ast.parse(script.read_text(encoding="utf-8"), feature_version=(3, 8))
    # Without it, annotations such as `str | None` fail on import before the sentence is printed.
    assert any(isinstance(n, ast.ImportFrom) and n.module == "__future__" for n in tree.body)


@pytest.mark.parametrize(
    ("number", "sentence"),
    [
        (errno.ENOSPC, "The disk is full at /somewhere; free about 1 GB and run this again."),
        (errno.EACCES, "/somewhere cannot be written; use a copy of the folder that belongs to"),
        (errno.EROFS, "/somewhere cannot be written; use a copy of the folder that belongs to"),
        (errno.EIO, "/somewhere: words of the system."),
    ],
)
def test_system_errors_in_one_sentence(number: int, sentence: str) -> None:
    error = OSError(number, "words of the system", "/somewhere")
    assert plain.sentence_for(error).startswith(sentence)


def _full_disk(_: list[str]) -> int:
    raise OSError(errno.ENOSPC, "No space left on device", "/somewhere")


def _refused(_: list[str]) -> int:
    raise plain.Refusal("Not today.")


def _interrupted(_: list[str]) -> int:
    raise KeyboardInterrupt


@pytest.mark.parametrize(
    ("main", "code", "said"),
    [
        (lambda _: 0, 0, ""),
        (lambda _: 1, 1, ""),
        (_refused, 2, "Not today.\n"),
        (_full_disk, 2, "The disk is full at /somewhere; free about 1 GB and run this again.\n"),
        (_interrupted, 130, "\nStopped; run it again to go on from here.\n"),
    ],
)
def test_how_a_script_ends(
    main: Callable[[list[str]], int],
    code: int,
    said: str,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr("signal.signal", lambda *_: None)
    with pytest.raises(SystemExit) as end:
        plain.leave_with(main)
    assert end.value.code == code
    assert capsys.readouterr().err == said
