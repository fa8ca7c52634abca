"""Undo and redo hand out the very projects that were recorded."""

from __future__ import annotations

import msgspec
from hypothesis import given
from hypothesis import strategies as st

from core.model import Project
from gui.history import History
from loft import loft


def named(name: str) -> Project:
    return msgspec.structs.replace(loft(), name=name)


def test_a_fresh_history_is_clean_and_has_nothing_to_undo() -> None:
    history = History(named("a"))
    assert (history.undo_text, history.redo_text, history.is_clean) == (None, None, True)
    assert not history.undo()
    assert not history.redo()


def test_undo_and_redo_give_back_the_same_objects() -> None:
    first, second = named("a"), named("b")
    history = History(first)
    assert history.record("rename", second)
    assert (history.undo_text, history.redo_text) == ("rename", None)
    assert history.undo()
    assert history.project is first
    assert (history.undo_text, history.redo_text) == (None, "rename")
    assert history.redo()
    assert history.project is second


def test_an_equal_project_makes_no_step() -> None:
    history = History(named("a"))
    assert not history.record("nothing", named("a"))
    assert history.undo_text is None


def test_a_new_step_forgets_what_was_taken_back() -> None:
    history = History(named("a"))
    history.record("b", named("b"))
    history.undo()
    history.record("c", named("c"))
    assert history.redo_text is None
    assert not history.redo()


def test_clean_is_what_was_last_saved_from_either_side() -> None:
    history = History(named("a"))
    history.record("b", named("b"))
    assert not history.is_clean
    history.saved()
    assert history.is_clean
    history.undo()
    assert not history.is_clean
    history.redo()
    assert history.is_clean


def test_undo_has_no_limit() -> None:
    history = History(named("0"))
    for number in range(1, 1001):
        history.record(f"{number}", named(f"{number}"))
    steps = 0
    while history.undo():
        steps += 1
    assert (steps, history.project.name) == (1000, "0")


@given(st.lists(st.sampled_from(["undo", "redo", "a", "b", "c"])))
def test_it_behaves_like_a_list_with_a_place_in_it(moves: list[str]) -> None:
    history, states, at = History(named("start")), ["start"], 0
    for move in moves:
        if move == "undo":
            assert history.undo() is (at > 0)
            at = max(at - 1, 0)
        elif move == "redo":
            assert history.redo() is (at < len(states) - 1)
            at = min(at + 1, len(states) - 1)
        elif move != states[at]:
            history.record(move, named(move))
            states, at = [*states[: at + 1], move], at + 1
        assert history.project.name == states[at]
