"""Numbers of counts in words: what is said and meant, and what only stands near a number."""

from __future__ import annotations

import pytest

from build_tools.sentences.numbers_of_counts import (
    CountsSaid,
    counts_said,
    lengths_after,
    lengths_told,
)

FOR_IN_BY = frozenset({"for", "in", "by"})


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("Drift for 16 counts.", CountsSaid(16, "16 counts", apart=False)),
        ("Give it thirty-two slow counts.", CountsSaid(32, "thirty-two slow counts", apart=False)),
        ("Twelve beats each.", CountsSaid(12, "Twelve beats", apart=False)),
        ("Each starts two counts after the last.", CountsSaid(2, "two counts after", apart=True)),
        ("Not four counts but six.", CountsSaid(6, "four counts but six", apart=False)),
        ("Wait six counts.", CountsSaid(6, "six counts", apart=False, waited=True)),
    ],
)
def test_what_a_text_counts(text: str, said: CountsSaid) -> None:
    assert list(counts_said(text)) == [said]


@pytest.mark.parametrize(
    "text",
    [
        "It is not sixteen counts.",
        "Be still within three counts.",
        "Play for ten counts or so.",
        "Change every four counts, with no more than two counts to do it.",
        "Walk in twos for the count of the drum.",
        "Do it four times, on beat three.",
    ],
)
def test_what_leaves_the_number_open_or_counts_nothing(text: str) -> None:
    assert not list(counts_said(text))


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("Walk into your four for eight.", [8]),
        ("Walk for four, then sink in six slow counts.", [4, 6]),
        ("Be home by five and freeze.", [5]),
        ("Walk in three groups for two dancers, and not in five.", []),
        ("Six counts: walk in. Twos!", []),
    ],
)
def test_lengths_that_stand_after_a_word(text: str, counts: list[int]) -> None:
    assert list(lengths_after(text, FOR_IN_BY)) == counts


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("Eight counts to walk home.", [8]),
        ("Walk for six and turn for two.", [6, 2]),
        ("I count to twelve while you walk.", [12]),
        ("Four counts to walk, four more to sink.", [4, 4]),
        ("Count eight, then eight again.", [8, 8]),
        ("Sink on three slow beats, then walk home in sixteen.", [16]),
        ("Make four counts of silent talk.", []),
        ("Walk after eight counts.", []),
    ],
)
def test_lengths_that_a_class_is_told(text: str, counts: list[int]) -> None:
    assert list(lengths_told(text)) == counts
