"""A word is compared in the same letters here and on the page."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from build_tools.views.finding.words_typed import words_typed
from tests.support.page_script import ask


def test_accents_capitals_and_signs_are_passed_over() -> None:
    assert words_typed("Who’s in the Café? 2D, d&t") == ("who", "in", "the", "cafe", "2d")


@given(st.text(alphabet=st.characters(codec="utf-8", exclude_categories=["Cs"]), max_size=40))
def test_the_page_reads_the_same_words(text: str) -> None:
    # the two languages make small letters of a few rare signs differently; words are a to z
    latin = "".join(c for c in text if ord(c) < 0x250 and c not in "İ")
    assert tuple(ask("finding.wordsTyped", latin)) == words_typed(latin)


def test_a_year_a_stage_and_minutes_are_read_among_the_words() -> None:
    asked = ask("finding.readTypedOf", "Rivers Year 4 45 mins ks1", ["mins"])
    assert asked == {"words": ["rivers"], "years": ["4", "1", "2"], "minutes": 45}
    assert ask("finding.readTypedOf", "reception", [])["years"] == ["r"]
