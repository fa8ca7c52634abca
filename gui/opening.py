"""Opening the window: the only part of the command line that needs Qt."""

import gc
import sys
from pathlib import Path

from PySide6.QtCore import QLocale

from core.lengths import System
from core.storage import Document, load
from gui.desk import Desk
from gui.files import new_document
from gui.keeping import Kept
from gui.sketcher.fonts import load as load_fonts
from gui.window import Window, application
from gui.wordings import plain_wording


def open_window(path: Path | None) -> int:
    """The exit code when the window is closed; StorageError if the file cannot be opened."""
    system = usual_system()
    document: Document = load(path) if path else new_document(system, plain_wording())
    app = application(sys.argv[:1])
    load_fonts()
    kept = Kept.of_this_person()
    window = Window(Desk(document), path=path.absolute() if path else None, kept=kept)
    if kept.frame is None or not window.restoreGeometry(kept.frame):
        # Not every window manager keeps a window within a small screen.
        window.resize(window.sizeHint().boundedTo(window.screen().availableSize()))
    window.show()
    if path is None:
        window.new_room(system)
    else:
        window.middle.paper.setFocus()
    # What is made by now stays: the collector need not look through it in the middle of a drag.
    gc.freeze()
    return app.exec()


def usual_system() -> System:
    """Inches or millimeters, as people measure where this machine is."""
    metric = QLocale.system().measurementSystem() is QLocale.MeasurementSystem.MetricSystem
    return System.METRIC if metric else System.INCH
