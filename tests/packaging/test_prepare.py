"""Making ready as a whole: what a screen needs, and a first start without a network."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

import prepare
from plain import ROOT
from system_needs import QT, WAYLAND, X11, Need

on_linux = sys.platform.startswith("linux")


@pytest.mark.parametrize(
    ("variables", "screen", "needs"),
    [
        ({}, not on_linux, QT + X11),
        ({"DISPLAY": ""}, not on_linux, QT + X11),
        ({"DISPLAY": ":0"}, True, QT + X11),
        ({"WAYLAND_DISPLAY": "wayland-0"}, True, QT + WAYLAND),
        ({"DISPLAY": ":0", "WAYLAND_DISPLAY": "wayland-0"}, True, QT + WAYLAND),
    ],
)
def test_screen(
    variables: dict[str, str],
    screen: bool,
    needs: tuple[Need, ...],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    for name in ("DISPLAY", "WAYLAND_DISPLAY"):
        monkeypatch.delenv(name, raising=False)
    for name, value in variables.items():
        monkeypatch.setenv(name, value)
    assert prepare.has_screen() is screen
    assert prepare.window_needs() == needs


@pytest.fixture
def fresh_copy(tmp_path: Path) -> Path:
    """A checkout as it comes, without environment, of the files that installing reads."""
    copy = tmp_path / "copy of eavewright"  # with spaces, as people's folders have
    shutil.copytree(ROOT / "packaging", copy / "packaging")
    shutil.copy(ROOT / "pyproject.toml", copy)
    (copy / "core").mkdir()
    shutil.copy(ROOT / "core" / "__init__.py", copy / "core")
    return copy


def _start(copy: Path, **variables: str) -> subprocess.CompletedProcess[str]:
    left_out = ("DISPLAY", "WAYLAND_DISPLAY")
    kept = {k: v for k, v in os.environ.items() if k not in left_out and not k.startswith("PIP_")}
    return subprocess.run(
        [sys.executable, str(copy / "packaging" / "run.py")],
        env={**kept, "PIP_CONFIG_FILE": os.devnull, **variables},
        capture_output=True,
        text=True,
        check=False,
    )


@pytest.mark.slow
def test_no_network_on_a_half_made_environment(fresh_copy: Path) -> None:
    half_made = fresh_copy / ".venv" / "half-made"
    half_made.parent.mkdir()
    half_made.touch()
    # Nothing listens at port 9 (discard), so each connection is refused at once.
    ended = _start(fresh_copy, PIP_INDEX_URL="http://127.0.0.1:9/simple")
    said = ended.stderr.splitlines()
    assert ended.returncode == 2
    assert said[0] == "The environment in .venv is unfinished or of another Python; making it anew."
    assert said[-1].startswith("No network: the package index could not be reached;")
    assert "Traceback" not in ended.stderr
    log = fresh_copy / "build" / "pip.log"
    assert str(log) in said[-1]
    assert "127.0.0.1" in log.read_text(encoding="utf-8")
    # Nothing was changed in the environment, so it is whole and only has to be completed.
    assert not half_made.exists()
    assert not (fresh_copy / ".venv" / "eavewright-stamp.json").exists()
