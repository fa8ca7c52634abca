"""The style sheet of the window, from the same colours as the sheet of paper."""

import re

from PySide6.QtGui import QColor, QPalette

from core.drawing.typeface import FAMILY
from gui.theme import Theme

_SHEET = """
* {{ font-family: "{family}"; font-size: 10.5pt; color: {ink}; }}
QMainWindow, QDialog, QMessageBox {{ background: {panel}; }}
QWidget#panel, QScrollArea, QScrollArea > QWidget > QWidget {{ background: {panel}; }}
QLabel {{ background: transparent; qproperty-indent: 0; }}
QLabel#heading {{ color: {faint}; font-weight: 700; padding-top: 8px; }}
QLabel#title {{ font-size: 15pt; font-weight: 700; }}
QLabel#question {{ font-weight: 700; }}
QLabel#faint, QLabel#standing {{ color: {faint}; font-size: 9.5pt; }}
QLabel#refusal, QLabel#unbuildable {{ color: {warning}; }}
QLabel#refusal-over {{ color: {warning}; background: {field}; border: 1px solid {edge};
    border-radius: 3px; padding: 4px 6px; }}
QLabel#unbuildable {{ font-weight: 700; }}
QLabel#warning {{ color: {warning}; }}
QLabel#foot {{
    color: {ink}; padding: 3px 10px; background: {panel}; border-top: 1px solid {edge};
}}
QFrame#card {{ background: {field}; border: none; border-bottom: 2px solid {chalk}; }}
QLabel#card-title {{ font-size: 14pt; font-weight: 700; }}
QLabel#card-step {{ color: {chalk}; font-weight: 700; }}
QTextBrowser {{ background: {paper}; border: none; }}
QFrame#waiting {{ background: {field}; border: none; border-top: 2px solid {chalk}; }}
QProgressBar {{ background: {panel}; border: 1px solid {edge}; border-radius: 3px; height: 12px; }}
QProgressBar::chunk {{ background: {chalk}; }}
QFrame#doubt {{ background: {field}; border: none; border-bottom: 2px solid {warning}; }}
QLabel#walk-name {{ font-size: 16pt; font-weight: 700; }}
QTableView {{ background: {paper}; border: 1px solid {edge}; outline: none; }}
QHeaderView {{ background: {panel}; border: none; }}
QHeaderView::section {{
    background: {panel}; color: {faint}; border: none; padding: 0 8px; font-weight: 700;
}}
QLabel:focus {{ border: 1px solid {chalk}; }}
QLineEdit, QComboBox {{
    background: {field}; border: 1px solid {edge}; border-radius: 3px; padding: 3px 6px;
    selection-background-color: {chalk}; selection-color: {paper}; min-height: 18px;
}}
QLineEdit:focus, QComboBox:focus {{ border: 1px solid {chalk}; }}
QLineEdit[refused="true"] {{ border: 1px solid {warning}; }}
QLineEdit:disabled {{ color: {faint}; background: {panel}; }}
QComboBox::drop-down {{ border: none; width: 20px; }}
QComboBox QAbstractItemView {{
    background: {field}; border: 1px solid {edge}; selection-background-color: {chalk};
    selection-color: {paper};
}}
QPushButton, QToolButton#fold {{
    background: {field}; border: 1px solid {edge}; border-radius: 3px; padding: 5px 10px;
}}
QPushButton:hover {{ border: 1px solid {chalk}; }}
QPushButton:focus, QToolButton#fold:focus {{ border: 1px solid {chalk}; }}
QPushButton#pick {{ padding: 4px 10px; border-radius: 0; }}
QPushButton#pick:checked {{ background: {chalk}; color: {paper}; border: 1px solid {chalk}; }}
QPushButton#begin {{ background: {chalk}; color: {paper}; border: 1px solid {chalk};
    padding: 6px 18px; font-weight: 700; }}
QPushButton#begin:focus, QPushButton#pick:checked:focus {{ border: 2px solid {ink}; }}
QPushButton:disabled {{ color: {faint}; }}
QToolButton#fold {{ background: transparent; border: 1px solid transparent; font-weight: 700;
    padding: 3px 0; }}
QCheckBox {{ spacing: 8px; padding-top: 6px; }}
QCheckBox::indicator {{
    width: 14px; height: 14px; background: {field}; border: 1px solid {edge}; border-radius: 3px;
}}
QCheckBox::indicator:checked {{ background: {chalk}; border: 1px solid {chalk}; }}
QCheckBox:focus {{ color: {chalk}; }}
QPushButton#small {{ font-size: 9.5pt; padding: 1px 8px; }}
QFrame#working {{ background: {field}; border: 1px solid {edge}; border-radius: 3px; }}
QFrame#working QLabel {{ font-size: 10pt; }}
QLabel#strip {{
    padding: 3px 12px; background: {panel}; border-top: 1px solid {edge}; min-height: 24px;
}}
QTableView {{
    background: {field}; border: 1px solid {edge}; outline: none;
    selection-background-color: {chalk}; selection-color: {paper};
}}
QTableView::item {{ padding: 0 5px; }}
QTableView:focus {{ border: 1px solid {chalk}; }}
QAbstractScrollArea::corner {{ background: {panel}; }}
QHeaderView, QHeaderView::section {{ background: {panel}; color: {faint}; border: none; }}
QHeaderView::section {{ padding: 3px 8px; }}
QListWidget {{ background: {panel}; border: none; outline: none; }}
QMenuBar, QMenu {{ background: {panel}; }}
QMenuBar {{ border-bottom: 1px solid {edge}; }}
QMenuBar::item {{ padding: 4px 9px; background: transparent; }}
QMenu {{ border: 1px solid {edge}; padding: 4px 0; }}
QMenu::item {{ padding: 4px 26px 4px 22px; }}
QMenuBar::item:selected, QMenu::item:selected {{ background: {chalk}; color: {paper}; }}
QMenu::item:disabled {{ color: {faint}; background: transparent; }}
QMenu::separator {{ height: 1px; background: {edge}; margin: 4px 0; }}
QSplitter::handle {{ background: {edge}; }}
QToolTip {{ background: {field}; border: 1px solid {edge}; }}
QScrollBar:vertical {{ background: {panel}; width: 11px; margin: 0; }}
QScrollBar::handle:vertical {{ background: {edge}; border-radius: 4px; min-height: 30px;
    margin: 1px 2px; }}
QScrollBar:horizontal {{ background: {panel}; height: 11px; margin: 0; }}
QScrollBar::handle:horizontal {{ background: {edge}; border-radius: 4px; min-width: 30px;
    margin: 2px 1px; }}
QScrollBar::add-line, QScrollBar::sub-line {{ height: 0; width: 0; }}
QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
"""

