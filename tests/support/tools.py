"""Other people's programs that tests read our files back with."""

from __future__ import annotations

import shutil
import subprocess

import pytest


def run_tool(package: str, *command: str) -> str:
    """What the program prints; the test fails, naming its Debian package, if it is missing."""
    if shutil.which(command[0]) is None:
        pytest.fail(f"{command[0]} is missing: install the Debian package {package}")
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    if done.returncode:
        pytest.fail(f"{' '.join(command)} ended with {done.returncode}: {done.stdout}{done.stderr}")
    return done.stdout
