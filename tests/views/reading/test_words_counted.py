"""Lengths of texts, and how one text takes up another."""

from __future__ import annotations

import pytest

from build_tools.sentences.telling import telling_words
from build_tools.views.reading.ease import ease_at_a_glance, reading_ease, words
from build_tools.views.reading.words_counted import longer_than, words_at_most


def test_counts_words_above_the_limit_only() -> None:
    assert longer_than(3, None) == 0
    assert longer_than(3, "one two three") == 0
    assert longer_than(3, "one two three four") == 4
    assert longer_than(3, "one two\nthree four") == 4
    assert longer_than(3, "one – two – three") == 0


@pytest.mark.parametrize(
    "text",
    ["Fold, press - and hold.", "A side-step: don't run!", "and/or 3.5 (twice) “Hold on”…go"],
)
def test_never_counts_too_few(text: str) -> None:
    assert len(words(text)) <= words_at_most(text) <= len(words(text)) + 1


# Flesch, A new readability yardstick, Journal of Applied Psychology 32, 1948
@pytest.mark.parametrize(
    "text",
    [
        "The cat sat on the mat. It ran.",
        "Float over a stone, hop and settle.\nThen fold, drift out and drift back.",
        "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.",
    ],
)
def test_a_glance_never_makes_a_text_much_easier(text: str) -> None:
    found = reading_ease(text)
    assert found is not None
    assert ease_at_a_glance(text) <= found.ease + 8


def test_no_text_is_easy() -> None:
    assert ease_at_a_glance("") > 200


def test_telling_words_meet_in_their_other_forms() -> None:
    assert telling_words(["Dance the slow waves first", None]) & telling_words(
        ["a slowly held wave"]
    )
    assert telling_words(["sinking"]) == telling_words(["sinks"])
    assert telling_words(["Start the dance again from the first step"]) == frozenset()
