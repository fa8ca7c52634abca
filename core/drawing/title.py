"""The strip at the foot of a sheet: what wall it is, how it was drawn, how to read its marks."""

from itertools import accumulate, takewhile

import msgspec

from core.checks import Severity, answered_cautions
from core.drawing.elements import Drawing, Element, Stroke, Text
from core.drawing.layout_notes import layout_notes
from core.drawing.measured import told
from core.drawing.pen import Pen
from core.drawing.table import usual_stock
from core.drawing.writing import LINE, block, rule, shortened, wrapped
from core.framing import Member, Role
from core.job import WallResult
from core.lengths import System
from core.model import LineEdge, Project
from core.wording import Wording, message

PAD = 2.0
"""Inside the strip's cells, mm."""

SCALE_WIDTH = 74.0
"""The width of the place for the scale and its check bar, mm."""

ROW_HEIGHT = 16.0
"""The height of the row with the wall's name and the scale, mm."""

MOST = 8
"""The most lines of open cautions; how many more there are is said in another."""

NAME_SIZE = 5.6
"""The size of the wall's name, mm."""


class SheetFacts(msgspec.Struct, frozen=True):
    """What a sheet's title says beside its wall: project, date as given, number and count."""

    project: Project
    date: str
    number: int
    count: int


class TitleBlock(msgspec.Struct, frozen=True):
    """The strip as a drawing on the paper, and how high it stands above the margin, mm."""

    drawing: Drawing
    height: float


def title_block(
    result: WallResult,
    wording: Wording,
    width: float,
    margin: float,
    facts: SheetFacts,
    scale: str,
    site: tuple[str, ...] = (),
) -> TitleBlock:
    """The strip along the foot of a page `width` mm wide: cautions, notes, then wall and scale.

    `site` are more notes, of how the wall goes up.
    """
    inner = width - 2 * margin
    cautions = _cautions(result, facts.project, wording, inner - 2 * PAD)
    notes = wrapped(" · ".join(_notes(result, wording)), inner - 2 * PAD)
    notes += wrapped(" ".join(site), inner - 2 * PAD)
    height = ROW_HEIGHT + (len(cautions) + len(notes)) * LINE + 4 * PAD
    drawing: list[Element] = [*_frame(margin, inner, height, len(cautions))]
    top = margin + height - PAD - LINE * 0.8
    drawing += block(cautions, (margin + PAD, top), pen=Pen.TITLE)
    drawing += block(notes, (margin + PAD, top - len(cautions) * LINE - 2 * PAD))
    foot = margin + ROW_HEIGHT - LINE
    room = inner - SCALE_WIDTH - 2 * PAD
    drawing += _wall_cell(result, wording, facts, (margin + PAD, foot), room)
    drawing += _scale_cell(wording, facts, scale, (width - margin - SCALE_WIDTH, foot))
    return TitleBlock(tuple(drawing), height)


def _frame(margin: float, inner: float, height: float, cautions: int) -> Drawing:
    left, right, bottom = margin, margin + inner, margin
    top = bottom + height
    under_cautions = top - cautions * LINE - 2 * PAD
    outline = ((left, bottom), (right, bottom), (right, top), (left, top))
    return (
        Stroke(outline, Pen.BORDER, closed=True),
        rule((left, under_cautions), (right, under_cautions)),
        rule((left, bottom + ROW_HEIGHT), (right, bottom + ROW_HEIGHT)),
    )


def _wall_cell(
    result: WallResult, wording: Wording, facts: SheetFacts, at: tuple[float, float], width: float
) -> Drawing:
    """The wall's name, then the sheet, which side it is seen from, the date and the job."""
    name = wording.say(message("sheet.wall", letter=result.wall.letter, name=result.wall.name))
    said = (
        wording.say(message("sheet.number", number=facts.number, count=facts.count)),
        wording.word("sheet.seen-from"),
        facts.date,
        facts.project.name,
    )
    x, foot = at
    name = shortened(name, width, NAME_SIZE, bold=True)
    line = shortened(" · ".join(s for s in said if s), width)
    title = Text(name, (x, foot - 1.4), NAME_SIZE, Pen.TITLE, bold=True, narrow=True)
    return (title, *block([line], (x, foot - 1.4 - LINE * 1.4)))


