"""What a start does with a screen, without one, and with arguments."""

from __future__ import annotations

from pathlib import Path

import pytest

import run
from plain import Refusal
from prepare import Prepared

PYTHON = Path("/place/.venv/bin/python")


class Starts:
    """Records the program's starts instead of making them; files asked for appear, empty."""

    def __init__(self, fails_at: str = "") -> None:
        self.calls: list[str] = []
        self.fails_at = fails_at

    def __call__(self, command: list[str]) -> int:
        """Returns the exit code 2 for the command that is to fail, else 0."""
        assert command[:4] == [str(PYTHON), "-P", "-m", "gui"]
        arguments = command[4:]
        self.calls.append(" ".join(Path(word).name for word in arguments))
        if "--out" in arguments:
            Path(arguments[-1]).touch()
        return 2 if arguments[0] == self.fails_at else 0


@pytest.fixture
def starts(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Starts:
    """A start with everything prepared and the demo folder in an empty place."""
    starts = Starts()
    monkeypatch.setattr(run, "DEMO", tmp_path / "demo")
    monkeypatch.setattr(run, "prepare", lambda _: Prepared(PYTHON, ""))
    monkeypatch.setattr("subprocess.call", starts)
    return starts


def _screen(monkeypatch: pytest.MonkeyPatch, there: bool) -> None:
    monkeypatch.setattr(run, "has_screen", lambda: there)


def test_with_a_screen_the_demo_is_written_and_opened(
    starts: Starts, monkeypatch: pytest.MonkeyPatch
) -> None:
    _screen(monkeypatch, True)
    assert run.main([]) == 0
    assert starts.calls == ["demo --out sail-loft.eave", "sail-loft.eave"]


def test_an_edited_demo_is_never_written_over(
    starts: Starts, monkeypatch: pytest.MonkeyPatch
) -> None:
    run.DEMO.mkdir()
    (run.DEMO / "sail-loft.eave").write_text("edited")
    _screen(monkeypatch, True)
    assert run.main([]) == 0
    assert starts.calls == ["sail-loft.eave"]
    _screen(monkeypatch, False)
    assert run.main([]) == 0
    assert "demo --out sail-loft.eave" not in starts.calls
    assert (run.DEMO / "sail-loft.eave").read_text() == "edited"


def test_without_a_screen_everything_is_written_and_named(
    starts: Starts, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    _screen(monkeypatch, False)
    assert run.main([]) == 0
    assert starts.calls == [
        "demo --out sail-loft.eave",
        "sheets sail-loft.eave --out sail-loft.pdf",
        "drawing sail-loft.eave --out sail-loft.dxf",
        "demo --metric --out kite-loft.eave",
        "sheets kite-loft.eave --out kite-loft.pdf",
        "drawing kite-loft.eave --out kite-loft.dxf",
    ]
    named = capsys.readouterr().out.split("\n  ")[1:]
    assert [Path(line.strip()).name for line in named] == [
        "kite-loft.dxf",
        "kite-loft.eave",
        "kite-loft.pdf",
        "sail-loft.dxf",
        "sail-loft.eave",
        "sail-loft.pdf",
    ]


@pytest.mark.parametrize(("step", "made"), [("demo", 1), ("sheets", 2), ("drawing", 3)])
def test_a_step_that_fails_ends_the_start_with_its_code(
    step: str, made: int, starts: Starts, monkeypatch: pytest.MonkeyPatch
) -> None:
    _screen(monkeypatch, False)
    starts.fails_at = step
    assert run.main([]) == 2
    assert len(starts.calls) == made


@pytest.mark.parametrize("screen", [True, False])
def test_arguments_are_passed_on(
    screen: bool, starts: Starts, monkeypatch: pytest.MonkeyPatch
) -> None:
    _screen(monkeypatch, screen)
    assert run.main(["check", "my room.eave"]) == 0
    assert starts.calls == ["check my room.eave"]
    assert not run.DEMO.exists()


def test_a_window_that_cannot_open_is_refused_before_it_is_tried(
    starts: Starts, monkeypatch: pytest.MonkeyPatch
) -> None:
    _screen(monkeypatch, True)
    monkeypatch.setattr(run, "prepare", lambda _: Prepared(PYTHON, "Missing: libxcb"))
    with pytest.raises(Refusal, match="Missing: libxcb"):
        run.main([])
    assert starts.calls == []


def test_the_command_line_goes_on_where_a_window_cannot(
    starts: Starts, monkeypatch: pytest.MonkeyPatch
) -> None:
    _screen(monkeypatch, True)
    monkeypatch.setattr(run, "prepare", lambda _: Prepared(PYTHON, "Missing: libxcb"))
    assert run.main(["check", "room.eave"]) == 0
    assert starts.calls == ["check room.eave"]
