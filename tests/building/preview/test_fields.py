"""Fields put in, set and taken out on the page: the file differs in that place only."""

from __future__ import annotations

import socket
import time
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from build_tools.building.preview.server import Preview
from build_tools.building.preview.state import State
from build_tools.source.file_lines import reading_of
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.item_edit import mark_of
from tests.building.preview.asking import FILE, FROM_ELSEWHERE, UNIT, post, sent
from tests.support.banks import BASE, BASE_UNIT, change

MAKE = "    task: Float over a stone, hop and settle.\n    makes: [drift]\n"
"""The third step, in which a motif is made, where these tests add and take away."""
LESSON = "Add to this lesson, or change it…"


def text_of(bank: Path, file: str = FILE) -> str:
    return (bank / file).read_text(encoding="utf-8")


def opened(page: Page, name: str) -> Locator:
    """The window of a part, opened by its button on the page."""
    page.get_by_role("button", name=name, exact=True).first.click()
    window = page.locator("#preview-dialog")
    expect(window).to_be_visible()
    return window


def kept(page: Page) -> None:
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    expect(page.locator("#preview-dialog")).to_be_hidden()


def undone(page: Page) -> None:
    page.get_by_role("button", name="Undo").click()
    expect(page.locator("#preview-answer")).to_contain_text("is as it was")


STEP = "Step 3: add to it, or change it"


def fill_text(window: Locator) -> None:
    window.get_by_label("The one thing", exact=False).fill("Try card #1: is it “soft”?")


def test_each_kind_of_field_is_added_where_the_order_has_it_taken_away_and_undone(
    page: Page, bank: Path
) -> None:
    before = text_of(bank)
    kinds = {
        "What to look for": ("task: Float over a stone, hop and settle.",
                             'look_for: "Try card #1: is it “soft”?"'),
        "Least minutes": ("minutes: 8", "least: 4"),
        "How hard bodies work": ("task: Float over a stone, hop and settle.", "intensity: steady"),
        "Whether it can wait": ("minutes: 8", "can_wait: true"),
        "What is danced again": ("makes: [drift]", "dances: fold, A"),
        "Words taught": None,
        "Questions to ask": ("task: Float over a stone, hop and settle.",
                             "ask:\n      - question: Where does it turn?"),
    }  # fmt: skip
    for called, made in kinds.items():
        window = opened(page, STEP)
        adds = window.get_by_role("button", name=called, exact=True)
        if made is None:
            expect(adds).to_have_count(0)  # it is there already
            window.get_by_role("button", name="Close").click()
            continue
        adds.click()
        answer(window, called)
        window.get_by_role("button", name="Add it").click()
        kept(page)
        behind, line = made
        at = before.index(MAKE)
        at = before.rindex(behind, 0, before.index("makes: [drift]") + 14) + len(behind)
        assert text_of(bank) == f"{before[:at]}\n    {line}{before[at:]}", called
        undone(page)
        assert text_of(bank) == before
    an_optional_field_is_taken_away_and_one_that_has_to_be_there_is_not_offered(page, bank)
    what_would_make_the_file_unsound_is_told_in_words(page, bank)


def an_optional_field_is_taken_away_and_one_that_has_to_be_there_is_not_offered(
    page: Page, bank: Path
) -> None:
    before = text_of(bank)
    window = opened(page, STEP)
    expect(window.get_by_role("button", name="Take away: Task")).to_have_count(0)
    window.get_by_role("button", name="Take away: Words taught").click()
    kept(page)
    assert text_of(bank) == before.replace("    teaches: [motif]\n", "")
    undone(page)
    assert text_of(bank) == before


def what_would_make_the_file_unsound_is_told_in_words(page: Page, bank: Path) -> None:
    before = text_of(bank)
    window = opened(page, STEP)
    window.get_by_role("button", name="Counts", exact=True).click()
    window.locator("input").fill("some")
    window.get_by_role("button", name="Add it").click()
    expect(window.locator(".preview-told")).to_contain_text("nothing was changed")
    assert text_of(bank) == before