_POINTS = re.compile(r"([0-9.]+)pt")

_NAMES = ("paper", "panel", "field", "ink", "faint", "edge", "chalk", "warning")


def palette(theme: Theme) -> QPalette:
    """The palette for what the style sheet leaves to Qt: ticks, arrows, dialogs."""
    made = QPalette()
    role = QPalette.ColorRole
    colours = {
        role.Window: theme.panel,
        role.WindowText: theme.ink,
        role.Base: theme.field,
        role.AlternateBase: theme.panel,
        role.Text: theme.ink,
        role.Button: theme.field,
        role.ButtonText: theme.ink,
        role.Highlight: theme.chalk,
        role.HighlightedText: theme.paper,
        role.ToolTipBase: theme.field,
        role.ToolTipText: theme.ink,
        role.PlaceholderText: theme.faint,
    }
    for which, colour in colours.items():
        made.setColor(which, colour)
    return made


def style_sheet(theme: Theme, text: float = 1.0) -> str:
    """The style sheet in the colours of a theme, with texts `text` times as large as usual."""
    colours = {name: _text(getattr(theme, name)) for name in _NAMES}
    sheet = _SHEET.format(family=FAMILY, **colours)
    return _POINTS.sub(lambda found: f"{float(found[1]) * text:g}pt", sheet)


def _text(colour: QColor) -> str:
    return colour.name()
