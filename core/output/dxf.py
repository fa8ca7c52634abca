"""Drawings to a DXF file: real size in the job's unit, one layer a pen, keys on every entity."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING, TextIO

from core.drawing import Drawing
from core.drawing.arrange import bounds
from core.output.dxf_entities import APP_ID, TEXT_STYLE, TEXT_WIDTH, Writer
from core.output.layers import LAYERS
from core.output.tidy import tidy

if TYPE_CHECKING:
    from ezdxf.document import Drawing as Document

_INCH = 25.4


def write_dxf(drawings: tuple[Drawing, ...], out: TextIO, *, scale: float, metric: bool) -> None:
    """Write the drawings as one R2010 file, where they stand, in mm or (`metric` false) inches.

    `scale` is mm on paper for each mm of the model: texts, ticks and dashes are as high and long
    as on a print at that scale. Fills are left out, but for what lies above the roof. The same
    drawings give the same text. `out` has to be open for UTF-8.
    """
    elements = tidy(element for drawing in drawings for element in drawing)
    unit = 1.0 if metric else 1 / _INCH
    with _fixed_metadata():
        document = _document(scale, unit, metric)
        writer = Writer(document, scale, unit)
        for element in elements:
            writer.write(element)
        _zoom(document, elements, unit)
        document.write(out)


@contextmanager
def _fixed_metadata() -> Iterator[None]:
    """No clock and no random identifiers while the file is made: the library's own switch."""
    # Documented as public, but not marked as exported for the type checker.
    from ezdxf import options  # type: ignore[attr-defined]

    before = options.write_fixed_meta_data_for_testing
    options.write_fixed_meta_data_for_testing = True
    try:
        yield
    finally:
        options.write_fixed_meta_data_for_testing = before


def _document(scale: float, unit: float, metric: bool) -> Document:
    """An empty document with our units, layers, line types, text style and application name."""
    from ezdxf.filemanagement import new
    from ezdxf.units import IN, MM

    document = new("R2010", units=MM if metric else IN)
    # 2 decimal, 4 architectural (feet and inches); places, or the power of two of a fraction.
    document.header["$LUNITS"], document.header["$LUPREC"] = (2, 1) if metric else (4, 4)
    document.header["$LWDISPLAY"] = 1
    document.header["$LTSCALE"] = unit / scale
    # The plain stroke font that every reader has.
    document.styles.add(TEXT_STYLE, font="txt", dxfattribs={"width": TEXT_WIDTH})
    document.appids.add(APP_ID)
    for layer in LAYERS.values():
        document.layers.add(
            layer.name,
            color=layer.colour,
            linetype=_line_type(document, layer.dash),
            lineweight=layer.weight,
        )
    return document


def _line_type(document: Document, dash: tuple[float, ...]) -> str:
    """The name of the line type for a dash in mm on paper, added when it is new."""
    if not dash:
        return "Continuous"
    name = "DASHED-" + "-".join(f"{length:g}" for length in dash)
    if name not in document.linetypes:
        signed = [length if n % 2 == 0 else -length for n, length in enumerate(dash)]
        document.linetypes.add(name, [sum(dash), *signed], description=name.lower())
    return name


def _zoom(document: Document, elements: Drawing, unit: float) -> None:
    """Let the file open on the whole drawing."""
    span = bounds(elements)
    if span is None:
        return
    (left, bottom), (right, top) = (tuple(v * unit for v in corner) for corner in span)
    document.modelspace().reset_extents((left, bottom, 0.0), (right, top, 0.0))
    # Twice as wide as high is what most windows show at least of a height.
    height = max(top - bottom, (right - left) / 2) * 1.1
    if height > 0:
        document.set_modelspace_vport(height, ((left + right) / 2, (bottom + top) / 2))
