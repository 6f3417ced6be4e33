"""Long notes are read only where a number stands beside what it may count, and nothing is lost."""

from __future__ import annotations

import pytest

from build_tools.sentences.counts_of_moves import _at_words, _Text, lengths_said
from build_tools.sentences.numbers_said import parts_with_numbers
from build_tools.sentences.reading import read
from tests.wordings.lists import all_wordings

NAMED = frozenset({"rock", "sink"})
EACH = frozenset({"each"})
MOVES = ("rock", "sink", "rush", "hop", "turn", "float", "creep", "wave", "walk", "jump")
TEXTS = [text for w in all_wordings() for text in (*w.faulty, *w.sound)]


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("Rock for four. Then rest.", ["Rock for four"]),
        ("Rock, then sink. Rest for four.", []),
        ("Rock, then sink.\nFour each. Rest.", ["Rock, then sink.\nFour each. Rest"]),
        ("Sink 4. Rest. Rock 3.5 times", ["Sink 4", " Rock 3.5 times"]),
        ("", []),
    ],
)
def test_sentences_come_alone_unless_each_is_said(text: str, parts: list[str]) -> None:
    assert parts_with_numbers(text, NAMED, EACH) == parts


def test_no_length_is_lost_that_the_whole_text_tells() -> None:
    told = 0
    for text in (*TEXTS, " ".join(TEXTS[:200])):
        whole = tuple(_Text(read(text), _at_words(MOVES), _at_words(())).claims())
        assert lengths_said(text, MOVES, ()) == whole, text
        told += len(whole)
    assert told, "no text tells a length: the lists are others now"
