"""Windows of the preview keep what is typed in them; notes and moves are written in them too."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from build_tools.building.preview.server import Preview
from build_tools.source.file_lines import EditRefused
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.item_edit import mark_of
from build_tools.source.notes_edit import MOST_NOTES, notes_in, with_notes
from build_tools.source.row_edit import with_field_or_row
from build_tools.source.tidy import Tidied, tidied
from tests.building.preview.asking import FILE, UNIT, post
from tests.building.preview.test_fields import LESSON, STEP, kept, opened, text_of, undone
from tests.support.banks import BASE_UNIT


def test_escape_drops_what_is_typed_only_when_it_is_pressed_again(page: Page, bank: Path) -> None:
    before = text_of(bank)
    window = opened(page, STEP)
    window.get_by_role("button", name="What to look for", exact=True).click()
    area = window.locator("textarea")
    area.press("Escape")
    expect(window).to_be_hidden()
    opened(page, STEP).get_by_role("button", name="What to look for", exact=True).click()
    area.fill("Still hands, all the way.")
    close = window.get_by_role("button", name="Close")
    for by_key in (True, False):
        if by_key:
            area.press("Escape")
        else:
            close.click()
        expect(window).to_be_visible()
        expect(area).to_have_value("Still hands, all the way.")
        expect(window.get_by_role("alert")).to_contain_text("not in the file")
        area.press_sequentially("!")  # who goes on typing is asked again
        area.press("Backspace")
    area.press("Escape")
    area.press("Escape")
    expect(window).to_be_hidden()
    assert text_of(bank) == before


def test_notes_are_changed_and_undone(page: Page, bank: Path) -> None:
    before = text_of(bank)
    window = opened(page, LESSON)
    window.get_by_role("button", name="Change the notes below the fields…").click()
    area = window.locator("textarea")
    expect(area).to_have_value(notes_in(before.encode()) or "")
    area.fill("Water, not wind.\n\n- **Fold**: a crease\n- **Drift**: no hurry")
    window.get_by_role("button", name="Keep them").click()
    kept(page)
    fields, _, _ = before.rpartition("---\n")
    fresh = "Water, not wind.\n\n- **Fold**: a crease\n- **Drift**: no hurry\n"
    assert text_of(bank) == f"{fields}---\n{fresh}"
    undone(page)
    assert text_of(bank) == before


def test_notes_that_cannot_be_read_are_told_and_kept(page: Page, bank: Path) -> None:
    before = text_of(bank)
    window = opened(page, LESSON)
    window.get_by_role("button", name="Change the notes below the fields…").click()
    window.locator("textarea").fill("See <b>this</b>.")
    window.get_by_role("button", name="Keep them").click()
    expect(window.get_by_role("alert")).to_contain_text("To mend it")
    expect(window.locator("textarea")).to_have_value("See <b>this</b>.")
    assert text_of(bank) == before


@pytest.mark.parametrize(
    ("path", "old", "new"),
    [
        (["steps"], None, "Notes."),
        (["notes"], "another mark", "Notes."),
        (["notes"], None, 3),
        (["notes"], None, "a" * (MOST_NOTES + 1)),
    ],
)
def test_no_other_notes_are_written(
    preview: Preview, bank: Path, path: list[str], old: str | None, new: object
) -> None:
    before = text_of(bank)
    mark = mark_of(notes_in(before.encode())) if old is None else old
    asked = {"file": FILE, "path": path, "old": mark, "new": new}
    status, _ = post(preview, "preview-notes", asked)
    assert status in (409, 422)
    assert text_of(bank) == before


def test_notes_keep_the_line_ends_of_the_file(bank: Path) -> None:
    raw = b"\xef\xbb\xbf" + text_of(bank).replace("\n", "\r\n").encode()
    made = with_notes("lesson-1.md", raw, mark_of(notes_in(raw)), "One.\n\nTwo.")
    assert not isinstance(made, EditRefused)
    head, _, _ = raw.rpartition(b"---\r\n")
    assert made == head + b"---\r\nOne.\r\n\r\nTwo.\r\n"


ROWS = """      - word  | action    | counts | level
      - float | travel    | 6      | high
      - hop   | jump      | 2
"""


def with_rows(bank: Path) -> bytes:
    made = tidied("unit.md", text_of(bank, UNIT).encode())
    assert isinstance(made, Tidied)
    return made.text.encode()


def test_a_move_is_added_to_rows_with_the_columns_that_it_needs(bank: Path) -> None:
    raw = with_rows(bank)
    read = read_markdown("unit.md", raw)
    assert isinstance(read, Document)
    moves = read.data["motifs"]["drift"]["actions"]
    path = ("motifs", "drift", "actions", len(moves) + 1)
    move = {"turn": 2, "as": "spin", "turn_by": "whole", "side": "left"}
    made = with_field_or_row("unit.md", raw, path, "", move)
    assert not isinstance(made, EditRefused), made
    after = read_markdown("unit.md", made)
    assert isinstance(after, Document)
    assert after.data["motifs"]["drift"]["actions"] == [*moves, move]
    rest = dict(read.data["motifs"]) | {"drift": after.data["motifs"]["drift"]}
    assert after.data == {**read.data, "motifs": rest}


def test_a_row_is_added_in_the_window(window: Page, preview: Preview, bank: Path) -> None:
    raw, page = with_rows(bank), window
    (bank / UNIT).write_bytes(raw)
    page.goto(f"{preview.address}units/{BASE_UNIT}/index.html")
    page.evaluate("window.danceUnitPreview.ask(['motifs', 'drift'])")
    dialog = page.locator("#preview-dialog")
    dialog.get_by_role("button", name="One more: move", exact=True).click()
    dialog.get_by_label("Which", exact=False).select_option(index=3)
    dialog.locator("input[type=text], input:not([type])").first.fill("4")
    dialog.get_by_role("button", name="Add it").click()
    kept(page)
    added = [
        line for line in text_of(bank, UNIT).split("\n") if line not in raw.decode().split("\n")
    ]
    assert len(added) >= 1
    undone(page)
    assert (bank / UNIT).read_bytes() == raw
