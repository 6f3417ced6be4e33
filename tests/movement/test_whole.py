"""The whole dance laid end to end."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Passage, Seconds, Transition
from build_tools.movement.canon_and_unison import part_spans
from build_tools.movement.whole import (
    counts_in_order,
    danced_counts,
    seconds_in_order,
    stretches,
    transition_between,
)
from build_tools.movement.whole import lengths as lengths_of
from tests.movement.strategies import counts, dance, lengths, passages, section, tempi
from tests.movement.test_development import FOUR


def join(first: str, second: str, kind: str = "move", length: int | None = 8) -> Transition:
    own = None if length is None else Fraction(length)
    return Transition(first, second, kind, own, "walk", "the drum")


@pytest.mark.parametrize(
    ("tempo", "length"),
    [(96, "120"), (100, "576/5"), (108, "320/3"), (120, "96"), (128, "90")],
)
def test_worked_dance(tempo: int, length: str) -> None:
    """Computed: A B C D A, five sections of 32 and four transitions of 8, is 192 counts."""
    sections = [section(letter, 32) for letter in "ABCD"]
    whole = dance("ABCDA", sections, transitions=(join("any", "any"),), tempo=tempo)
    assert counts_in_order(whole) == 192
    assert seconds_in_order(whole) == Seconds(Fraction(length), Fraction(length))


@given(
    st.lists(st.sampled_from("ABC"), min_size=1, max_size=8),
    st.tuples(*[st.integers(8, 64)] * 3),
    st.integers(1, 8),
    tempi,
)
def test_parts_are_laid_end_to_end(
    form: list[str], longs: tuple[int, ...], gap: int, tempo: int
) -> None:
    sections = [section(letter, n) for letter, n in zip("ABC", longs, strict=True)]
    own = {s.letter: s.counts or 0 for s in sections}
    gaps = len(form) - 1
    for kind, each in (("move", gap), ("hold", gap), ("overlap", -gap), ("cut", 0)):
        joins = (join("any", "any", kind, gap),)
        whole = dance("".join(form), sections, transitions=joins, tempo=tempo)
        assert counts_in_order(whole) == sum(own[x] for x in form) + gaps * each
        lasts = seconds_in_order(whole)
        assert lasts is not None
        assert lasts.least == lasts.most == counts_in_order(whole) * 60 / tempo
        assert len(stretches(whole)) == len(form) + gaps


def test_uncounted_sections_make_a_range() -> None:
    free = replace(section("B", None), seconds=Seconds(Fraction(20), Fraction(40)))
    joins = (join("A", "B", "straight on", None), join("B", "A", "cut", None))
    whole = dance("ABA", [section("A", 32), free], transitions=joins, tempo=120)
    assert seconds_in_order(whole) == Seconds(Fraction(52), Fraction(72))
    assert counts_in_order(whole) == 64
    assert seconds_in_order(replace(whole, tempo=None)) is None
    only = dance("B", [free])
    assert seconds_in_order(only) == Seconds(Fraction(20), Fraction(40))


def test_any_stands_for_every_letter() -> None:
    joins = (join("A", "B"), join("any", "C"), join("C", "any"))
    whole = dance("ABC", [section(letter, 8) for letter in "ABC"], transitions=joins)
    assert transition_between(whole, "A", "B") == joins[0]
    assert transition_between(whole, "B", "C") == joins[1]
    assert transition_between(whole, "C", "A") == joins[2]
    assert transition_between(whole, "B", "A") is None


@given(st.lists(passages, min_size=1, max_size=4), lengths, counts)
def test_a_section_lasts_until_its_latest_finish(
    danced: list[Passage], known: dict[str, Fraction], after: Fraction
) -> None:
    spelt = [replace(p, parts=2, after=after, what=("one", "two")) for p in danced]
    motifs = {name: (replace(FOUR[0], counts=length),) for name, length in known.items()}
    here = section("A", 8, *spelt)
    whole = dance("A", [here], motifs=motifs)
    each = [max(span.end for span in part_spans(p, lengths_of(whole))) for p in spelt]
    assert danced_counts(whole, here) == sum(each)
