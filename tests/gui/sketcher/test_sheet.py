"""What the sheet shows, and how it follows the desk and the window."""

from __future__ import annotations

import msgspec
import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QImage, QKeyEvent
from PySide6.QtWidgets import QApplication

from gui.desk import Desk
from gui.edits import move_opening
from gui.sketcher.sheet import Sheet
from gui.theme import Theme
from hand import CTRL, Hand
from loft import (
    INCH,
    loft,
)
from painted import inked
from walls import US

Key = Qt.Key


def test_it_has_a_name_for_screen_readers(sheet: Sheet) -> None:
    assert sheet.accessibleName() == "Drawing of wall B, partition"


def test_another_size_of_window_fits_again_until_the_person_zooms(hand: Hand, sheet: Sheet) -> None:
    before = sheet.camera
    sheet.resize(600, 500)
    assert sheet.camera.scale < before.scale
    hand.wheel(60, 60, 2)
    chosen = sheet.camera
    sheet.resize(800, 600)
    assert sheet.camera == chosen


def test_hover_and_hold_are_drawn_in_chalk(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    def seen() -> str:
        return sheet.grab().toImage().pixelColor(hand.px(31.5, 60)).name()

    bare = seen()
    hand.move(32, 40)
    hovered = seen()
    hand.click(32, 40)
    held = seen()
    assert len({bare, hovered, held}) == 3
    desk.hold(None)
    sheet.set_theme(Theme.night())
    assert seen() not in (bare, hovered, held)


def test_leaving_the_sheet_ends_the_hover(hand: Hand, sheet: Sheet) -> None:
    bare = sheet.grab().toImage()
    hand.move(32, 40)
    assert sheet.grab().toImage() != bare
    QApplication.sendEvent(sheet, QEvent(QEvent.Type.Leave))
    assert sheet.grab().toImage() == bare


def test_a_sheet_without_a_wall_says_so(sheet: Sheet, desk: Desk) -> None:
    with_wall = sheet.grab().toImage()
    desk.commit("none", msgspec.structs.replace(loft(), walls=()))
    assert "No wall yet" in sheet.accessibleName()
    bare = sheet.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    assert bare != with_wall
    # Something is written in the middle of the paper, and nothing at its edges.
    paper = Theme.day().paper
    left, top, right, bottom = inked(bare, paper)
    assert left > 100
    assert right < 900
    assert (top + bottom) / 2 == pytest.approx(350, abs=20)


def test_a_wall_that_cannot_be_framed_says_why(hand: Hand, sheet: Sheet, desk: Desk) -> None:
    desk.commit("short", loft().with_wall(US.wall((12.0, 100.0), (13.0, 100.0))))
    image = sheet.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    assert inked(image, Theme.day().paper)
    hand.click(0.5, 40)
    hand.key(Key.Key_PageDown)
    assert desk.held is None


def test_menus_can_zoom_and_fit(sheet: Sheet) -> None:
    before = sheet.camera
    sheet.zoom_in()
    assert sheet.camera.scale == pytest.approx(before.scale * 1.25)
    sheet.zoom_out()
    assert sheet.camera.scale == pytest.approx(before.scale)
    sheet.zoom_in()
    sheet.fit()
    assert sheet.camera == before


def test_an_edit_made_elsewhere_is_seen_at_once(sheet: Sheet, desk: Desk) -> None:
    before = sheet.grab().toImage()
    desk.commit("move", move_opening(desk.project, "B", "door-1", 70 * INCH))
    assert sheet.grab().toImage() != before
    desk.undo()
    assert sheet.grab().toImage() == before


def test_shortcuts_wait_while_something_is_dragged(hand: Hand, sheet: Sheet) -> None:
    def overridden() -> bool:
        event = QKeyEvent(QEvent.Type.ShortcutOverride, Key.Key_Z, CTRL)
        event.ignore()
        QApplication.sendEvent(sheet, event)
        return event.isAccepted()

    assert not overridden()
    hand.press(75, 40)
    hand.move(83, 40)
    assert overridden()
    hand.release(83, 40)
    assert not overridden()


@pytest.mark.parametrize("notches", [1, 3, -2])
def test_the_wheel_zooms_about_the_pointer(hand: Hand, sheet: Sheet, notches: int) -> None:
    before = sheet.camera
    spot = hand.px(90, 60)
    hand.wheel(90, 60, notches)
    assert sheet.camera.scale == pytest.approx(before.scale * 1.25**notches)
    px = (float(spot.x()), float(spot.y()))
    assert sheet.camera.to_model(px) == pytest.approx(before.to_model(px))
