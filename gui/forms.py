"""The forms of the right side, each made, and its code read, when it is first asked for."""

from collections.abc import Callable
from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QPushButton, QWidget

from gui.desk import Desk
from gui.panels.form import Form
from gui.panels.section import Section

if TYPE_CHECKING:
    from gui.panels.box import BoxForm
    from gui.panels.doubled import DoubledForm
    from gui.panels.fixture import FixtureForm
    from gui.panels.floor import FloorForm
    from gui.panels.habits import HabitsForm
    from gui.panels.leaf import LeafForm
    from gui.panels.leaning import LeaningForm
    from gui.panels.measured import MeasuredForm
    from gui.panels.measured_stud import MeasuredStudForm
    from gui.panels.nailed import NailedForm
    from gui.panels.nails import NailsForm
    from gui.panels.opening import OpeningForm
    from gui.panels.passing import PassingForm
    from gui.panels.plan_wall import PlanWallForm
    from gui.panels.plate_rules import PlateRulesForm
    from gui.panels.plates import PlatesForm
    from gui.panels.raising import RaisingForm
    from gui.panels.roof_parts import RoofPartsForm
    from gui.panels.room import RoomForm
    from gui.panels.rules import RulesForm
    from gui.panels.saw import SawForm
    from gui.panels.since import SinceForm
    from gui.panels.stud import StudForm
    from gui.panels.turns import TurnsForm
    from gui.panels.wall import WallForm
    from gui.panels.zone import ZoneForm

_HEADINGS = {
    "leaf": "heading.leaf",
    "leaning": "heading.leaning",
    "measured": "heading.measured",
    "nailed": "heading.nailed",
    "raising": "heading.up",
    "turns": "heading.turns",
    "nails": "heading.nails",
    "rules": "heading.rules",
    "plates": "heading.plates",
    "roof-parts": "heading.roof-parts",
    "floor": "heading.floor",
    "habits": "heading.habits",
    "plate-rules": "heading.plate-rules",
    "saw": "heading.saw",
}
"""The forms that stand under a heading that folds them away."""


class Forms:
    """What can be filled in for a wall, a room or a thing held.

    A start has to show few of them: none is made before it is asked for.
    """

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def part(self, name: str) -> QWidget:
        """The form with this name as it stands in the column: by itself or under its heading."""
        if name in _HEADINGS:
            words, make = self._desk.wording, self._maker(name)
            return Section(words.word(_HEADINGS[name]), make)
        return self._maker(name)()

    def _maker(self, name: str) -> Callable[[], QWidget]:
        return lambda: getattr(self, name.replace("-", "_"))

    @cached_property
    def fixed(self) -> Form:
        """That something goes with its wall."""
        form = Form(self._desk, self._desk.wording)
        form.sentence("held.goes-with-wall")
        return form

    @cached_property
    def to_room(self) -> QPushButton:
        """The way from a wall to its room."""
        button = QPushButton(self._desk.wording.word("held.to-room"))
        button.clicked.connect(self._desk.show_room)
        return button

    @cached_property
    def passing(self) -> "PassingForm":
        from gui.panels.passing import PassingForm

        return PassingForm(self._desk, self._desk.wording)

    @cached_property
    def opening(self) -> "OpeningForm":
        from gui.panels.opening import OpeningForm

        return OpeningForm(self._desk, self._desk.wording)

    @cached_property
    def leaf(self) -> "LeafForm":
        from gui.panels.leaf import LeafForm

        return LeafForm(self._desk, self._desk.wording)

    @cached_property
    def box(self) -> "BoxForm":
        from gui.panels.box import BoxForm

        return BoxForm(self._desk, self._desk.wording)

    @cached_property
    def stud(self) -> "StudForm":
        from gui.panels.stud import StudForm

        return StudForm(self._desk, self._desk.wording)

    @cached_property
    def measured_stud(self) -> "MeasuredStudForm":
        from gui.panels.measured_stud import MeasuredStudForm

        return MeasuredStudForm(self._desk, self._desk.wording)

    @cached_property
    def doubled(self) -> "DoubledForm":
        from gui.panels.doubled import DoubledForm

        return DoubledForm(self._desk, self._desk.wording)

    @cached_property
    def since(self) -> "SinceForm":
        from gui.panels.since import SinceForm

        return SinceForm(self._desk, self._desk.wording)

    @cached_property
    def wall(self) -> "WallForm":
        from gui.panels.wall import WallForm

        return WallForm(self._desk, self._desk.wording)

    @cached_property
    def leaning(self) -> "LeaningForm":
        from gui.panels.leaning import LeaningForm

        return LeaningForm(self._desk, self._desk.wording)

    @cached_property
    def measured(self) -> "MeasuredForm":
        from gui.panels.measured import MeasuredForm

        return MeasuredForm(self._desk, self._desk.wording)

    @cached_property
    def fixture(self) -> "FixtureForm":
        from gui.panels.fixture import FixtureForm

        return FixtureForm(self._desk, self._desk.wording)

    @cached_property
    def nailed(self) -> "NailedForm":
        from gui.panels.nailed import NailedForm

        return NailedForm(self._desk, self._desk.wording)

    @cached_property
    def raising(self) -> "RaisingForm":
        from gui.panels.raising import RaisingForm

        return RaisingForm(self._desk, self._desk.wording)

    @cached_property
    def nails(self) -> "NailsForm":
        from gui.panels.nails import NailsForm

        return NailsForm(self._desk, self._desk.wording)

    @cached_property
    def rules(self) -> "RulesForm":
        from gui.panels.rules import RulesForm

        return RulesForm(self._desk, self._desk.wording)

    @cached_property
    def plates(self) -> "PlatesForm":
        from gui.panels.plates import PlatesForm

        return PlatesForm(self._desk, self._desk.wording)

    @cached_property
    def room(self) -> "RoomForm":
        from gui.panels.room import RoomForm

        return RoomForm(self._desk, self._desk.wording)

    @cached_property
    def roof_parts(self) -> "RoofPartsForm":
        from gui.panels.roof_parts import RoofPartsForm

        return RoofPartsForm(self._desk, self._desk.wording)

    @cached_property
    def plan_wall(self) -> "PlanWallForm":
        from gui.panels.plan_wall import PlanWallForm

        return PlanWallForm(self._desk, self._desk.wording)

    @cached_property
    def floor(self) -> "FloorForm":
        from gui.panels.floor import FloorForm

        return FloorForm(self._desk, self._desk.wording)

    @cached_property
    def habits(self) -> "HabitsForm":
        from gui.panels.habits import HabitsForm

        return HabitsForm(self._desk, self._desk.wording)

    @cached_property
    def plate_rules(self) -> "PlateRulesForm":
        from gui.panels.plate_rules import PlateRulesForm

        return PlateRulesForm(self._desk, self._desk.wording)

    @cached_property
    def saw(self) -> "SawForm":
        from gui.panels.saw import SawForm

        return SawForm(self._desk, self._desk.wording)

    @cached_property
    def zone(self) -> "ZoneForm":
        from gui.panels.zone import ZoneForm

        return ZoneForm(self._desk, self._desk.wording)

    @cached_property
    def turns(self) -> "TurnsForm":
        from gui.panels.turns import TurnsForm

        return TurnsForm(self._desk, self._desk.wording)
