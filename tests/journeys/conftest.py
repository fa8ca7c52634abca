"""What every journey shares."""

from __future__ import annotations

import pytest


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """The offscreen platform has no window manager to tell a window's least size to."""
    quiet = pytest.mark.qt_log_ignore("does not support propagateSizeHints", extend=True)
    for item in items:
        if "/journeys/" in item.nodeid:
            item.add_marker(quiet)
