"""Texts changed on the page: the file's line changes, only for the author, and can be undone."""

from __future__ import annotations

import json
import re
import urllib.error
import urllib.request
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from build_tools.building.preview.server import Preview
from build_tools.building.preview.shown import shown
from build_tools.building.preview.state import State
from build_tools.checking.check_bank import check_folder
from build_tools.problem import Problem
from build_tools.source.file_lines import reading_of
from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.item_edit import mark_of
from tests.building.preview.asking import FILE, FROM_ELSEWHERE, UNIT, post
from tests.support.banks import BASE_UNIT, change

WAS = "Float over a stone, hop and settle."
NEW = "Float: over card #1, then settle."
CHANGE = {"file": FILE, "path": ["steps", 2, "task"], "old": WAS, "new": NEW}


def text_of(bank: Path) -> str:
    return (bank / FILE).read_text(encoding="utf-8")


def test_a_change_is_that_line_alone_and_is_undone(preview: Preview, bank: Path) -> None:
    before = text_of(bank)
    assert post(preview, "preview-change", CHANGE)[0] == 200
    assert text_of(bank) == before.replace(WAS, f'"{NEW}"')
    assert post(preview, "preview-undo", {"file": FILE})[0] == 200
    assert text_of(bank) == before
    assert post(preview, "preview-undo", {"file": FILE})[0] == 422


def test_what_was_saved_meanwhile_wins(preview: Preview, bank: Path) -> None:
    change(bank / FILE, WAS, "Saved in the editor.")
    before = text_of(bank)
    status, said = post(preview, "preview-change", CHANGE)
    assert status == 409
    assert "says something else" in said
    assert text_of(bank) == before


@pytest.mark.parametrize("headers", FROM_ELSEWHERE)
def test_nobody_else_can_change_a_word(
    preview: Preview, bank: Path, headers: dict[str, str]
) -> None:
    before = text_of(bank)
    sent = {"Content_Type": "application/json"} | headers
    origin = preview.address.rsplit("/", 2)[0]
    named = {"Origin": origin} | sent
    body = json.dumps(CHANGE).encode()
    lines = {name.replace("_", "-"): value for name, value in named.items() if value}
    request = urllib.request.Request(preview.address + "preview-change", body, lines)
    with pytest.raises(urllib.error.HTTPError) as refused:
        urllib.request.urlopen(request, timeout=10)
    assert refused.value.code in (403, 421)
    assert text_of(bank) == before


@pytest.mark.parametrize(
    "asked",
    [
        None,
        [],
        {},
        {**CHANGE, "file": "bank.yml"},
        {**CHANGE, "file": "units/../bank.yml"},
        {**CHANGE, "file": f"units/{BASE_UNIT}/../../safety.md"},
        {**CHANGE, "path": []},
        {**CHANGE, "path": [None]},
        {**CHANGE, "path": ["steps", True]},
        {**CHANGE, "new": " "},
        {**CHANGE, "new": "a" * 601},
        {**CHANGE, "more": 1},
    ],
)
def test_what_no_page_of_ours_asks_changes_nothing(
    preview: Preview, bank: Path, asked: object
) -> None:
    before = text_of(bank)
    assert post(preview, "preview-change", asked)[0] in (409, 422)
    assert text_of(bank) == before


def test_the_secret_is_needed(preview: Preview, bank: Path) -> None:
    before = text_of(bank)
    guess = Preview(preview.server, "guess")
    assert post(guess, "preview-change", CHANGE)[0] == 404
    assert text_of(bank) == before


def test_click_change_and_the_file_has_it(page: Page, bank: Path) -> None:
    before = text_of(bank)
    text = page.locator(".preview-text", has_text=WAS).first
    text.click()
    page.keyboard.press("Control+A")
    page.keyboard.type(NEW)
    page.keyboard.press("Enter")
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    assert text_of(bank) == before.replace(WAS, f'"{NEW}"')
    page.get_by_role("button", name="Undo").click()
    expect(page.locator("#preview-answer")).to_contain_text("is as it was")
    assert text_of(bank) == before
    is_found_in_marks_and_lists_and_not_as_a_part_of_another(page)


