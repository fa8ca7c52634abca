"""The layers of the line drawing."""

import re

import pytest

from core.drawing import Pen
from core.output.layers import LAYERS

# The weights a DXF layer may have, in hundredths of a mm (DXF reference, group code 370; the
# list from memory).
WEIGHTS = {0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140}


def test_every_pen_has_a_layer_of_its_own() -> None:
    assert set(LAYERS) == set(Pen)
    assert len({layer.name for layer in LAYERS.values()}) == len(Pen)


@pytest.mark.parametrize(
    ("pen", "name", "weight"),
    [
        (Pen.STUD, "STUD", 35),
        (Pen.TOP_PLATE, "TOP-PLATE", 35),
        (Pen.KING, "KING-STUD", 35),
        (Pen.OPENING, "OPENING", 50),
        (Pen.ROOF, "ROOF", 70),
        (Pen.DIMENSION, "DIMENSION", 18),
    ],
)
def test_names_and_weights(pen: Pen, name: str, weight: int) -> None:
    assert (LAYERS[pen].name, LAYERS[pen].weight) == (name, weight)


def test_every_layer_is_one_that_any_reader_takes() -> None:
    for layer in LAYERS.values():
        assert re.fullmatch(r"[A-Z]+(-[A-Z]+)*", layer.name)
        assert 1 <= layer.colour <= 255
        assert layer.weight in WEIGHTS


def test_kinds_of_timber_have_colours_of_their_own() -> None:
    timber = [
        LAYERS[pen].colour
        for pen in (
            Pen.SOLE_PLATE,
            Pen.TOP_PLATE,
            Pen.STUD,
            Pen.KING,
            Pen.TRIMMER,
            Pen.HEADER,
            Pen.SILL,
            Pen.CRIPPLE,
        )
    ]
    assert len(set(timber)) == len(timber)
