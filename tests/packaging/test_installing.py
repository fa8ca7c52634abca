"""What is shown of pip's output, and what its failures are said to mean."""

from __future__ import annotations

from pathlib import Path

import pytest

from installing import condensed, meaning

LOG = Path("build/pip.log")


# Left: lines as pip writes them.
@pytest.mark.parametrize(
    ("output", "begins"),
    [
        (
            "WARNING: Retrying (Retry(total=1, connect=None)) after connection broken by "
            "'NewConnectionError('[Errno 111] Connection refused')': /setuptools/\n"
            "ERROR: Could not find a version that satisfies the requirement setuptools>=77\n"
            "ERROR: No matching distribution found for setuptools>=77",
            "No network: ",
        ),
        ("socket.gaierror: [Errno -3] Temporary failure in name resolution", "No network: "),
        ("ERROR: Could not install packages due to an OSError: [Errno 28] No space", "The disk is"),
        ("ERROR: [Errno 13] Permission denied: '/x/.venv/lib'", "A folder cannot be written"),
        ("ERROR: No matching distribution found for reportlab<6,>=5.1", "The package index has no"),
        ("SSLError(SSLCertVerificationError(1, '[SSL: CERT'))", "The package index's certificate"),
        ("because ensurepip is not available.  On Debian", "This Python lacks its venv module"),
        ("ERROR: something new", "An installation step failed"),
        ("", "An installation step failed"),
    ],
)
def test_meaning(output: str, begins: str) -> None:
    sentence = meaning(output, LOG)
    assert sentence.startswith(begins)
    assert sentence.endswith(f"(log: {LOG}).")
    assert "\n" not in sentence


def test_a_full_disk_outranks_a_retried_connection() -> None:
    output = "Retrying after connection broken by 'ReadTimeoutError'\n[Errno 28] No space left"
    assert meaning(output, LOG).startswith("The disk is full")


@pytest.mark.parametrize(
    ("line", "shown"),
    [
        ("Collecting PySide6-Essentials<6.12,>=6.8", "PySide6-Essentials"),
        ("  Collecting setuptools>=77", "setuptools"),
        ("Collecting pdfminer.six==20260107", "pdfminer.six"),
        ("Processing /mirror/files/pytest_cov-7.1.0-py3-none-any.whl (from x)", "pytest_cov"),
        ("Processing ./wheels/ezdxf-1.4.5-cp311-cp311-linux.whl", "ezdxf"),
        ("  Downloading numpy-2.4.6-cp311-cp311-linux.whl (16.9 MB)", "numpy, 16.9 MB"),
        ("  Downloading https://index/x/ezdxf-1.4.5-py3-none-any.whl (6.0 MB)", "ezdxf, 6.0 MB"),
        ("  Downloading polib-1.2.0-py2.py3-none-any.whl (20 kB)", None),
        ("Installing collected packages: polib, pillow, numpy", "putting in place: 3 in all"),
        ("Requirement already satisfied: numpy in ./lib", None),
        ("", None),
    ],
)
def test_condensed(line: str, shown: str | None) -> None:
    assert condensed(line) == shown