def test_two_windows_do_not_undo_each_other(page: Page, bank: Path) -> None:
    other = page.context.new_page()
    other.goto(page.url)
    for window, new in ((page, "The first window."), (other, "The second window.")):
        window.locator(".preview-text", has_text=WAS).first.click()
        window.keyboard.press("Control+A")
        window.keyboard.type(new)
        window.keyboard.press("Enter")
        expect(window.locator("#preview-answer")).not_to_be_empty()
    expect(other.locator("#preview-answer")).to_contain_text("says something else")
    assert "task: The first window.\n" in text_of(bank)


def test_the_bar_counts_and_marks_what_is_to_mend_and_leads_there(
    page: Page, bank: Path, state: State
) -> None:
    lesson = text_of(bank)
    change(
        bank / FILE,
        "\n    minutes: 6\n    grouping: alone\n    intensity",
        "\n    minutes: 7\n    grouping: alone\n    intensity",
    )
    change(bank / FILE, WAS, "Say <b>it</b> aloud.")
    problems = check_folder(bank).problems
    assert problems
    state.say("the problems", shown(bank, problems))
    state.older([BASE_UNIT])
    says = page.locator("#preview-says")
    expect(says).to_contain_text(f"{len(problems)} to mend in this lesson")
    expect(says).to_contain_text("older than the file")
    expect(page.locator("#preview-bar")).to_be_in_viewport()
    state.say("", ())
    state.older([])
    expect(says).to_contain_text("Nothing to mend in this lesson")
    (bank / FILE).write_text(lesson, encoding="utf-8")
    does_not_say_that_nothing_is_left_while_another_file_of_the_unit_is_open(page, bank, state)


def test_a_mark_stands_beside_its_place_also_where_its_line_has_no_words(
    page: Page, state: State
) -> None:
    places = {
        ("minutes",): page.locator("h1"),
        ("steps", 1, "minutes"): page.locator(".preview-step").nth(1),
        ("if", "stuck"): page.locator(".preview-text", has_text="Name the first move."),
    }
    said = {"file": FILE, "line": 1, "grade": "error", "message": "wrong", "help": "mend"}
    marks = [{**said, "path": list(path), "words": "7"} for path in places]
    state.say("", marks)
    expect(page.locator("#preview-says")).to_contain_text("3 to mend in this lesson")
    for number, place in enumerate(places.values(), start=1):
        # beside what is typed over, never in it; else in its place
        mark = f"button.preview-mark >> text='{number}'"
        button = place.locator(f"xpath=following-sibling::button[1] >> text='{number}'").or_(
            place.locator(mark)
        )
        expect(button).to_have_count(1)
        assert "To mend it:" in (button.get_attribute("aria-label") or "")
    page.locator(".preview-mark").first.click()
    expect(page.locator("#preview-bar li").first).to_be_visible()


def does_not_say_that_nothing_is_left_while_another_file_of_the_unit_is_open(
    page: Page, bank: Path, state: State
) -> None:
    says = page.locator("#preview-says")
    change(bank / "units" / BASE_UNIT / "unit.md", "\nsummary: ", "\nsummary: ✎ ")
    problems = check_folder(bank).problems
    assert {p.file.rpartition("/")[2] for p in problems} == {"unit.md"}
    state.say("the problems", shown(bank, problems))
    expect(says).to_contain_text(f"Nothing in this lesson, but {len(problems)} in unit.md")
    expect(says).not_to_contain_text("Nothing to mend")
    # and leads there
    says.get_by_role("link", name=f"{len(problems)} in unit.md").click()
    expect(page).to_have_url(re.compile(rf"/units/{BASE_UNIT}/index\.html$"))
    expect(page.locator("#preview-says")).to_contain_text("in this unit’s own file")


