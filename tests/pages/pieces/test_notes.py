"""Notes in Markdown: no raw HTML, headings under the page's own."""

from __future__ import annotations

import pytest

from build_tools.pages.pieces.notes import notes_html
from tests.support.drawn import seen_in


@pytest.mark.parametrize(
    "written",
    [
        "<script>alert(1)</script>",
        "<b onclick=x>bold</b>",
        "a <img src=x onerror=y> b",
        "<!-- x -->",
    ],
)
def test_raw_html_comes_out_as_words(written: str) -> None:
    shown = notes_html(written, 3)
    assert {name for name, _ in seen_in(shown).elements} == {"p"}
    assert written in seen_in(shown).text()


def test_headings_go_under_the_page_and_skip_no_level() -> None:
    shown = notes_html("# One\n\n#### Two\n\n# Three\n\n## Two\n", 3)
    elements = seen_in(shown).elements
    assert [name for name, _ in elements] == ["h3", "h4", "h3", "h4"]
    assert [a["id"] for _, a in elements] == ["one", "two", "three", "two-2"]


def test_notes_that_start_deep_are_raised_to_the_top() -> None:
    assert seen_in(notes_html("### How it works", 2)).elements[0][0] == "h2"


def test_no_notes_are_nothing() -> None:
    assert notes_html(" \n\n", 3) == ""
