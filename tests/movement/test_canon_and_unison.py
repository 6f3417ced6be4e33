"""Parts over counts: each kind of canon has its own length, and no part does two things at once.

Kinds: strict canon as Henkel and the Ontario Arts Curriculum 2010 show it; in turn, as the NSW
Creative Arts K-6 glossary has it; together and to one ending: from memory.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import combinations, pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.model.dance import Passage
from build_tools.movement.canon_and_unison import (
    PartSpan,
    left_unsaid,
    part_spans,
    parts_in,
    passage_counts,
)
from build_tools.shapes.schemas import schema
from tests.movement.strategies import FITS, PUBLISHED, counts, lengths, passages

Lengths = dict[str, Fraction]


def one(fit: str, **fields: Any) -> Passage:
    return replace(Passage(("one",), fit), **fields)


def test_published_canon() -> None:
    example = PUBLISHED["canon"]
    passage = one("canon", parts=example["parts"], after=Fraction(example["after"]))
    spans = part_spans(passage, {"one": Fraction(example["phrase"])})
    assert [span.end for span in spans] == example["ends"]


@pytest.mark.parametrize("row", PUBLISHED["canon_computed"]["rows"], ids=str)
def test_computed_canons(row: dict[str, int]) -> None:
    passage = one("canon", parts=row["parts"], after=Fraction(row["after"]))
    assert passage_counts(passage, {"one": Fraction(row["phrase"])}) == row["total"]


@given(counts, st.integers(2, 8), counts, st.integers(1, 3))
def test_each_canon_has_its_own_length(
    length: Fraction, parts: int, after: Fraction, times: int
) -> None:
    known, phrase = {"one": length}, length * times

    def lasts(fit: str, **fields: Any) -> Fraction:
        return passage_counts(one(fit, times=times, parts=parts, **fields), known)

    assert lasts("canon", after=after) == phrase + (parts - 1) * after
    assert lasts("canon in turn") == phrase * parts
    assert lasts("canon in turn") == lasts("canon", after=phrase)
    assert lasts("canon together") == lasts("unison") == phrase
    assert lasts("canon to one ending", after=after) == phrase


@given(lengths)
def test_answers_follow_and_sides_run_together(known: Lengths) -> None:
    both = ("one", "two")
    answer, sides = Passage(both, "question and answer"), Passage(both, "side by side")
    assert passage_counts(answer, known) == known["one"] + known["two"]
    assert passage_counts(sides, known) == max(known["one"], known["two"])
    asks, answers = part_spans(answer, known)
    assert asks.end == answers.start


@given(passages, lengths)
def test_no_part_does_two_things_at_once(passage: Passage, known: Lengths) -> None:
    if left_unsaid(passage):
        with pytest.raises(ValueError, match="needs"):
            part_spans(passage, known)
        return
    spans = part_spans(passage, known)
    for a, b in combinations(spans, 2):
        if a.part == b.part:
            assert a.end <= b.start or b.end <= a.start
    assert all(0 <= span.start < span.end for span in spans)
    assert passage_counts(passage, known) == max(span.end for span in spans)
    assert {span.what for span in spans} <= set(passage.what)
    assert max(span.part for span in spans) <= max(parts_in(passage), len(passage.what))


@given(passages, st.sampled_from(("unison", "canon", "canon in turn")), counts, lengths)
def test_in_a_canon_all_parts_dance_the_same_in_order(
    drawn: Passage, fit: str, after: Fraction, known: Lengths
) -> None:
    passage = replace(drawn, fit=fit, parts=3, after=after)
    spans = part_spans(passage, known)
    for part in range(1, parts_in(passage) + 1):
        own = [span for span in spans if span.part == part]
        assert [s.what for s in own] == list(passage.what) * passage.times
        assert all(a.end == b.start for a, b in pairwise(own))


def test_worked_canon_together() -> None:
    """All start at once at different places of the phrase: its entries are its rotations."""
    known = {name: Fraction(n) for n, name in enumerate(("one", "two", "three"), start=1)}
    spans = part_spans(Passage(("one", "two", "three"), "canon together", parts=3), known)
    danced = [[s.what for s in spans if s.part == part] for part in (1, 2, 3)]
    assert danced == [["one", "two", "three"], ["two", "three", "one"], ["three", "one", "two"]]
    assert {max(s.end for s in spans if s.part == part) for part in (1, 2, 3)} == {Fraction(6)}


def test_worked_canon_to_one_ending() -> None:
    """Each joins in later and all finish together."""
    passage = one("canon to one ending", parts=3, after=Fraction(3))
    assert part_spans(passage, {"one": Fraction(8)}) == tuple(
        PartSpan(part, "one", Fraction(start), Fraction(8))
        for part, start in ((1, 0), (2, 3), (3, 6))
    )


def test_files_may_name_just_these_kinds() -> None:
    written = schema("unit")["$defs"]["passage"]["properties"]["as"]["enum"]
    assert sorted(written) == sorted(FITS)