def test_a_marks_number_is_never_sent_with_the_words_beside_it(
    page: Page, bank: Path, state: State
) -> None:
    """Found in a trial: “…with one change of level.1” stood in the file."""
    before = text_of(bank)
    said = {"file": FILE, "line": 1, "grade": "error", "message": "wrong", "help": "mend"}
    mark = {**said, "path": ["steps", 2, "task"], "words": WAS}
    text = page.locator(".preview-text", has_text=WAS).first
    text.click()
    state.say("", [mark])
    expect(page.locator(".preview-mark")).to_have_count(1)  # drawn while she types
    page.keyboard.press("End")
    page.keyboard.type(" Softly.")
    page.keyboard.press("Enter")
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    assert text_of(bank) == before.replace(WAS, f"{WAS} Softly.")


@pytest.mark.parametrize(
    ("shown_as", "is_field", "new"),
    [
        ("Two taps mean stop. Land softly and bend your knees.", "steps.0.say", "Be still at two."),
        ("Dance the first part once", "look_and_talk.next.seen", "dance it twice"),
        pytest.param(
            "Folds you can count",
            "look_and_talk.looking_for",
            "stillness at the end",
            marks=pytest.mark.thorough,
        ),
        pytest.param(
            "Learn the fold, make the drift and mirror it",
            "focus",
            "Learn the fold again",
            marks=pytest.mark.thorough,
        ),
    ],
)
def test_a_sentence_in_the_pages_own_marks_is_changed_alone(
    page: Page, bank: Path, shown_as: str, is_field: str, new: str
) -> None:
    before = text_of(bank)
    sentence = page.locator(".preview-text", has_text=shown_as).first
    expect(sentence).to_have_attribute("data-preview-path", path_of(is_field))
    sentence.click()
    # the file’s own words are typed over, without the page’s marks round them
    expect(sentence).to_have_text(re.compile(f"^{re.escape(shown_as)}$", re.IGNORECASE))
    page.keyboard.press("Control+A")
    page.keyboard.type(new)
    page.keyboard.press("Enter")
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    lines = zip(before.split("\n"), text_of(bank).split("\n"), strict=True)
    assert [b.strip() for a, b in lines if a != b] == [f"{is_field.split('.')[-1]}: {new}"]


def path_of(dotted: str) -> str:
    steps = [int(one) if one.isdecimal() else one for one in dotted.split(".")]
    return json.dumps(steps, separators=(",", ":"))


SMALL = """() => {
  const body = document.createElement("div");
  body.innerHTML = `<p>Ask <strong>What opened?</strong>
    <span>They may say: my arms; “I” got wider</span></p>
    <p><b>Say</b> “It’s raining: ‘whoosh’ – open.”</p><p>You <a href="x">go on</a>.</p>
    <p>Round the bend</p><p>The <i>same</i> words</p><p>The same words</p>
    <dl><dd>Leave out exploring. That is step 2.</dd></dl>`;
  const fields = ["What opened?",
    "my arms", "\\"I\\" got wider", "It's raining: \\"whoosh\\" – open.",
    "go on", "the bend", "The same words",
    "Leave out exploring."].map((text, n) => ({ text, path: [n] }));
  const found = window.danceUnitPreview.sentences(fields, body);
  return found.map(({ element, field }) => [field.path[0], element.textContent]);
}"""
"""A page with answers, marks inside of others, a way to elsewhere, and what is said twice."""


def is_found_in_marks_and_lists_and_not_as_a_part_of_another(page: Page) -> None:
    assert sorted(page.evaluate(SMALL)) == [
        [0, "What opened?"],
        [1, "my arms"],
        [2, "“I” got wider"],
        [3, "It’s raining: ‘whoosh’ – open."],
        [6, "The same words"],
        [6, "The same words"],
        [7, "Leave out exploring."],
    ]