def answer(window: Locator, called: str) -> None:
    if called == "What is danced again":
        for name in ("fold", "A"):
            window.get_by_role("checkbox", name=name, exact=True).check()
    elif called == "Whether it can wait":
        window.locator("select").select_option("yes")
    elif called == "How hard bodies work":
        window.locator("select").select_option("steady")
    elif called == "Least minutes":
        window.locator("input").fill("4")
    elif called == "Questions to ask":
        window.locator("textarea").first.fill("Where does it turn?")
    else:
        window.locator("textarea").fill("Try card #1: is it “soft”?")


def test_words_in_brackets_are_ticked_and_their_line_alone_changes(page: Page, bank: Path) -> None:
    before = text_of(bank)
    window = opened(page, STEP)
    window.get_by_role("button", name="Change: What is made").click()
    window.get_by_role("checkbox", name="A", exact=True).check()
    window.get_by_role("button", name="Keep it").click()
    kept(page)
    assert text_of(bank) == before.replace("makes: [drift]", "makes: [drift, A]")


def test_parts_of_the_lesson_and_what_is_in_them(page: Page, bank: Path) -> None:
    before = text_of(bank)
    window = opened(page, LESSON)
    window.get_by_role("button", name="When something goes otherwise", exact=True).click()
    window.get_by_role("button", name="The line for when the lesson is lost").or_(
        window.get_by_role("button", name="Line for when the lesson is lost")
    ).click()
    window.locator("textarea").fill("Start lesson 2 with the fold.")
    window.get_by_role("button", name="Add it").click()
    kept(page)
    line = "  sound_fails: Clap the beat.\n"
    added = f"{line}  lesson_lost: Start lesson 2 with the fold.\n"
    assert text_of(bank) == before.replace(line, added)


def test_a_named_part_of_the_unit_a_line_of_a_list_and_a_move_in_braces(
    unit_page: Page, bank: Path
) -> None:
    page = unit_page
    before = text_of(bank, UNIT)
    window = opened(page, "Add to this unit, or change it…")
    window.get_by_role("button", name="Motifs", exact=True).click()
    window.get_by_role("button", name="One more: motif").click()
    window.get_by_label("Its name").fill("ripple")
    window.get_by_label("Idea").fill("Rings run out from the boat")
    window.get_by_label("Which").select_option("Turn")
    window.get_by_label("Turn", exact=True).fill("4")
    window.get_by_label("The class’s word for it").fill("ring")
    window.get_by_role("button", name="Add it").click()
    kept(page)
    after = text_of(bank, UNIT)
    at = after.index("  ripple:")
    size = len(after) - len(before)
    assert after[:at] + after[at + size :] == before
    assert "      - ring | turn   | 4\n" in after[at : at + size]
    undone(page)
    window = opened(page, "Add to this unit, or change it…")
    window.get_by_role("button", name="Motifs", exact=True).click()
    window.get_by_role("button", name="Motif drift", exact=True).click()
    window.get_by_role("button", name="Motif drift: move 2", exact=True).click()
    window.get_by_role("button", name="Which way the body goes").or_(
        window.get_by_role("button", name="Direction", exact=True)
    ).click()
    window.locator("select").select_option("up")
    window.get_by_role("button", name="Add it").click()
    kept(page)
    was, new = "{jump: 2, as: hop, level: high}", "{jump: 2, as: hop, level: high, direction: up}"
    assert text_of(bank, UNIT) == before.replace(was, new)


def expect_file(bank: Path, wanted: str) -> None:
    """The unit's file is as wanted, soon."""
    for _ in range(50):
        if text_of(bank, UNIT) == wanted:
            return
        time.sleep(0.1)
    assert text_of(bank, UNIT) == wanted


