"""What is found missing on a system, and what the person is told to run."""

from __future__ import annotations

from pathlib import Path

import pytest

import system_needs
from system_needs import QT, TEST_TOOLS, WAYLAND, X11, Need, advice, condensed, provide

NOWHERE = Need("libnowhere-eavewright.so.7", "libnowhere7")
NO_TOOL = Need("no-such-eavewright-tool", "no-tool")


@pytest.mark.parametrize(
    ("need", "missing"),
    [
        (Need("libc.so.6", "libc6"), False),
        (Need("sh", "dash"), False),
        (NOWHERE, True),
        (NO_TOOL, True),
    ],
)
def test_missing(need: Need, missing: bool) -> None:
    assert need.missing() is missing


def test_tools_are_found_without_a_search_path(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("PATH", raising=False)
    assert not Need("sh", "dash").missing()


@pytest.mark.parametrize(
    ("missing", "debian", "sentence"),
    [
        ([], True, ""),
        ([], False, ""),
        (
            [NO_TOOL, NOWHERE],
            True,
            "Missing from this system: no-such-eavewright-tool, libnowhere-eavewright.so.7; "
            "run: sudo apt-get install libnowhere7 no-tool",
        ),
        (
            [NOWHERE],
            False,
            "Missing from this system: libnowhere-eavewright.so.7; "
            "install them with its package manager.",
        ),
    ],
)
def test_advice(missing: list[Need], debian: bool, sentence: str) -> None:
    assert advice(missing, debian) == sentence


def test_advice_after_a_failed_try_names_the_log() -> None:
    tried = advice([NOWHERE], debian=True, log=Path("build/apt-install.log"))
    assert tried.endswith(
        "run (tried without success, log: build/apt-install.log): sudo apt-get install libnowhere7"
    )


@pytest.mark.parametrize(("root", "debian"), [(False, True), (False, False), (True, False)])
def test_nothing_is_installed_without_the_right(
    root: bool, debian: bool, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(system_needs, "_is_root", lambda: root)
    monkeypatch.setattr(system_needs, "_is_debian", lambda: debian)
    monkeypatch.setattr(system_needs, "_apt", lambda *_: pytest.fail("apt-get was started"))
    assert provide((NOWHERE,), tmp_path) == advice([NOWHERE], debian)


def test_root_on_debian_installs_what_is_missing_alone(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    asked: list[Need] = []
    monkeypatch.setattr(system_needs, "_is_root", lambda: True)
    monkeypatch.setattr(system_needs, "_is_debian", lambda: True)
    monkeypatch.setattr(system_needs, "_apt", lambda missing, _: asked.extend(missing))
    assert "tried without success" in provide((Need("sh", "dash"), NO_TOOL), tmp_path)
    assert asked == [NO_TOOL]


def test_each_need_is_stated_once() -> None:
    needs = QT + X11 + WAYLAND + TEST_TOOLS
    assert len({need.what for need in needs}) == len(needs)


# Left: lines as apt-get writes them.
@pytest.mark.parametrize(
    ("line", "shown"),
    [
        (
            "Get:3 http://deb/debian bookworm/main amd64 qpdf amd64 11.3.0-1 [486 kB]",
            "fetching qpdf",
        ),
        ("Get:1 http://deb/debian bookworm InRelease [151 kB]", None),
        ("Get:2 http://deb/debian bookworm/main amd64 Packages [8793 kB]", "fetching Packages"),
        ("Setting up qpdf (11.3.0-1) ...", "setting up qpdf"),
        ("Reading package lists...", None),
    ],
)
def test_condensed(line: str, shown: str | None) -> None:
    assert condensed(line) == shown
