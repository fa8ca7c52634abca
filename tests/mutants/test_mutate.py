"""What the mutator changes in a line of source, and what it leaves alone."""

from __future__ import annotations

import pytest

from mutate import mutants


@pytest.mark.parametrize(
    ("source", "expected"),
    [
        ("a < b", ["(a > b)"]),
        ("a <= b < c", ["(a >= b < c)", "(a <= b > c)"]),
        ("a is None", ["(a is not None)"]),
        ("a not in b", ["(a in b)"]),
        ("a + b * c", ["(a - b * c)", "a + (b / c)"]),
        ("a and b or c", ["((a and b) and c)", "(a or b) or c"]),
        ("not a", ["(a)"]),
        ("-a", ["(a)"]),
        ("min(a, b)", ["(max(a, b))"]),
        ("any(a)", ["(all(a))"]),
        ("a[0]", ["a[(1)]"]),
        ("x = 0.5", ["x = (1.5)"]),
        ("x = True", ["x = (False)"]),
        # Digits, annotations, words and what is printed stay.
        ("round(a, 6)", []),
        ("zip(a, strict=True)", []),
        ("class A(B, frozen=True): x = 1", ["class A(B, frozen=True): x = (2)"]),
        ("x: tuple[A | B, 3]", []),
        ("def f(a: 'b + c') -> 1: 'd + e'", []),
        ("'a' + f'{b + c}'", ["('a' - f'{b + c}')"]),
    ],
)
def test_each_change(source: str, expected: list[str]) -> None:
    assert sorted(m.source for m in mutants(source)) == sorted(expected)


def test_it_tells_the_line_and_both_texts() -> None:
    # Length in bytes is not length in characters.
    (mutant,) = mutants('"""½ × ¼"""\nif (x\n    < y): pass\n')
    assert mutant[:3] == (2, "x < y", "x > y")
    assert mutant.source == '"""½ × ¼"""\nif ((x > y)): pass\n'