def test_rows_of_moves_are_changed_moved_and_undone(
    window: Page, preview: Preview, bank: Path
) -> None:
    page = window
    rows = "- word  | action | counts\n      - float | travel | 4\n      - hop   | jump   | 2"
    braces = "- {travel: 4, as: float, side: right}\n      - {jump: 2, as: hop, level: high}"
    last = "      - {transfer: 2, as: settle, level: high to low}\n"
    text = text_of(bank, UNIT).replace(last, "      - settle | transfer | 2\n")
    before = text.replace(braces, rows)
    (bank / UNIT).write_text(before, encoding="utf-8")
    page.goto(f"{preview.address}units/{BASE_UNIT}/index.html")
    page.get_by_text("Choices, numbers and lists of this file").click()
    hop = page.locator('[data-path="motifs.drift.actions.2.counts"]')
    hop.fill("3")
    hop.press("Tab")
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    assert text_of(bank, UNIT) == before.replace("- hop   | jump   | 2", "- hop   | jump   | 3")
    page.locator('[data-path="motifs.drift.actions.2.action"]').select_option("turn")
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    turned = before.replace("- hop   | jump   | 2", "- hop   | turn   | 3")
    expect_file(bank, turned)
    undone(page)
    expect_file(bank, before.replace("- hop   | jump   | 2", "- hop   | jump   | 3"))
    page.reload()
    page.get_by_text("Choices, numbers and lists of this file").click()
    undone(page)
    page.locator("summary", has_text="Motif drift: the actions").or_(
        page.locator("summary", has_text="Motif drift: actions")
    ).click()
    page.get_by_role("button", name="Down: Motif drift: move 1", exact=True).click()
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    one, two = "      - float | travel | 4\n", "      - hop   | jump   | 2\n"
    assert text_of(bank, UNIT) == before.replace(one + two, two + one)
    undone(page)
    assert text_of(bank, UNIT) == before


def test_of_two_windows_the_first_has_it_and_the_other_is_told(page: Page, bank: Path) -> None:
    other = page.context.new_page()
    other.goto(page.url)
    windows = [opened(one, STEP) for one in (page, other)]
    for window in windows:
        window.get_by_role("button", name="What to look for", exact=True).click()
    for number, window in enumerate(windows):
        window.locator("textarea").fill(f"From window {number}.")
        window.get_by_role("button", name="Add it").click()
        if not number:
            kept(page)
    expect(windows[1].locator(".preview-told")).to_contain_text("says something else")
    # what she wrote is still in the form
    assert windows[1].locator("textarea").input_value() == "From window 1."
    assert text_of(bank).count("From window") == 1


def test_a_save_from_the_editor_at_the_same_time_is_not_lost(page: Page, bank: Path) -> None:
    window = opened(page, STEP)
    window.get_by_role("button", name="What to look for", exact=True).click()
    change(bank / FILE, "hop and settle.", "hop, and settle as a feather does.")
    saved = text_of(bank)
    window.locator("textarea").fill("Soft landings.")
    window.get_by_role("button", name="Add it").click()
    expect(window.locator(".preview-told")).to_contain_text("says something else")
    assert text_of(bank) == saved
    # what is saved elsewhere in the file stands, and her field is put in beside it
    window.get_by_role("button", name="Close").dblclick()
    window = opened(page, STEP)
    window.get_by_role("button", name="What to look for", exact=True).click()
    change(bank / FILE, "not_dancing: Keeps", "not_dancing: Claps and keeps")
    saved = text_of(bank)
    window.locator("textarea").fill("Soft landings.")
    window.get_by_role("button", name="Add it").click()
    kept(page)
    task = "    task: Float over a stone, hop, and settle as a feather does.\n"
    assert text_of(bank) == saved.replace(task, f"{task}    look_for: Soft landings.\n")


