"""The project's own Python environment, .venv: whether it is whole, and making it so."""

from __future__ import annotations

import contextlib
import hashlib
import importlib.util
import json
import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any, Iterable, Iterator

from installing import install, meaning
from plain import Refusal, say
from streaming import run_logged


def python_of(root: Path) -> Path:
    """Returns where the environment's Python is, whether it exists yet or not."""
    return root / ".venv" / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def ready_environment(root: Path, extras: frozenset[str]) -> Path:
    """Returns the Python of an environment in which the project and ``extras`` are installed.

    Makes, mends or completes it where needed; touches nothing where it is as pyproject.toml says.
    """
    if lacking(root, extras) is None:
        return python_of(root)
    if not os.access(root, os.W_OK):
        raise Refusal(f"{root} cannot be written; use a copy of the folder that belongs to you.")
    with _alone(root):
        reason = lacking(root, extras)
        if reason == "rebuild":
            _make_venv(root)
        if reason:
            _complete(root, extras | _installed_extras(root))
    return python_of(root)


def lacking(root: Path, extras: frozenset[str]) -> str | None:
    """Returns "rebuild" or "install" for what ``.venv`` needs, None if it is as it should be."""
    if _half_made(root).exists() or not python_of(root).exists():
        return "rebuild"
    stamp = _stamp(root)
    if not stamp:
        return "install" if _runs_pip(root) else "rebuild"
    if {key: stamp.get(key) for key in ("place", "python")} != _base(root):
        return "rebuild"
    if stamp.get("project") != fingerprint(root) or not extras <= _installed_extras(root):
        return "install"
    return None


def fingerprint(root: Path) -> str:
    """Returns a hash of all that decides what gets installed: dependencies, packages, version."""
    import tomllib

    try:
        project = tomllib.loads((root / "pyproject.toml").read_text(encoding="utf-8"))
    except tomllib.TOMLDecodeError as error:
        raise Refusal(f"{root / 'pyproject.toml'} cannot be read: {error}.") from error
    tool = project.get("tool", {}).get("setuptools")
    parts = [project.get("build-system"), project.get("project"), tool]
    version = (root / "core" / "__init__.py").read_text(encoding="utf-8")
    text = json.dumps([parts, version], sort_keys=True)
    return hashlib.sha256(text.encode()).hexdigest()


def require_venv_module() -> None:
    """Refuses in one sentence if this Python cannot make environments."""
    # A folder left behind without files would still be found, but has no origin.
    specs = [importlib.util.find_spec(name) for name in ("venv", "ensurepip")]
    if any(spec is None or spec.origin is None for spec in specs):
        raise Refusal(
            "This Python lacks its venv module; on Debian: apt install python3-venv, "
            "elsewhere install the full Python."
        )


def _make_venv(root: Path) -> None:
    require_venv_module()
    folder = root / ".venv"
    if folder.is_symlink() or folder.is_file():
        folder.unlink()
    elif folder.exists():
        say("The environment in .venv is unfinished or of another Python; making it anew.")
        shutil.rmtree(folder)
    folder.mkdir()
    _half_made(root).touch()
    say("Making the environment in .venv")
    log = root / "build" / "venv.log"
    command = [sys.executable, "-m", "venv", str(folder)]
    code, output = run_logged(command, log, lambda _line: None)
    if code:
        raise Refusal(meaning(output, log))
    _half_made(root).unlink()


def _complete(root: Path, extras: frozenset[str]) -> None:
    # The mark outlives an interruption while files change, when pip's records cannot be trusted.
    install(python_of(root), root, extras, before_writing=_half_made(root).touch)
    stamp = {**_base(root), "project": fingerprint(root), "extras": sorted(extras)}
    fresh = _stamp_file(root).with_suffix(".new")
    fresh.write_text(json.dumps(stamp, indent=1), encoding="utf-8")
    with contextlib.suppress(FileNotFoundError):
        _half_made(root).unlink()
    fresh.replace(_stamp_file(root))


def _half_made(root: Path) -> Path:
    return root / ".venv" / "half-made"


def _stamp_file(root: Path) -> Path:
    return root / ".venv" / "eavewright-stamp.json"


def _base(root: Path) -> dict[str, str]:
    """What only a new environment can change: its scripts name their place and their Python."""
    return {"place": str(root), "python": f"{sys.version_info[0]}.{sys.version_info[1]}"}


def _stamp(root: Path) -> dict[str, Any]:
    try:
        stamp = json.loads(_stamp_file(root).read_text(encoding="utf-8"))
    except (FileNotFoundError, ValueError):
        return {}
    return stamp if isinstance(stamp, dict) else {}


def _installed_extras(root: Path) -> frozenset[str]:
    extras: Iterable[str] = _stamp(root).get("extras", ())
    return frozenset(extras)


def _runs_pip(root: Path) -> bool:
    command = [str(python_of(root)), "-I", "-m", "pip", "--version"]
    answer = subprocess.run(command, capture_output=True, text=True, check=False)
    return answer.returncode == 0 and f"(python {_base(root)['python']})" in answer.stdout


@contextlib.contextmanager
def _alone(root: Path) -> Iterator[None]:
    """Holds a lock, so that a second start waits for the first one to finish installing."""
    try:
        import fcntl
    except ImportError:  # Windows: two first starts at once are left to the person.
        yield
        return
    (root / "build").mkdir(exist_ok=True)
    with (root / "build" / "prepare.lock").open("w") as lock:
        try:
            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            say("Another start is installing; waiting for it.")
            fcntl.flock(lock, fcntl.LOCK_EX)
        yield
