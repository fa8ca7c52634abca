"""What must come from the operating system: Qt's libraries, and the tools the tests use."""

from __future__ import annotations

import ctypes
import os
import shutil
import sys
from pathlib import Path
from typing import NamedTuple

from plain import say
from streaming import environment, run_logged


class Need(NamedTuple):
    """A shared library or a program, and the Debian package that brings it."""

    what: str
    package: str

    def missing(self) -> bool:
        """Returns whether the loader or the search path does not find it."""
        if ".so." not in self.what:
            return shutil.which(self.what, path=_search_path()) is None
        try:
            ctypes.CDLL(self.what)
        except OSError:
            return True
        return False


# From the NEEDED entries of Qt 6.11's own libraries and platform plugins.
QT = (
    Need("libEGL.so.1", "libegl1"),
    Need("libGL.so.1", "libgl1"),
    Need("libX11.so.6", "libx11-6"),
    Need("libdbus-1.so.3", "libdbus-1-3"),
    Need("libfontconfig.so.1", "libfontconfig1"),
    Need("libfreetype.so.6", "libfreetype6"),
    Need("libglib-2.0.so.0", "libglib2.0-0"),
    Need("libxkbcommon.so.0", "libxkbcommon0"),
    Need("libzstd.so.1", "libzstd1"),
)
X11 = (
    Need("libX11-xcb.so.1", "libx11-xcb1"),
    Need("libxcb-cursor.so.0", "libxcb-cursor0"),
    Need("libxcb-icccm.so.4", "libxcb-icccm4"),
    Need("libxcb-image.so.0", "libxcb-image0"),
    Need("libxcb-keysyms.so.1", "libxcb-keysyms1"),
    Need("libxcb-randr.so.0", "libxcb-randr0"),
    Need("libxcb-render-util.so.0", "libxcb-render-util0"),
    Need("libxcb-shape.so.0", "libxcb-shape0"),
    Need("libxcb-shm.so.0", "libxcb-shm0"),
    Need("libxcb-sync.so.1", "libxcb-sync1"),
    Need("libxcb-util.so.1", "libxcb-util1"),
    Need("libxcb-xfixes.so.0", "libxcb-xfixes0"),
    Need("libxcb-xkb.so.1", "libxcb-xkb1"),
    Need("libxkbcommon-x11.so.0", "libxkbcommon-x11-0"),
)
WAYLAND = (
    Need("libwayland-client.so.0", "libwayland-client0"),
    Need("libwayland-cursor.so.0", "libwayland-cursor0"),
    Need("libwayland-egl.so.1", "libwayland-egl1"),
)
TEST_TOOLS = (
    Need("Xvfb", "xvfb"),
    Need("xdotool", "xdotool"),
    Need("ogrinfo", "gdal-bin"),
    Need("pdftoppm", "poppler-utils"),
    Need("qpdf", "qpdf"),
)


def provide(needs: tuple[Need, ...], logs: Path) -> str:
    """Returns "" if all ``needs`` are there, else one sentence that names what to do.

    Installs what is missing where that is possible without asking: as root on Debian.
    Libraries are looked at on Linux alone, since Qt brings its own elsewhere.
    """
    on_linux = sys.platform.startswith("linux")
    missing = [need for need in needs if (on_linux or ".so." not in need.what) and need.missing()]
    if missing and _is_debian() and _is_root():
        _apt(missing, logs)
        missing = [need for need in missing if need.missing()]
        return advice(missing, debian=True, log=logs / "apt-install.log")
    return advice(missing, debian=_is_debian())


def advice(missing: list[Need], debian: bool, log: Path | None = None) -> str:
    """Returns the sentence for what is ``missing``; ``log`` says apt was tried without success."""
    if not missing:
        return ""
    names = ", ".join(need.what for need in missing)
    if not debian:
        return f"Missing from this system: {names}; install them with its package manager."
    packages = " ".join(sorted({need.package for need in missing}))
    tried = f" (tried without success, log: {log})" if log else ""
    return f"Missing from this system: {names}; run{tried}: sudo apt-get install {packages}"


def condensed(line: str) -> str | None:
    """Returns the few words to show for a line of apt's output, None for nothing."""
    words = line.split()
    # "Get:3 <server> <suite> <architecture> <package> ...": lists of packages have no such words.
    if line.startswith("Get:") and len(words) > 6:
        return f"fetching {words[4]}"
    if line.startswith("Setting up") and len(words) > 2:
        return f"setting up {words[2]}"
    return None


def _apt(missing: list[Need], logs: Path) -> None:
    packages = sorted({need.package for need in missing})
    say(f"Installing {len(packages)} system packages with apt-get: {' '.join(packages)}")
    # dpkg wants the system folders on its path, also when started from a bare environment.
    env = environment({"DEBIAN_FRONTEND": "noninteractive", "PATH": _search_path(), "LC_ALL": "C"})
    patient = ["apt-get", "-o", "DPkg::Lock::Timeout=60"]
    steps = (["update"], ["install", "-y", "--no-install-recommends", *packages])
    for step in steps:
        run_logged([*patient, *step], logs / f"apt-{step[0]}.log", condensed, env)


def _search_path() -> str:
    system = "/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin"
    own = os.environ.get("PATH")
    if os.name == "nt":
        return own or ""
    return f"{own}:{system}" if own else system


def _is_debian() -> bool:
    found = shutil.which("apt-get", path=_search_path())
    return found is not None and Path("/etc/debian_version").exists()


def _is_root() -> bool:
    return hasattr(os, "geteuid") and os.geteuid() == 0
