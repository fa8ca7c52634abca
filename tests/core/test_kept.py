"""Results kept from round to round: the same value, made once, and forgotten in time."""

import pytest

from core.kept import ROUNDS, Kept


class Counted:
    """A function that counts how often it is asked."""

    def __init__(self) -> None:
        self.calls = 0

    def __call__(self, *numbers: float) -> list[float]:
        self.calls += 1
        return [*numbers]


def test_what_was_made_is_given_again() -> None:
    kept, make = Kept(), Counted()
    first = kept.of(make, 1.0, 2.0)
    assert first == [1.0, 2.0]
    assert kept.of(make, 1.0, 2.0) is first
    assert make.calls == 1


@pytest.mark.parametrize("other", [(2.0, 1.0), (1.0,), ()])
def test_other_values_give_another(other: tuple[float, ...]) -> None:
    kept, make = Kept(), Counted()
    kept.of(make, 1.0, 2.0)
    assert kept.of(make, *other) == [*other]
    assert make.calls == 2


def test_another_function_of_the_same_values_gives_another() -> None:
    kept = Kept()
    assert [kept.of(f, 9.0, 4.0) for f in (max, min)] == [9.0, 4.0]


def test_nothing_made_is_kept_as_well() -> None:
    asked: list[float] = []
    kept = Kept()
    assert [kept.of(asked.append, 1.0), kept.of(asked.append, 1.0)] == [None, None]
    assert asked == [1.0]


def test_what_each_round_asks_for_stays() -> None:
    kept, make = Kept(), Counted()
    for _ in range(3 * ROUNDS):
        kept.next_round()
        kept.of(make, 1.0)
    assert make.calls == 1


def test_what_no_round_asks_for_is_forgotten() -> None:
    """Each round asks for one thing of its own: at most as many stay as there are rounds."""
    kept, make = Kept(), Counted()
    for n in range(5 * ROUNDS):
        kept.next_round()
        kept.of(make, float(n))
        assert kept.size <= ROUNDS + 1
    kept.of(make, 0.0)
    assert make.calls == 5 * ROUNDS + 1
