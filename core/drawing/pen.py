"""Pens, named by what a line or a surface shows; each output gives them its own look."""

import enum


class Pen(enum.Enum):
    """What an element shows. Screen, paper and drawing file settle colour, weight and layer."""

    # Every stroke is looked up by its pen on each frame, and the usual hash is reckoned in Python.
    __hash__ = object.__hash__

    ROOF = "roof"
    ABOVE_ROOF = "above roof"
    FLOOR = "floor"
    SOLE_PLATE = "sole plate"
    TOP_PLATE = "top plate"
    STUD = "stud"
    KING = "king stud"
    TRIMMER = "trimmer"
    HEADER = "header"
    SILL = "sill"
    CRIPPLE = "cripple"
    BLOCKING = "blocking"
    BACKING = "backing"
    RAFTER = "rafter"
    BLOCK = "block"
    PURLIN = "purlin"
    ROOF_TIMBER = "roof timber"
    EXISTING = "existing"
    BEYOND = "beyond"
    HEADROOM = "headroom"
    SEAM = "seam"
    CEILING = "ceiling"
    STAIR = "stair"
    OPENING = "opening"
    KEPT_CLEAR = "kept clear"
    SWING = "swing"
    UNBUILDABLE = "unbuildable"
    BOX = "box"
    FAR_BOX = "far box"
    LABEL = "label"
    LENGTH = "length"
    DIMENSION = "dimension"
    TAPE = "tape"
    MARK = "mark"
    TITLE = "title"
    NOTE = "note"
    RULE = "rule"
    BORDER = "border"
