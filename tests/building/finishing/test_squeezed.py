"""A text held small is the same again, read by Python and by the page's own script.

LZMA as liblzma writes it, which Python brings; base 85 is that of RFC 1924.
"""

from __future__ import annotations

import html
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.building.finishing.squeezed import squeezed, unsqueezed
from build_tools.building.finishing.squeezed_parts import with_small_data
from build_tools.building.templates import html_of
from build_tools.pages.dance_from_above.dance_from_above import dance_page
from tests.support.markup import tags
from tests.support.page_script import ask
from tests.support.sound_bank import real_bank, real_unit

WRITTEN = "<li>Scuttle, dodge, snap – “hide” 𝄞</li>\n"
LONG = "".join(f"{n} {WRITTEN}" for n in range(4000))
LETTERS = "".join(random.Random(7).choices("abcdefgh <>é", k=60_000))


@given(st.text(), st.integers(1, 300))
def test_any_text_is_the_same_again(text: str, times: int) -> None:
    small = squeezed(text * times)
    assert unsqueezed(small) == text * times
    assert ask("unsqueezed", small) == text * times
    assert not set(small) & set("\"&<>`' ")


@pytest.mark.parametrize("text", [LONG, LETTERS, LONG + LETTERS + LONG])
def test_long_texts_too_however_far_they_look_back(text: str) -> None:
    assert ask("unsqueezed", squeezed(text)) == text


def test_what_stood_far_before_costs_nearly_nothing() -> None:
    once, twice = squeezed(LETTERS), squeezed(LETTERS + LETTERS)
    assert len(twice) < len(once) + 200


def test_what_is_played_is_held_small_and_is_the_same() -> None:
    page = html_of(dance_page(real_bank(), real_unit()))
    small = with_small_data(page)
    (told,) = (one.attributes["data-dance"] for one in tags(page) if "data-dance" in one.attributes)
    (held,) = (
        one.attributes["data-dance-small"]
        for one in tags(small)
        if "data-dance-small" in one.attributes
    )
    assert unsqueezed(held) == told == html.unescape(told)
    assert len(held) < len(told) / 2
    assert len(small) < len(page) - len(told) / 2


def test_a_page_that_plays_nothing_stays_as_it_is() -> None:
    assert with_small_data("<p data-dancer='one'>") == "<p data-dancer='one'>"