def test_a_sentence_that_the_schema_refuses_changes_nothing_and_is_kept_to_be_mended(
    page: Page, bank: Path
) -> None:
    """Found in a trial: a sentence of five letters was written, and the page froze."""
    before = text_of(bank)
    text = page.locator(".lead .preview-text")
    text.click()
    page.keyboard.press("Control+A")
    page.keyboard.type("✎ try")
    page.keyboard.press("Enter")
    answer = page.locator("#preview-answer")
    expect(answer).to_contain_text("nothing was changed")
    expect(answer).to_contain_text("is the least")
    assert text_of(bank) == before
    # what she typed is there again, to go on from
    text.click()
    expect(text).to_have_text("✎ try")
    page.keyboard.press("End")
    page.keyboard.type(" the first part of it.")
    page.keyboard.press("Enter")
    expect(answer).to_contain_text("is changed")
    assert "✎ try the first part of it." in text_of(bank)


def test_undo_says_what_it_undoes_and_is_of_its_own_file(
    page: Page, preview: Preview, bank: Path
) -> None:
    before, unit = text_of(bank), (bank / UNIT).read_bytes()
    page.locator('[data-path="steps.0.minutes"]').fill("9")
    page.locator('[data-path="steps.0.minutes"]').press("Tab")
    undo = page.get_by_role("button", name="Undo: Step 1: minutes", exact=True)
    expect(undo).to_be_visible()
    title = texts_of_unit(bank)["title"]
    asked = {"file": UNIT, "path": ["title"], "old": title, "new": "Boats of another paper"}
    assert post(preview, "preview-change", asked)[0] == 200
    changed = (bank / UNIT).read_bytes()
    undo.click()
    expect(page.locator("#preview-answer")).to_contain_text("is as it was")
    assert text_of(bank) == before
    assert (bank / UNIT).read_bytes() == changed
    assert post(preview, "preview-undo", {"file": FILE})[0] == 422
    assert post(preview, "preview-undo", {"file": UNIT})[0] == 200
    assert (bank / UNIT).read_bytes() == unit


def texts_of_unit(bank: Path) -> dict[str, str]:
    read = read_markdown(UNIT, (bank / UNIT).read_bytes())
    assert isinstance(read, Document)
    return dict(read.data)


def test_notes_of_the_banks_own_files_are_not_to_mend(bank: Path) -> None:
    note = Problem("vocabulary/words.yml", 1, 1, "any", "note", "a word", "none")
    asks = Problem("vocabulary/words.yml", 2, 1, "any", "question", "a word", "none")
    own = Problem(FILE, 1, 1, "any", "note", "a word", "none")
    told = [(one["file"], one["grade"]) for one in shown(bank, [*[note] * 300, asks, own])]
    assert told == [("vocabulary/words.yml", "question"), (FILE, "note")]


def test_the_field_of_a_problem_is_the_innermost_on_its_line(bank: Path) -> None:
    line = change(bank / FILE, "    does: Learn the fold\n    minutes: 6",
                  "    does: Learn the fold\n    minutes: 7") + 1  # fmt: skip
    problem = Problem(FILE, line, 1, "any", "error", "wrong", "mend")
    [told] = shown(bank, [problem])
    assert (told["path"], told["words"]) == (["steps", 1, "minutes"], "7")
    [elsewhere] = shown(bank, [Problem("bank.yml", 1, 1, "any", "error", "wrong", "mend")])
    assert elsewhere["path"] == []


def steps_of(bank: Path) -> list[dict[str, object]]:
    read = read_markdown(FILE, (bank / FILE).read_bytes())
    assert isinstance(read, Document)
    return list(reading_of(read).data["steps"])


def test_choices_and_numbers_of_a_step_change_that_line_alone(page: Page, bank: Path) -> None:
    before = text_of(bank)
    page.locator('[data-path="steps.1.grouping"]').select_option("pairs")
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    page.locator('[data-path="steps.0.minutes"]').fill("9")
    page.locator('[data-path="steps.0.minutes"]').press("Tab")
    expect(page.locator("#preview-bar button", has_text="Undo")).to_be_visible()
    page.get_by_role("button", name="Undo").click()
    expect(page.locator("#preview-answer")).to_contain_text("is as it was")
    after = text_of(bank)
    changed = [b for a, b in zip(before.split("\n"), after.split("\n"), strict=True) if a != b]
    assert changed == ["    grouping: pairs"]


