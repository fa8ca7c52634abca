"""Every example in a docstring of core runs and shows what it says."""

import doctest
import importlib
import pkgutil

import pytest

import core

MODULES = [m.name for m in pkgutil.walk_packages(core.__path__, "core.") if not m.ispkg]


@pytest.mark.parametrize("name", MODULES)
def test_examples_show_what_they_say(name: str) -> None:
    assert doctest.testmod(importlib.import_module(name)).failed == 0


def test_there_are_examples() -> None:
    modules = [importlib.import_module(name) for name in MODULES]
    assert sum(doctest.testmod(module).attempted for module in modules) > 5
