"""Small faults put into a module's source, one at a time, to see whether the tests find them.

A mutant changes one thing: it turns a comparison round, swaps + and -, * and /, min and max, any
and all, or `and` and `or`, drops a negation, or makes a number one more. Boundaries (< for <=) are
left alone: lengths are floats held against a tolerance, and there both mean the same. So is what
changes nothing that the program does by itself: the digits of `round`, annotations, `strict` of
`zip` and the keywords of classes (whether values are frozen).
"""

from __future__ import annotations

import ast
import copy
from collections.abc import Iterator
from typing import NamedTuple

_COMPARED: dict[type[ast.cmpop], type[ast.cmpop]] = {
    ast.Lt: ast.Gt,
    ast.Gt: ast.Lt,
    ast.LtE: ast.GtE,
    ast.GtE: ast.LtE,
    ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq,
    ast.Is: ast.IsNot,
    ast.IsNot: ast.Is,
    ast.In: ast.NotIn,
    ast.NotIn: ast.In,
}
_COMPUTED: dict[type[ast.operator], type[ast.operator]] = {
    ast.Add: ast.Sub,
    ast.Sub: ast.Add,
    ast.Mult: ast.Div,
    ast.Div: ast.Mult,
}
_UNTOUCHED = ("annotation", "returns", "decorator_list", "type_params")
_CALLED = {"min": "max", "max": "min", "any": "all", "all": "any"}


class Mutant(NamedTuple):
    """One changed place: its line, what stood there, what stands there now, the whole source."""

    line: int
    before: str
    after: str
    source: str


def mutants(source: str) -> tuple[Mutant, ...]:
    """Every mutant of a module, in the order of its source."""
    tree = ast.parse(source)
    made = [
        _made(source, node, other)
        for node in _nodes(tree)
        for other in _changed(node)
        if ast.unparse(node) != ast.unparse(other)
    ]
    return tuple(sorted(made, key=lambda m: (m.line, m.before, m.after)))


def _made(source: str, node: ast.expr, other: ast.expr) -> Mutant:
    """The source with the text of `node` put in place of by `other`'s, in parentheses."""
    assert node.end_lineno is not None
    assert node.end_col_offset is not None
    lines = source.encode().splitlines(keepends=True)
    start = sum(map(len, lines[: node.lineno - 1])) + node.col_offset
    end = sum(map(len, lines[: node.end_lineno - 1])) + node.end_col_offset
    text, after = source.encode(), ast.unparse(other)
    changed = text[:start] + f"({after})".encode() + text[end:]
    return Mutant(node.lineno, ast.unparse(node), after, changed.decode())


def _nodes(node: ast.AST) -> Iterator[ast.expr]:
    """The expressions below a node that are worked out when the program runs."""
    for name, value in ast.iter_fields(node):
        if name in _UNTOUCHED or (isinstance(node, ast.ClassDef) and name == "keywords"):
            continue
        if isinstance(node, ast.keyword) and node.arg == "strict":
            continue
        children = value if isinstance(value, list) else [value]
        if name == "args" and isinstance(node, ast.Call) and _name(node) == "round":
            children = children[:1]
        for child in children:
            if isinstance(child, ast.AST) and not isinstance(child, ast.JoinedStr):
                if isinstance(child, ast.expr):
                    yield child
                yield from _nodes(child)


def _name(call: ast.Call) -> str:
    return call.func.id if isinstance(call.func, ast.Name) else ""


def _changed(node: ast.expr) -> Iterator[ast.expr]:
    """What may stand in the place of an expression."""
    other = copy.deepcopy(node)
    if isinstance(other, ast.Compare):
        for n, op in enumerate(other.ops):
            swapped = copy.deepcopy(other)
            swapped.ops[n] = _COMPARED[type(op)]()
            yield swapped
    elif isinstance(other, ast.BinOp) and type(other.op) in _COMPUTED:
        other.op = _COMPUTED[type(other.op)]()
        yield other
    elif isinstance(other, ast.BoolOp):
        other.op = ast.Or() if isinstance(other.op, ast.And) else ast.And()
        yield other
    elif isinstance(other, ast.UnaryOp) and isinstance(other.op, (ast.Not, ast.USub)):
        yield other.operand
    elif isinstance(other, ast.Call) and _name(other) in _CALLED:
        assert isinstance(other.func, ast.Name)
        other.func.id = _CALLED[other.func.id]
        yield other
    elif isinstance(other, ast.Constant):
        yield from _other_constant(other.value)


def _other_constant(value: object) -> Iterator[ast.expr]:
    if isinstance(value, bool):
        yield ast.Constant(not value)
    elif isinstance(value, (int, float)):
        yield ast.Constant(value + 1)