def test_a_step_is_moved_added_and_taken_away(page: Page, bank: Path) -> None:
    before, text = steps_of(bank), text_of(bank)
    page.get_by_role("button", name="Down: Step 1", exact=True).click()
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    assert [s["does"] for s in steps_of(bank)[:2]] == [before[1]["does"], before[0]["does"]]
    # the page still shows what was: what it asks for now is not there any more
    page.get_by_role("button", name="Take away: Step 1", exact=True).click()
    expect(page.locator("#preview-answer")).to_contain_text("says something else")
    page.reload()
    page.get_by_role("button", name="Undo").click()
    expect(page.locator("#preview-answer")).to_contain_text("is as it was")
    assert text_of(bank) == text
    page.reload()
    page.get_by_role("button", name="Add a step below: Step 2", exact=True).click()
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    assert steps_of(bank)[2]["does"] == "A new step"
    assert check_folder(bank).of_grade("error") == ()
    page.reload()
    page.get_by_role("button", name="Undo").click()
    expect(page.locator("#preview-answer")).to_contain_text("is as it was")
    page.reload()
    page.get_by_role("button", name="Take away: Step 3", exact=True).click()
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    assert len(steps_of(bank)) == len(before) - 1


def test_of_a_unit_ideas_and_choices_can_be_clicked_and_choices_and_lists_are_in_the_bar(
    unit_page: Page, bank: Path
) -> None:
    page = unit_page
    for name in ("A", "B", "C"):
        expect(
            page.locator(f'.preview-text[data-preview-path*=\'"{name}","idea"\']')
        ).not_to_have_count(0)
    expect(page.locator(".preview-text[data-preview-path^='[\"choices\"']")).not_to_have_count(0)
    unit = bank / "units" / BASE_UNIT / "unit.md"
    before = unit.read_text(encoding="utf-8")
    page.get_by_text("Choices, numbers and lists of this file").click()
    by = page.locator('#preview-rest [data-path^="choices."][data-path$=".by"]').first
    was, words = by.input_value(), by.locator("option").all_inner_texts()
    by.select_option(next(word for word in words if word != was))
    expect(page.locator("#preview-answer")).to_contain_text("is changed")
    lines = zip(before.split("\n"), unit.read_text("utf-8").split("\n"), strict=True)
    assert [(a.strip()[:4], b.strip()[:4]) for a, b in lines if a != b] == [("by: ", "by: ")]


@pytest.mark.parametrize(
    ("name", "asked"),
    [
        ("preview-set", {"file": FILE, "path": ["minutes"], "old": 40, "new": None}),
        ("preview-set", {"file": "bank.yml", "path": ["name"], "old": "a", "new": "b"}),
        ("preview-set", {"file": FILE, "path": ["steps"], "old": 40, "new": [1]}),
        ("preview-move", {"file": FILE, "path": ["steps", 0], "old": "x", "way": "sideways"}),
        ("preview-move", {"file": FILE, "path": ["collect", 0], "old": "x", "way": "new"}),
        ("preview-move", {"file": FILE, "path": ["steps", -1], "old": "x", "way": "up"}),
        ("preview-move", {"file": FILE, "path": [], "old": "x", "way": "up"}),
    ],
)
def test_no_other_value_or_move_is_made(
    preview: Preview, bank: Path, name: str, asked: object
) -> None:
    before = text_of(bank)
    assert post(preview, name, asked)[0] in (409, 422)
    assert text_of(bank) == before


def test_what_an_editor_saved_after_a_move_is_not_undone(preview: Preview, bank: Path) -> None:
    mark = mark_of(steps_of(bank)[0])
    asked = {"file": FILE, "path": ["steps", 0], "old": mark, "way": "down"}
    assert post(preview, "preview-move", asked)[0] == 200
    change(bank / FILE, WAS, "Saved in the editor.")
    saved = text_of(bank)
    status, said = post(preview, "preview-undo", {"file": FILE})
    assert status == 409
    assert "saved since" in said
    assert text_of(bank) == saved
