"""A card made of its lesson's page: it says what the author says, and nothing that is not there."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser

from build_tools.model.lesson import Lesson
from build_tools.views.lesson.lesson_wording import changes_in_order, question_said
from tests.support.browser import address_of
from tests.support.built_sites import heaviest_of_each_unit, lesson_pages
from tests.support.hall import opened
from tests.support.sound_bank import real_bank

CARD = "units/rock-pool/lesson-3.html#card"
SAID = """
() => {
  const words = (from, what) => [...from.querySelectorAll(what)].map((one) => {
    const copy = one.cloneNode(true);
    copy.querySelector(":scope > :is(b, .label):first-child")?.remove();
    return copy.textContent.replace(/\\s+/g, " ").trim();
  });
  return {
    steps: [...document.querySelectorAll(".step-card[data-minutes]")].map((step) => ({
      does: words(step, "h2")[0],
      task: words(step, ".task:not(.you)")[0],
      you: words(step, ".you"),
      say: words(step, ".say"),
      into: words(step, "[data-into]"),
      looks: words(step, ".look-for"),
      asks: words(step, ".question > p > strong"),
      wait: Boolean(step.querySelector(".can-wait")),
    })),
    checks: words(document, ".begin .checks li"),
    trouble: words(document, "[data-trouble] > dl:first-of-type dd"),
    alone: words(document, "[data-trouble] > dl:nth-of-type(2) dd"),
    change: words(document, "[data-trouble] > dl:nth-of-type(3) dd"),
    starts: words(document, ".begin .last-time dd"),
    short: document.querySelector(".card-root").dataset.short ?? null,
  };
}
"""
ON_CARD = """
() => [...document.querySelectorAll(
  ".begin > p:not([data-plan], .start), .begin li, .begin :is(dt, dd), .begin .notes p,"
  + ".step-card[data-minutes] h2, .spoken p:not(.where, .after, .can-wait), "
  + ".folds :is(p, li, dt, dd), .folds svg text, .finished dd, [data-trouble] :is(dd, li)"
)].map((one) => {
  const copy = one.cloneNode(true);
  copy.querySelector(":scope > :is(b, .label):first-child")?.remove();
  return copy.textContent.replace(/\\s+/g, " ").trim();
}).filter(Boolean)
"""
"""What stands on a card, line by line, without the names of its folds and what only counts time."""


def lessons() -> dict[str, Lesson]:
    """Each lesson by the address of its page."""
    return {
        f"units/{unit.slug}/lesson-{lesson.number}.html": lesson
        for unit in real_bank().units
        for lesson in unit.lessons
    }


def plain(words: str | None) -> str:
    """The words without what a page may set otherwise: quote marks, capitals and full stops."""
    kept = (one for one in words or "" if one.isalnum() or one.isspace())
    return " ".join("".join(kept).split()).casefold()


def test_a_card_says_what_the_author_says_and_all_of_it_stands_on_its_page_without_script(
    browser: Browser, site: Path, thorough: bool
) -> None:
    every = lesson_pages(site)
    paths = [*reversed(every if thorough else heaviest_of_each_unit(site, every))]
    written, on_card = lessons(), dict[str, list[str]]()
    with opened(browser, site, f"{paths[0]}#card") as at:
        for path in paths:
            if path != paths[0]:
                at.page.goto(address_of(site, f"{path}#card"))
            on_card[path] = at.page.evaluate(ON_CARD)
            lesson = written[path]
            said: dict[str, Any] = at.page.evaluate(SAID)
            assert len(said["steps"]) == len(lesson.steps)
            closing = [one for one in lesson.steps if one.phase == "look and talk"][-1:]
            for shown, step in zip(said["steps"], lesson.steps, strict=True):
                where = (path, step.does)
                assert shown["does"] == step.does, where
                assert shown["task"] == step.task, where
                assert shown["you"] == [step.you] * bool(step.you), where
                for said_here, told in ((shown["say"], step.say), (shown["into"], step.into)):
                    assert [plain(one) for one in said_here] == [plain(told)] * bool(told), where
                assert shown["wait"] == step.can_wait, where
                talk = lesson.look_and_talk if step in closing else None
                asked = talk.questions if talk else step.ask[:1]
                assert shown["asks"] == [question_said(one, lesson) for one in asked], where
                looked = step.look_for or (talk.looking_for if talk else "")
                assert [plain(one) for one in shown["looks"]] == [plain(looked)] * bool(looked)
            assert tuple(said["checks"][: len(lesson.safety)]) == lesson.safety, path
            assert said["checks"][-1].startswith("Every time: floor clear and dry"), path
            assert len(said["trouble"]) == len(lesson.trouble), path
            for words in lesson.trouble.values():
                assert [one for one in said["trouble"] if one.startswith(words)], (path, words)
            assert said["alone"] == [lesson.not_dancing], path
            assert said["change"] == [words for _, words in changes_in_order(lesson)], path
            assert said["short"] == lesson.trouble.get("short_of_time"), path
            before = written.get(path.replace(f"-{lesson.number}.", f"-{lesson.number - 1}."))
            left = before.look_and_talk.next if before and before.look_and_talk else None
            starts = [left.seen, left.not_yet] if left else []
            assert [plain(one) for one in said["starts"]] == [plain(one) for one in starts], path
        assert at.said == []
    every_word_stands_on_its_page_without_script(browser, site, on_card)


def every_word_stands_on_its_page_without_script(
    browser: Browser, site: Path, on_card: Mapping[str, list[str]]
) -> None:
    """The card is made of its lesson by script; whoever runs none reads and prints the lesson."""
    with opened(browser, site, f"{next(iter(on_card))}#card", script=False) as at:
        for path, lines in on_card.items():
            at.page.goto(address_of(site, f"{path}#card"))
            there = " ".join((at.page.locator("main").text_content() or "").split())
            assert len(lines) > 50
            assert [line for line in lines if line not in there] == [], path
            assert at.page.locator("button:visible").count() == 0


def test_the_way_back_from_a_card_is_its_lesson(browser: Browser, site: Path) -> None:
    """Both are one page, which knows what it is by its address alone."""
    with opened(browser, site, CARD.partition("#")[0]) as at:
        page = at.page
        lesson = page.title()
        page.get_by_role("link", name="Teach it, step by step").click()
        page.wait_for_selector("[data-live]")
        assert page.title().startswith("Card for lesson 3: ")
        assert page.locator("article").count() == 0
        page.go_back()
        page.wait_for_selector("article .steps")
        assert page.title() == lesson
        assert page.locator(".card-root").count() == 0
        page.go_forward()
        page.wait_for_selector("[data-live]")
        page.locator(".top a").click()
        page.wait_for_selector("article .steps")
        assert page.title() == lesson
        assert at.said == []
