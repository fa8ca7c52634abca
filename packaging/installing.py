"""pip: installing this project into its own environment, and what pip's failures mean."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Callable, Iterable

from plain import Refusal, say
from streaming import environment, run_logged

# pip's messages and the exception names of the HTTP library it carries; the first match counts.
_MEANINGS = (
    (
        r"No space left on device|Errno 28|Disk quota exceeded|WinError 112",
        "The disk is full; free about 1 GB and run this again",
    ),
    (
        r"ensurepip is not available|No module named '?ensurepip",
        "This Python lacks its venv module; on Debian: apt install python3-venv",
    ),
    (
        r"CERTIFICATE_VERIFY_FAILED|SSLCertVerificationError",
        "The package index's certificate is not trusted here; "
        "name your network's certificate file in PIP_CERT and run this again",
    ),
    (
        r"NewConnectionError|ConnectTimeoutError|ReadTimeoutError|ProxyError|RemoteDisconnected"
        r"|NameResolutionError|name resolution|Name or service not known|getaddrinfo failed"
        r"|Network is unreachable|No route to host|Connection refused|Connection reset"
        r"|Connection aborted|Connection broken|Read timed out|IncompleteRead",
        "No network: the package index could not be reached; "
        "connect, or name a reachable index in PIP_INDEX_URL, and run this again",
    ),
    (
        r"Permission denied|Errno 13|Errno 30|Read-only file system|WinError 5\b",
        "A folder cannot be written; use a copy of this folder that belongs to you",
    ),
    (
        r"No matching distribution found for",
        "The package index has no version that fits; read the log and pyproject.toml",
    ),
)
_UNKNOWN = "An installation step failed; the end of the log says why"


def meaning(output: str, log: Path) -> str:
    """Returns one sentence for the output of a failed installation step; it names ``log``."""
    for pattern, words in _MEANINGS:
        if re.search(pattern, output):
            return f"{words} (log: {log})."
    return f"{_UNKNOWN} (log: {log})."


def condensed(line: str) -> str | None:
    """Returns the few words to show for a line of pip's output, None for nothing."""
    named = re.match(r"\s*Collecting ([\w.\-\[\]]+)|\s*Processing \S*?([^/\s]+?)-\d\S*\.whl", line)
    if named:
        return named.group(1) or named.group(2)
    large = re.match(r"\s*Downloading (\S+?)-\d\S* \(([\d.]+ [MG]B)\)", line)
    if large:
        return f"{large.group(1).rpartition('/')[2]}, {large.group(2)}"
    placing = re.match(r"\s*Installing collected packages: (.*)", line)
    if placing:
        return f"putting in place: {placing.group(1).count(',') + 1} in all"
    return None


def install(
    python: Path, root: Path, extras: Iterable[str], before_writing: Callable[[], None]
) -> None:
    """Installs ``root`` editable, with ``extras``; refuses with pip's reason in one sentence.

    ``before_writing`` is called once all is downloaded and pip is about to change files.
    """

    def watch(line: str) -> str | None:
        if "Installing collected packages" in line:
            before_writing()
        return condensed(line)

    wanted = ",".join(sorted(extras))
    target = f"{root}[{wanted}]" if wanted else str(root)
    log = root / "build" / "pip.log"
    say("Fetching what the program is built on (some minutes the first time):")
    command = [str(python), "-m", "pip", "install", "--no-input", "--progress-bar=off"]
    code, output = run_logged([*command, "-e", target], log, watch, _pip_environment())
    if code:
        raise Refusal(meaning(output, log))


def _pip_environment() -> dict[str, str]:
    # A stranger's PYTHONPATH would pass for installed packages, PIP_USER cannot be in a venv.
    quiet = {"PIP_DISABLE_PIP_VERSION_CHECK": "1", "PIP_ROOT_USER_ACTION": "ignore"}
    steady = {"PYTHONUNBUFFERED": "1", "PIP_USER": "0", "PIP_RETRIES": "2"}
    return environment({**quiet, **steady}, without=("PYTHONPATH", "PYTHONHOME"))
