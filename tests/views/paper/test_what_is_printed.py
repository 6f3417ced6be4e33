"""What is printed of a lesson: the very words that the browser shows on paper, and no others."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from build_tools.building.assets import copy_assets
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.speaking import speaking
from build_tools.pages.lesson.lesson import LessonView, lesson_page
from build_tools.views.paper.paper_size import LEAST, on_paper
from build_tools.views.paper.printed import PrintedLesson, printed_texts
from build_tools.views.paper.what_is_printed import printed_lesson
from tests.agreement.made_lessons import made
from tests.support.printed_lessons import whole_page
from tests.support.sound_bank import every_unit, real_bank, real_unit

# What paper shows, in the order of the page; the drawing has words of its own.
SHOWN = """
() => {
  for (const drawing of document.querySelectorAll("svg")) drawing.remove();
  for (const time of document.querySelectorAll(".margin .time")) {
    time.append(JSON.parse(getComputedStyle(time, "::after").content));
  }
  return document.querySelector("article").innerText;
}
"""


@pytest.fixture(scope="module")
def paper(browser: Browser, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Page]:
    """A tab that shows pages as they are printed, in a folder with the styles."""
    folder: Path = tmp_path_factory.mktemp("paper")
    copy_assets(folder)
    (folder / "units" / "one").mkdir(parents=True)
    page = browser.new_page()
    page.emulate_media(media="print")
    page.goto(folder.as_uri())
    yield page
    page.close()


def letters(text: str) -> str:
    """Letters and figures alone: marks between rows are set by the styles."""
    return "".join(letter for letter in text if letter.isalnum())


def shown(paper: Page, unit: Unit, lesson: Lesson) -> str:
    view = lesson_page(real_bank(), unit, lesson).context
    assert isinstance(view, LessonView)
    file = Path(paper.url.removeprefix("file://").partition("/units/")[0]) / "units/one/lesson.html"
    file.write_text(whole_page(view), encoding="utf-8")
    paper.goto(file.as_uri())
    found: str = paper.evaluate(SHOWN)
    return letters(found)


def worked_out(unit: Unit, lesson: Lesson) -> str:
    size = on_paper(unit, lesson)
    printed = printed_lesson(
        unit,
        lesson,
        real_bank().words,
        size.told,
        plans=size.plans,
        said=size.said,
        aside=size.aside,
    )
    texts = list(printed_texts(printed))
    if size.size == LEAST:
        texts = list(without_kinds(texts, printed))
    return letters(" ".join(texts))


def without_kinds(texts: Iterable[str], printed: PrintedLesson) -> Iterator[str]:
    """The texts without what kind of step each is, which the smallest print leaves out."""
    kinds = iter([step.phase.text for step in printed.steps])
    waiting = next(kinds, None)
    for text in texts:
        if text == waiting:
            waiting = next(kinds, None)
        else:
            yield text


def test_every_lesson_there_is_prints_these_words(paper: Page, thorough: bool) -> None:
    lessons = [(unit, lesson) for unit in every_unit() for lesson in unit.lessons]
    assert len(lessons) > 30
    for unit, lesson in lessons if thorough else lessons[::6]:
        assert shown(paper, unit, lesson) == worked_out(unit, lesson), (unit.slug, lesson.number)


def test_a_lesson_in_welsh_prints_these_words_in_welsh(paper: Page, thorough: bool) -> None:
    unit = replace(real_unit(), language="cy")
    with speaking(unit.language):
        for lesson in unit.lessons if thorough else unit.lessons[::3]:
            said = worked_out(unit, lesson)
            assert shown(paper, unit, lesson) == said, lesson.number
            assert "mun" in said


def test_made_lessons_print_these_words(paper: Page, thorough: bool) -> None:
    for number in range(40 if thorough else 5):
        one = made(number)
        assert shown(paper, one.unit, one.lesson) == worked_out(one.unit, one.lesson), number


def test_a_taught_word_that_only_the_bank_explains_takes_the_room_of_most() -> None:
    unit = real_bank().units[0]
    lesson = next(one for one in unit.lessons if any(step.teaches for step in one.steps))
    alone = printed_lesson(unit, lesson)
    known = printed_lesson(unit, lesson, real_bank().words)
    assert len(alone.words) == len(known.words)
    plain = [len(word.plain.split()) for word in real_bank().words.values()]
    assert 6 <= sum(plain) / len(plain) <= 14