def _notes(result: WallResult, wording: Wording) -> list[str]:
    habits = result.inputs.habits
    members = result.frame.members if result.frame else ()
    marked = "sheet.marks-uphill" if habits.line_edge is LineEdge.UPHILL else "sheet.marks-near"
    letters = habits.letters
    legend = message(
        "sheet.letters",
        stud=letters.stud,
        king=letters.king,
        trimmer=letters.trimmer,
        cripple=letters.cripple,
    )
    end = message(f"end.{result.wall.layout.start.value}")
    far_boxes = any(box.on_far_face for box in result.wall.boxes)
    tapes = "sheet.tapes" if result.inputs.foot is None else "sheet.tapes-rafter"
    return [
        wording.word(marked),
        wording.say(legend),
        *_over_rafters(result, wording),
        wording.say(message("sheet.stock", stock=usual_stock(members, wording))),
        wording.say(message(tapes, end=end)),
        wording.say(message("sheet.rounded", step=str(habits.tape.step))),
        *([wording.word("sheet.far-boxes")] if far_boxes else []),
        *layout_notes(result, wording),
        *_longest_and_shortest(result, wording),
        *told(result, wording),
    ]


def _over_rafters(result: WallResult, wording: Wording) -> list[str]:
    """The letter of the rafters that the plates cross, where there are any."""
    letters = dict.fromkeys(mark.letter for mark in result.over_marks)
    return [wording.say(message("sheet.letter-rafter", letter=letter)) for letter in letters]


def _longest_and_shortest(result: WallResult, wording: Wording) -> list[str]:
    """The two studs to check with a tape before cutting the rest; one if all read alike."""
    studs = [m for m in result.frame.members if m.role is Role.STUD] if result.frame else []
    if not studs:
        return []
    longest = max(studs, key=lambda m: m.long_point)
    shortest = min(studs, key=lambda m: m.long_point)
    named = [_named(member, result, wording) for member in (longest, shortest)]
    if wording.length(longest.long_point) == wording.length(shortest.long_point):
        return [wording.say(message("sheet.check-first", stud=named[0]))]
    return [wording.say(message("sheet.longest-shortest", longest=named[0], shortest=named[1]))]


def _named(member: Member, result: WallResult, wording: Wording) -> str:
    return f"{result.label_of[member.key]} {wording.length(member.long_point)}"


def _scale_cell(
    wording: Wording, facts: SheetFacts, scale: str, at: tuple[float, float]
) -> Drawing:
    """Scale, the bar to check the printer with, and which of figure and drawing governs."""
    x, foot = at
    inch = facts.project.system is System.INCH
    length, text = (50.8, '2"') if inch else (50.0, "50 mm")
    bar = foot - LINE - 1.4
    ticks = [rule((x + n * length / 2, bar), (x + n * length / 2, bar + 2.0)) for n in range(3)]
    said = wording.say(message("sheet.check-bar", length=text))
    return (
        Text(scale, (x, foot - 1.4), 4.5, Pen.TITLE, bold=True),
        rule((x, bar), (x + length, bar)),
        *ticks,
        *block([f"{said} · {wording.word('sheet.figures-govern')}"], (x, bar - LINE * 0.95)),
    )


def _cautions(result: WallResult, project: Project, wording: Wording, width: float) -> list[str]:
    """The open cautions, the gravest first, those that answers brought up, and the last line."""
    texts = [
        f"{wording.word(f'severity.{c.severity.value}')}: {wording.say(c.message)}"
        for c in result.cautions
        if c.severity is not Severity.STANDING
    ]
    lines = [wrapped(text, width) for text in texts]
    shown = len(list(takewhile(lambda n: n <= MOST, accumulate(map(len, lines)))))
    if shown < len(texts):
        more = message("sheet.more-cautions", count=len(texts) - shown)
        lines[shown:] = [wrapped(wording.say(more), width)]
    answered = [wording.say(caution.message) for caution in answered_cautions(project.room)]
    lines += [wrapped(text, width) for text in (*answered, wording.word("sheet.caution-line"))]
    return [line for text in lines for line in text]
