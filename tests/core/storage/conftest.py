"""The sail loft as a person would write it by hand, as text and as the document it states."""

from __future__ import annotations

from pathlib import Path

import pytest

from core.storage import Document, read_document

HAND_WRITTEN = Path(__file__).with_name("loft.eave")


@pytest.fixture(scope="session")
def loft_text() -> str:
    return HAND_WRITTEN.read_text(encoding="utf-8")


@pytest.fixture(scope="session")
def loft(loft_text: str) -> Document:
    return read_document(loft_text.encode(), "loft.eave")
