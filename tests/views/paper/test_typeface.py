"""How wide words are, measured again by the browser, and lines broken as it breaks them."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from playwright.sync_api import Browser, Page

from build_tools.building.assets import copy_assets
from build_tools.views.paper.typeface import ENCODING, Run, lines, width, words_wide
from tests.agreement.made_lessons import texts_of_units

SHEET = """<!doctype html><meta charset="utf-8">
<link rel="stylesheet" href="assets/css/look.css">
<link rel="stylesheet" href="assets/css/typeface.css">
<style>span { white-space: pre; position: absolute } p { margin: 0; max-width: none }</style>
<span></span><p></p><p>a <b>a</b></p>
"""
WIDTHS = """
async ([texts, weight, kerning]) => {
  await document.fonts.ready;
  const span = document.querySelector("span");
  span.style.cssText = `font-size: 1000px; font-weight: ${weight}; font-kerning: ${kerning}`;
  return texts.map((text) => {
    span.textContent = text;
    return span.getBoundingClientRect().width;
  });
}
"""
LINES = """
async ([texts, weight, points, wide]) => {
  await document.fonts.ready;
  const p = document.querySelector("p");
  p.style.font = `${weight} ${points}pt/20pt ${getComputedStyle(p).fontFamily}`;
  p.style.width = `${wide}pt`;
  return texts.map((text) => {
    p.textContent = text;
    return Math.round(p.offsetHeight * 0.75 / 20);
  });
}
"""


@pytest.fixture(scope="module")
def sheet(browser: Browser, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Page]:
    folder: Path = tmp_path_factory.mktemp("sheet")
    copy_assets(folder)
    (folder / "sheet.html").write_text(SHEET, encoding="utf-8")
    page = browser.new_page()
    page.goto((folder / "sheet.html").as_uri())
    yield page
    page.close()


@pytest.mark.parametrize(("bold", "weight"), [(False, 400), (True, 700)])
def test_every_letter_is_as_wide_as_the_browser_sets_it(
    sheet: Page, bold: bool, weight: int
) -> None:
    codes = [bytes((code,)).decode(ENCODING, "replace") for code in range(33, 256)]
    letters = [letter for letter in codes if letter.isprintable() and letter != "\ufffd"]
    measured: list[float] = sheet.evaluate(WIDTHS, [letters, weight, "none"])
    assert len(letters) > 180
    for letter, wide in zip(letters, measured, strict=True):
        if letter != "-":
            assert width(letter, bold, 1000) == pytest.approx(wide, abs=9), letter


@pytest.mark.parametrize(("bold", "weight"), [(False, 400), (True, 700)])
def test_texts_are_as_wide_as_the_browser_sets_them(sheet: Page, bold: bool, weight: int) -> None:
    texts = [text for text in texts_of_units("task", "say", "easier") if "-" not in text]
    measured: list[float] = sheet.evaluate(WIDTHS, [texts, weight, "auto"])
    worked_out = [width(text, bold, 1000) for text in texts]
    assert len(texts) > 200
    assert sum(worked_out) == pytest.approx(sum(measured), rel=0.005)
    for mine, its in zip(worked_out, measured, strict=True):
        # a few words that lean on each other, as Take does, may be half a letter shorter
        assert mine == pytest.approx(its, rel=0.025, abs=300)


@pytest.mark.parametrize(("points", "wide"), [(11.0, 480.5), (12.0, 231.7), (14.0, 470.0)])
def test_texts_take_the_lines_that_the_browser_gives_them(
    sheet: Page, points: float, wide: float
) -> None:
    texts = texts_of_units("task", "say", "easier", "harder", "not_dancing", "stuck")
    long = [" ".join(texts[n : n + 3]) for n in range(0, len(texts) - 3, 3)]
    found: list[int] = sheet.evaluate(LINES, [long, 400, points, wide])
    worked_out = [lines((Run(text),), wide, points) for text in long]
    differing = sum(mine != its for mine, its in zip(worked_out, found, strict=True))
    assert len(long) > 200
    assert max(found) >= 4
    assert differing <= len(long) // 25
    assert sum(worked_out) == pytest.approx(sum(found), rel=0.005)


WORDS = st.lists(st.text("abcdefgh ij-", min_size=1, max_size=12), min_size=1, max_size=40)


@given(WORDS, st.floats(60, 500), st.floats(60, 500))
def test_a_wider_column_never_takes_more_lines(words: list[str], one: float, other: float) -> None:
    runs: Any = (Run(" ".join(words)),)
    narrow, wide = sorted((one, other))
    assert lines(runs, wide, 11) <= lines(runs, narrow, 11)


@given(WORDS, st.floats(100, 500))
def test_what_is_cut_into_runs_takes_the_lines_of_the_whole(words: list[str], wide: float) -> None:
    assert lines((Run(" ".join(words)),), wide, 11) == lines(
        [Run(word) for word in words], wide, 11
    )


def test_a_word_that_cannot_be_written_here_is_still_as_wide_as_some_word() -> None:
    assert words_wide("čau ŵyn", False)[0] > 1
