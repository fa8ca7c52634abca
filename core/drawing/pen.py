"""Pens, named by what a line or a surface shows; each output gives them its own look."""

import enum


class Pen(enum.Enum):
    """What an element shows. Screen, paper and drawing file settle colour, weight and layer."""

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
    PURLIN = "purlin"
    OPENING = "opening"
    UNBUILDABLE = "unbuildable"
    BOX = "box"
    LABEL = "label"
    LENGTH = "length"
    DIMENSION = "dimension"
    TAPE = "tape"
    MARK = "mark"
    TITLE = "title"
    NOTE = "note"
    RULE = "rule"
    BORDER = "border"
