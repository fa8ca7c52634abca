"""Puts seeded faults into the roof and the framing and reports the share that the tests find.

    python tests/mutants/hunt.py [--count 300] [--seed 1] [--jobs 2] [--demand 85]

Each mutant is run against the quick tests in a copy of the tree, those of its own module first,
until one fails. Exit code 1 if fewer are found than demanded.
"""

from __future__ import annotations

import argparse
import os
import random
import shutil
import subprocess
import sys
import tempfile
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from queue import SimpleQueue
from typing import NamedTuple

from mutate import Mutant, mutants

ROOT = Path(__file__).resolve().parents[2]
ROOMS = ("core/roof", "core/framing")
COPIED = ("core", "resources", "tests", "packaging", "pyproject.toml")
TESTS = ("tests/core/roof", "tests/core/framing", "tests/facts")

# Drawn, written and told as well, for minutes; what they show is checked by the others.
LEFT_OUT = "test_every_wall_can_be_shown_and_told"
SLOWER = ("properties", "against", "under_any_roof")


class Site(NamedTuple):
    """A mutant and the file it stands in, from the root of the tree."""

    path: str
    mutant: Mutant

    def __str__(self) -> str:
        return f"{self.path}:{self.mutant.line}  {self.mutant.before}  ->  {self.mutant.after}"


class Verdict(NamedTuple):
    """What became of a mutant: whether it was found, and after how long, s."""

    site: Site
    found: bool
    seconds: float


def main(arguments: list[str]) -> int:
    """Returns 0 if at least as many mutants were found as demanded, 1 if not."""
    options = parsed(arguments)
    every = sites()
    chosen = random.Random(options.seed).sample(every, min(options.count, len(every)))
    print(f"{len(chosen)} of {len(every)} mutants of {' and '.join(ROOMS)}, seed {options.seed}")
    with tempfile.TemporaryDirectory(prefix="eavewright-mutants-") as folder:
        trees = [_copy(Path(folder) / str(n)) for n in range(options.jobs)]
        seconds = _unchanged(trees[0], options.limit)
        print(f"unchanged, the tests pass in {seconds:.0f} s", flush=True)
        # A mutant that makes the tests so much slower hangs, or would be noticed.
        verdicts = _every(chosen, trees, min(options.limit, 60 + 5 * seconds))
    return told(verdicts, options.demand)


def parsed(arguments: list[str]) -> argparse.Namespace:
    """Returns the options ``count``, ``seed``, ``jobs``, ``demand`` (per cent), ``limit`` (s)."""
    parser = argparse.ArgumentParser(prog="hunt.py", description="Mutants of roof and framing.")
    parser.add_argument("--count", type=int, default=300)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--jobs", type=int, default=os.cpu_count() or 1)
    parser.add_argument("--demand", type=float, default=85.0)
    parser.add_argument("--limit", type=float, default=600.0)
    return parser.parse_args(arguments)


def sites() -> list[Site]:
    """Every mutant there is, in the order of files and lines."""
    files = sorted(path for room in ROOMS for path in (ROOT / room).glob("*.py"))
    return [
        Site(path.relative_to(ROOT).as_posix(), mutant)
        for path in files
        if path.name != "__init__.py"
        for mutant in mutants(path.read_text(encoding="utf-8"))
    ]


def ordered(tree: Path, path: str) -> list[str]:
    """The test files for a mutant of a module: its own first, properties and oracles last."""
    own = f"tests/{Path(path).parent.as_posix()}/test_{Path(path).name}"
    files = sorted(f for folder in TESTS for f in (tree / folder).rglob("test_*.py"))
    names = [f.relative_to(tree).as_posix() for f in files]
    return sorted(names, key=lambda n: (n != own, any(s in n for s in SLOWER)))


def told(verdicts: list[Verdict], demand: float) -> int:
    """Prints those not found and the share; returns 1 if it is less than `demand` per cent."""
    missed = [v for v in verdicts if not v.found]
    for verdict in sorted(missed, key=lambda v: str(v.site)):
        print(f"not found: {verdict.site}")
    share = 100.0 * (len(verdicts) - len(missed)) / len(verdicts)
    print(f"{len(verdicts) - len(missed)} of {len(verdicts)} mutants found: {share:.1f} %")
    return int(share < demand)


def _copy(folder: Path) -> Path:
    folder.mkdir()
    for name in COPIED:
        whole, to = ROOT / name, folder / name
        if whole.is_dir():
            shutil.copytree(whole, to, ignore=shutil.ignore_patterns("__pycache__"))
        else:
            shutil.copy(whole, to)
    return folder


def _unchanged(tree: Path, limit: float) -> float:
    start = time.monotonic()
    if _fails(tree, ordered(tree, f"{ROOMS[0]}/line.py"), limit):
        raise SystemExit("The tests fail without any mutant: mend them first.")
    return time.monotonic() - start


def _every(chosen: list[Site], trees: list[Path], limit: float) -> list[Verdict]:
    free: SimpleQueue[Path] = SimpleQueue()
    for tree in trees:
        free.put(tree)

    def tried(site: Site) -> Verdict:
        tree = free.get()
        try:
            return _tried(site, tree, limit)
        finally:
            free.put(tree)

    with ThreadPoolExecutor(len(trees)) as pool:
        return [_said(n, v) for n, v in enumerate(pool.map(tried, chosen), start=1)]


def _tried(site: Site, tree: Path, limit: float) -> Verdict:
    start, file = time.monotonic(), tree / site.path
    whole = file.read_text(encoding="utf-8")
    file.write_text(site.mutant.source, encoding="utf-8")
    try:
        found = _fails(tree, ordered(tree, site.path), limit)
    finally:
        file.write_text(whole, encoding="utf-8")
    return Verdict(site, found, time.monotonic() - start)


def _said(number: int, verdict: Verdict) -> Verdict:
    word = "found" if verdict.found else "NOT FOUND"
    print(f"{number:4} {verdict.seconds:5.1f} s  {word:9}  {verdict.site}", flush=True)
    return verdict


def _fails(tree: Path, files: list[str], limit: float) -> bool:
    """Whether a test fails; one that does not end within the limit, s, does."""
    quiet = ("-x", "-q", "-p", "no:cacheprovider")
    command = (sys.executable, "-m", "pytest", *quiet, "-m", "not slow", "-k", f"not {LEFT_OUT}")
    env = {
        **os.environ,
        "EAVEWRIGHT_PROFILE": "check",
        "PYTHONDONTWRITEBYTECODE": "1",
        "PYTHONPATH": str(tree),
    }
    try:
        ended = subprocess.run(
            [*command, *files], cwd=tree, env=env, capture_output=True, timeout=limit
        )
    except subprocess.TimeoutExpired:
        return True
    # 2: a test file could not even be read, since what it imports fails.
    if ended.returncode not in (0, 1, 2):
        raise SystemExit(ended.stdout.decode(errors="replace"))
    return ended.returncode != 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
