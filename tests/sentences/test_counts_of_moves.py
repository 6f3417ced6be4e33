"""Which lengths a text gives to moves and motifs."""

from __future__ import annotations

import pytest

from build_tools.sentences.counts_of_moves import FROM_TO, lengths_said

MOVES = ("rock", "rush", "break", "sink low")


def said(text: str) -> list[tuple[tuple[str, ...] | str | None, int]]:
    return [(c.moves or c.name, c.counts) for c in lengths_said(text, MOVES, ("wave",))]


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Rock two, rush four.", [(("rock",), 2), (("rush",), 4)]),
        ("Rush for four, sinking low for six.", [(("rush",), 4), (("sink low",), 6)]),
        ("Rush, two, three, four!", [(("rush",), 4)]),
        ("Six counts of the rush.", [(("rush",), 6)]),
        ("Two counts rock, four counts rush.", [(("rock",), 2), (("rush",), 4)]),
        ("Rock and rush, two counts each.", [(("rock",), 2), (("rush",), 2)]),
        ("The wave lasts ten counts.", [("wave", 10)]),
        ("All ten counts of the wave.", [("wave", 10)]),
        ("Cards: rock 2, rush 4", [(("rock",), 2), (("rush",), 4)]),
    ],
)
def test_a_number_beside_a_move_is_its_length(
    text: str, claims: list[tuple[tuple[str, ...] | str, int]]
) -> None:
    assert said(text) == claims


def test_from_one_move_to_another() -> None:
    (claim,) = lengths_said("Ten counts from first rock to last break.", MOVES, ())
    assert claim.moves == ("rock", *FROM_TO[1:-1], "break")
    assert claim.counts == 10


def test_the_moves_in_a_row_are_listed() -> None:
    (claim,) = lengths_said("Rock, rush and break in eight counts.", MOVES, ())
    assert claim.listed == ("rock", "rush", "break")


@pytest.mark.parametrize(
    "text",
    [
        "Rock four times.",
        "Rock on four.",
        "Rock in two lines.",
        "Rock, and hold for two.",
        "Hold the break for eight counts.",
        "Rush four counts after the last.",
        "Five, six, seven, eight, rock!",
        "Wait for two counts.",
        "Rock once, rush twice.",
        "Never rock for six.",
        "Rock",
    ],
)
def test_other_numbers_are_no_lengths(text: str) -> None:
    assert said(text) == []