def test_a_page_that_is_written_anew_waits_for_her_words(
    page: Page, bank: Path, state: State
) -> None:
    expect(page.locator("#preview-says")).not_to_be_empty()
    window = opened(page, STEP)
    window.get_by_role("button", name="What to look for", exact=True).click()
    window.locator("textarea").fill("Soft landings.")
    page.evaluate("() => { window.stillThisPage = true; }")
    asked = "**/preview-state.json"
    state.rebuilt()
    for _ in range(2):
        with page.expect_response(asked):
            pass
    assert window.locator("textarea").input_value() == "Soft landings."
    with page.expect_navigation():
        window.get_by_role("button", name="Add it").click()
    assert page.evaluate("() => window.stillThisPage") is None
    assert "look_for: Soft landings." in text_of(bank)


def test_a_unit_of_the_first_format_is_led_to_upgrade(preview: Preview, bank: Path) -> None:
    change(bank / UNIT, "format: 2", "format: 1")
    before = text_of(bank)
    step = mark_of(steps_of(bank)[2])
    asked = {"file": FILE, "path": ["steps", 2, "you"], "old": step, "way": "add"}
    status, said = post(preview, "preview-field", {**asked, "value": "Tap the drum."})
    assert status == 422
    assert "run `upgrade`" in said
    assert text_of(bank) == before
    known = {**asked, "path": ["steps", 2, "look_for"], "value": "Soft landings."}
    assert post(preview, "preview-field", known)[0] == 200


def steps_of(bank: Path) -> list[object]:
    read = read_markdown(FILE, (bank / FILE).read_bytes())
    assert isinstance(read, Document)
    return list(reading_of(read).data["steps"])


ASKED = {"file": FILE, "path": ["story_so_far"], "old": "", "way": "add", "value": "We folded."}


@pytest.mark.parametrize(
    "asked",
    [
        {},
        {**ASKED, "file": "bank.yml"},
        {**ASKED, "file": "units/../bank.yml"},
        {**ASKED, "path": []},
        {**ASKED, "path": ["no_such_field"]},
        {**ASKED, "path": ["steps", -1]},
        {**ASKED, "path": ["steps", 99, "ask"]},
        {**ASKED, "path": ["title", "x"]},
        {**ASKED, "way": "sideways"},
        {**ASKED, "value": ""},
        {**ASKED, "value": None},
        {**ASKED, "value": "a" * 601},
        {**ASKED, "value": {"a": 1}},
        {**ASKED, "value": [[[[[[[[[["a"]]]]]]]]]]},
        {**ASKED, "value": ["a"] * 300},
        {**ASKED, "value": "<script>"},
        {**ASKED, "more": 1},
    ],
)
def test_no_other_field_is_written(preview: Preview, bank: Path, asked: object) -> None:
    before = text_of(bank)
    assert post(preview, "preview-field", asked)[0] in (409, 422)
    assert text_of(bank) == before
    assert post(preview, "preview-field", ASKED)[0] == 200


PICTURE = f"preview-picture/{FILE}/pool.png"


@pytest.mark.parametrize("name", ["preview-field", "preview-enter", PICTURE])
@pytest.mark.parametrize("headers", FROM_ELSEWHERE)
def test_nobody_else_puts_anything_in(
    preview: Preview, bank: Path, name: str, headers: dict[str, str]
) -> None:
    before = text_of(bank)
    kind = "application/octet-stream" if name == PICTURE else "application/json"
    body = b"\x89PNG\r\n\x1a\n" if name == PICTURE else b"{}"
    status, _ = sent(preview, name, body, **{"Content_Type": kind, **headers})
    assert status in (403, 421)
    guess = Preview(preview.server, "guess")
    assert sent(guess, name, body, Content_Type=kind)[0] == 404
    assert text_of(bank) == before
    media = f"units/{BASE_UNIT}/media"
    assert len(list((bank / media).iterdir())) == len(list((BASE / media).iterdir()))


def test_another_machine_is_not_heard(preview: Preview) -> None:
    """Whoever asks at another address, though it is this very machine's, finds nobody there."""
    port = preview.server.server_port
    with socket.socket() as asking:
        asking.settimeout(2)
        with pytest.raises(OSError, match=r"refused|timed out|unreachable"):
            asking.connect(("127.0.0.2", port))
