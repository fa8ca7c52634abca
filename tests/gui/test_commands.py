"""The command line: what it writes, what it refuses, and that it needs no Qt."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

import gui
from core.model import SiteRecord
from core.storage import Document, load, save
from gui.commands import main
from gui.edits import delete
from loft import STUD, loft

ROOT = Path(str(gui.__file__)).parent.parent


@pytest.fixture
def demo(tmp_path: Path) -> Path:
    path = tmp_path / "demo.eave"
    assert main(["demo", "--out", str(path)]) == 0
    return path


def bad(capsys: pytest.CaptureFixture[str], *arguments: object) -> str:
    """The one sentence on standard error of a command line that is refused."""
    assert main([str(a) for a in arguments]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert err.count("\n") == 1
    assert err.rstrip().endswith(".")
    assert "Traceback" not in err
    return err


@pytest.mark.parametrize(
    ("more", "name"), [((), "The sail loft"), (("--metric",), "The kite loft")]
)
def test_the_demo_is_a_project(tmp_path: Path, more: tuple[str, ...], name: str) -> None:
    path = tmp_path / "demo.eave"
    assert main(["demo", *more, "--out", str(path)]) == 0
    assert load(path).project.name == name


def test_the_demo_is_never_written_over_somebodys_work(
    demo: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    demo.write_text("mine", encoding="utf-8")
    assert "something stands there already" in bad(capsys, "demo", "--out", demo)
    assert demo.read_text(encoding="utf-8") == "mine"


def test_an_empty_file_may_be_filled(tmp_path: Path) -> None:
    path = tmp_path / "demo.eave"
    path.touch()
    assert main(["demo", "--out", str(path)]) == 0
    assert path.stat().st_size


@pytest.mark.parametrize("paper", ["letter", "tabloid", "a4", "a3"])
def test_sheets_on_each_paper_are_the_same_every_time(
    demo: Path, tmp_path: Path, paper: str
) -> None:
    files = [tmp_path / f"{n}.pdf" for n in (1, 2)]
    for file in files:
        arguments = ["sheets", str(demo), "--out", str(file), "--paper", paper]
        assert main([*arguments, "--date", "2026-02-28"]) == 0
    assert files[0].read_bytes().startswith(b"%PDF-")
    assert files[0].read_bytes() == files[1].read_bytes()


def test_the_drawing_is_the_same_every_time(demo: Path, tmp_path: Path) -> None:
    files = [tmp_path / f"{n}.dxf" for n in (1, 2)]
    for file in files:
        assert main(["drawing", str(demo), "--out", str(file)]) == 0
    assert files[0].read_bytes() == files[1].read_bytes()


def test_figures_are_json_with_every_wall(demo: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["figures", str(demo)]) == 0
    figures = json.loads(capsys.readouterr().out)
    assert figures["format"] == "eavewright-figures/1"
    assert [w["letter"] for w in figures["walls"]] == [w.letter for w in load(demo).project.walls]


def test_check_says_the_cautions(demo: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", str(demo)]) == 0
    said = capsys.readouterr().out.splitlines()
    assert any(line.startswith("Always: Never cut") for line in said)
    assert not any(line.startswith("Cannot be built") for line in said)


def test_check_ends_with_1_if_something_cannot_be_built(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "loft.eave"
    save(path, Document(delete(loft(), "B", STUD), SiteRecord()))
    assert main(["check", str(path)]) == 1
    assert "Cannot be built: In wall B, box 1 has no stud" in capsys.readouterr().out


@pytest.mark.parametrize("command", ["sheets", "drawing", "figures", "check"])
def test_a_file_that_is_not_there_is_named(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], command: str
) -> None:
    missing = tmp_path / "missing.eave"
    out = ["--out", tmp_path / "out"] if command in ("sheets", "drawing") else []
    assert str(missing) in bad(capsys, command, missing, *out)
    assert not (tmp_path / "out").exists()


def test_a_fault_is_told_with_its_place_and_remedy(
    demo: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    text = demo.read_text(encoding="utf-8")
    demo.write_text(text.replace('"width": "26 in"', '"width": "26 inn"', 1), encoding="utf-8")
    said = bad(capsys, "check", demo)
    assert "project.walls[0].openings[0].width" in said
    assert "“26 inn”" in said


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("sheets",), "required: FILE, --out"),
        (("demo",), "required: --out"),
        (("check", "a.eave", "b.eave"), "unrecognized arguments: b.eave"),
        (("a.eave", "b.eave"), "unrecognized arguments: b.eave"),
        (("sheets", "a.eave", "--out", "b", "--paper", "b5"), "invalid choice: 'b5'"),
        (("sheets", "a.eave", "--out", "b", "--date", "2026-02-30"), "“2026-02-30” is no date"),
    ],
)
def test_a_command_line_that_makes_no_sense_is_refused(
    capsys: pytest.CaptureFixture[str], arguments: tuple[str, ...], words: str
) -> None:
    assert words in bad(capsys, *arguments)


@pytest.mark.parametrize("command", ["sheets", "drawing"])
@pytest.mark.parametrize("way", ["plain", "link"])
def test_the_project_is_never_written_over(
    demo: Path, capsys: pytest.CaptureFixture[str], command: str, way: str
) -> None:
    before = demo.read_bytes()
    out = demo
    if way == "link":
        out = demo.parent / "link"
        out.symlink_to(demo)
    assert "this is the project itself" in bad(capsys, command, demo, "--out", out)
    assert demo.read_bytes() == before


@pytest.mark.parametrize("command", ["sheets", "drawing"])
def test_an_output_that_cannot_be_written_is_named(
    demo: Path, capsys: pytest.CaptureFixture[str], command: str
) -> None:
    out = demo.parent / "nowhere" / "out"
    assert str(out) in bad(capsys, command, demo, "--out", out)


@pytest.mark.parametrize("command", ["sheets", "drawing"])
def test_a_project_without_walls_has_nothing_to_show(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], command: str
) -> None:
    path = tmp_path / "empty.eave"
    from gui.edits import delete_wall

    save(path, Document(delete_wall(loft(), "B"), SiteRecord()))
    assert "no wall can be drawn" in bad(capsys, command, path, "--out", tmp_path / "out")


def test_printing_from_the_command_line_leaves_the_project_as_it_was(
    demo: Path, tmp_path: Path
) -> None:
    before = demo.read_bytes()
    assert main(["sheets", str(demo), "--out", str(tmp_path / "a.pdf")]) == 0
    assert demo.read_bytes() == before


def run(*arguments: str, block: bool, cwd: Path) -> subprocess.CompletedProcess[str]:
    """The program in a process of its own; `block` makes every import of Qt fail."""
    hook = "import sys; sys.modules.update({'PySide6': None, 'shiboken6': None}); "
    code = (hook if block else "") + "from gui.commands import main; sys.exit(main())"
    return subprocess.run(
        [sys.executable, "-c", f"import sys; {code}", *arguments],
        cwd=cwd,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=120,
        check=False,
    )


COMMANDS = (
    ("demo", "--out", "a.eave"),
    ("check", "a.eave"),
    ("figures", "a.eave"),
    ("sheets", "a.eave", "--out", "a.pdf"),
    ("drawing", "a.eave", "--out", "a.dxf"),
    ("--help",),
    ("sheets", "--help"),
    ("--version",),
)


def test_every_command_works_where_there_is_no_qt(tmp_path: Path) -> None:
    for command in COMMANDS:
        done = run(*command, block=True, cwd=tmp_path)
        assert (done.returncode, done.stderr) == (0, ""), command
    made = sorted(path.name for path in tmp_path.iterdir())
    assert made == ["a.dxf", "a.eave", "a.pdf"]


def test_the_block_is_felt_by_the_window(tmp_path: Path) -> None:
    done = run(block=True, cwd=tmp_path)
    assert done.returncode == 2
    assert done.stderr.startswith("The window needs PySide6, which is not here")


def test_without_a_screen_the_window_is_refused_in_a_sentence(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(sys, "platform", "linux")
    assert "There is no screen here" in bad(capsys)


def test_a_reader_that_has_seen_enough_is_no_error(tmp_path: Path) -> None:
    assert run("demo", "--out", "a.eave", block=True, cwd=tmp_path).returncode == 0
    code = "import sys; from gui.commands import main; sys.exit(main())"
    with subprocess.Popen(
        [sys.executable, "-c", code, "figures", "a.eave"],
        cwd=tmp_path,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    ) as process:
        assert process.stdout is not None
        assert process.stderr is not None
        process.stdout.close()
        assert process.stderr.read() == b""
        assert process.wait(60) == 0


def test_a_terminal_without_unicode_gets_the_text_all_the_same(tmp_path: Path) -> None:
    environment = {**os.environ, "PYTHONPATH": str(ROOT), "PYTHONIOENCODING": "ascii"}
    assert run("demo", "--metric", "--out", "a.eave", block=True, cwd=tmp_path).returncode == 0
    done = subprocess.run(
        [sys.executable, "-m", "gui", "check", "missing “file”.eave"],
        cwd=tmp_path,
        env=environment,
        capture_output=True,
        check=False,
    )
    assert done.returncode == 2
    assert b"Traceback" not in done.stderr
