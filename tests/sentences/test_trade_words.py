"""Trade words: all of them in the bank's own list, found in any form."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_tools.sentences.same_idea import SAME_IDEA
from build_tools.sentences.trade_words import (
    HARD_WORDS,
    PUPILS_WORDS,
    covered,
    in_sight,
    trade_words_in,
)
from build_tools.source.yaml_reader import read_yaml

WORDS = Path(__file__).parents[2] / "content" / "vocabulary" / "words.yml"


def bank_words() -> set[str]:
    read = read_yaml(WORDS.read_text(encoding="utf-8"), 1)
    assert isinstance(read, tuple)
    assert isinstance(read[0], dict)
    return set(read[0])


def test_all_are_words_of_the_bank() -> None:
    words = bank_words()
    assert len(words) > 100
    assert words >= PUPILS_WORDS
    assert PUPILS_WORDS > HARD_WORDS
    assert words >= {word for word, _ in SAME_IDEA}


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("Dance it in Canon.", ["canon"]),
        ("Two motifs, side by side", ["motif"]),
        ("Improvise. Keep improvising.", ["improvise"]),
        ("Three stimuli on the table", ["stimulus"]),
        ("Canonical and motifless", []),
        ("A transfer of weight, then stop", ["transfer of weight"]),
        ("Transfer it, by weight", []),
    ],
)
def test_are_found_in_any_form(text: str, found: list[str]) -> None:
    assert trade_words_in(text, sorted(HARD_WORDS)) == found
    words = set(text.lower().replace(".", " ").replace(",", " ").split())
    assert set(found) <= set(in_sight(HARD_WORDS, words))


def test_are_covered_by_an_entry_that_holds_them() -> None:
    assert covered("canon", ["canon in turn"])
    assert covered("improvise", ["Improvisation"])
    assert not covered("canon", ["unison", "cannon"])
