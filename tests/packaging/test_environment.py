"""When the environment is taken as it is, completed, or made anew."""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

import pytest

import environment
from environment import fingerprint, lacking, ready_environment
from plain import Refusal

NONE: frozenset[str] = frozenset()
TEST = frozenset({"test"})
HERE = f"{sys.version_info[0]}.{sys.version_info[1]}"
PYPROJECT = """
[project]
name = "loft"
dependencies = ["numpy"]

[tool.setuptools]
package-dir = {"" = "."}

[tool.ruff]
line-length = 100
"""


@pytest.fixture
def checkout(tmp_path: Path) -> Path:
    """A checkout whose environment is complete, with the test extra."""
    (tmp_path / "pyproject.toml").write_text(PYPROJECT)
    (tmp_path / "core").mkdir()
    (tmp_path / "core" / "__init__.py").write_text('__version__ = "0.1.0"\n')
    python = environment.python_of(tmp_path)
    python.parent.mkdir(parents=True)
    python.symlink_to(sys.executable)
    _stamp(tmp_path)
    return tmp_path


def _stamp(checkout: Path, **changes: Any) -> None:
    stamp = {
        "place": str(checkout),
        "python": HERE,
        "project": fingerprint(checkout),
        "extras": ["test"],
        **changes,
    }
    (checkout / ".venv" / "eavewright-stamp.json").write_text(json.dumps(stamp))


def _edit(file: Path, old: str, new: str) -> None:
    text = file.read_text()
    assert old in text
    file.write_text(text.replace(old, new))


def test_complete_environment_is_left_alone(checkout: Path) -> None:
    before = sorted(path.name for path in checkout.rglob("*"))
    assert ready_environment(checkout, TEST) == environment.python_of(checkout)
    assert sorted(path.name for path in checkout.rglob("*")) == before


@pytest.mark.parametrize("extras", [NONE, TEST])
def test_more_extras_than_asked_for_do_no_harm(checkout: Path, extras: frozenset[str]) -> None:
    assert lacking(checkout, extras) is None


@pytest.mark.parametrize(
    ("changes", "verdict"),
    [
        ({"place": "/elsewhere"}, "rebuild"),  # moved or copied: its scripts point back there
        ({"python": "3.10"}, "rebuild"),
        ({"project": "of yesterday"}, "install"),
        ({"extras": []}, "install"),
    ],
)
def test_stamp_that_differs(checkout: Path, changes: dict[str, Any], verdict: str) -> None:
    _stamp(checkout, **changes)
    assert lacking(checkout, TEST) == verdict


def test_no_environment(checkout: Path) -> None:
    (checkout / ".venv").rename(checkout / "gone")
    assert lacking(checkout, NONE) == "rebuild"


def test_python_behind_the_link_is_gone(checkout: Path) -> None:
    python = environment.python_of(checkout)
    python.unlink()
    python.symlink_to(checkout / "uninstalled")
    assert lacking(checkout, NONE) == "rebuild"


def test_interrupted_while_files_changed(checkout: Path) -> None:
    (checkout / ".venv" / "half-made").touch()
    assert lacking(checkout, NONE) == "rebuild"


@pytest.mark.parametrize("text", ["", "{", "[]", "{}"])
def test_torn_stamp_counts_as_none_and_a_python_with_pip_is_completed(
    checkout: Path, text: str
) -> None:
    (checkout / ".venv" / "eavewright-stamp.json").write_text(text)
    assert lacking(checkout, NONE) == "install"  # the link leads to this Python, which has pip


def test_no_stamp_and_a_python_that_does_not_run(checkout: Path) -> None:
    (checkout / ".venv" / "eavewright-stamp.json").unlink()
    python = environment.python_of(checkout)
    python.unlink()
    python.write_text("#!/bin/sh\nexit 1\n")
    python.chmod(0o755)
    assert lacking(checkout, NONE) == "rebuild"


@pytest.mark.parametrize(
    ("file", "old", "new", "same"),
    [
        ("pyproject.toml", "numpy", "scipy", False),
        ("pyproject.toml", '"."', '"src"', False),
        ("core/__init__.py", "0.1.0", "0.2.0", False),
        ("pyproject.toml", "100", "90", True),  # how lines are wrapped installs nothing
    ],
)
def test_fingerprint(checkout: Path, file: str, old: str, new: str, same: bool) -> None:
    before = fingerprint(checkout)
    _edit(checkout / file, old, new)
    assert (fingerprint(checkout) == before) is same


def test_unreadable_project_file_is_named(checkout: Path) -> None:
    _edit(checkout / "pyproject.toml", "[project]", "[project")
    with pytest.raises(Refusal, match=r"pyproject\.toml cannot be read: .*line 2"):
        lacking(checkout, NONE)


@pytest.mark.parametrize("module", ["venv", "ensurepip"])
def test_missing_venv_module(module: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, module, None)
    with pytest.raises(Refusal, match="lacks its venv module; on Debian: apt install python3-venv"):
        environment.require_venv_module()


def test_folder_of_someone_else(checkout: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    _stamp(checkout, project="of yesterday")
    monkeypatch.setattr("os.access", lambda *_: False)
    with pytest.raises(Refusal, match="cannot be written; use a copy of the folder that belongs"):
        ready_environment(checkout, TEST)
