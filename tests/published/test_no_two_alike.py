"""No two published units read or move alike: an adviser who pays for twelve gets twelve.

What is fixed for the sake of safety or by law is not counted: `safety`, the words on what to wear,
what is quoted from a curriculum, licences, and sentences that name the school's risk assessment.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from itertools import combinations

import pytest

from build_tools.model.unit import Unit
from build_tools.views.reading.lesson_text import FieldText
from build_tools.views.written.unit_text import fields_of_lesson, fields_of_unit
from tests.support.sound_bank import whole_bank

RUN = 5
"""Words in a run."""
MOST_SHARED = 0.02
"""Of the runs of the shorter unit; common practice, no source: an adviser's own measure."""
MOST_MOVES = 0.5
"""Of the action words of the shorter motif."""
_FIXED = ("safety", "curriculum", "licence", "wear", "items")
_FIXED_SENTENCE = re.compile(
    r"risk assessment|public sector information|has not yet been taught|call \*?freeze|"
    r"You never need to dance|ask (?:the|your) school first about visitors|"
    r"the same moves?[,:]? (?:slower|done|with|bigger|higher)|make it up as you go|"
    r"one dancer moves and then|improvise|if the floor is clean and safe|square metres for each",
    re.IGNORECASE,
)
_PAIRS = tuple(combinations(sorted(unit.slug for unit in whole_bank().units), 2))


def _unit(slug: str) -> Unit:
    return next(unit for unit in whole_bank().units if unit.slug == slug)


def _sentences(unit: Unit) -> Iterator[str]:
    fields: list[FieldText] = [*fields_of_unit(unit)]
    fields += [field for lesson in unit.lessons for field in fields_of_lesson(unit, lesson)]
    for text in fields:
        if not any(part in _FIXED for part in text.path if isinstance(part, str)):
            yield from re.split(r"(?<=[.!?:;])\s+", text.text)


@cache
def runs(slug: str) -> frozenset[tuple[str, ...]]:
    """Every run of five words in one sentence of a unit."""
    found: set[tuple[str, ...]] = set()
    for sentence in _sentences(_unit(slug)):
        if _FIXED_SENTENCE.search(sentence):
            continue
        words = re.findall(r"[a-z']+", sentence.lower())
        found |= {tuple(words[n : n + RUN]) for n in range(len(words) - RUN + 1)}
    return frozenset(found)


@cache
def moves(slug: str) -> dict[str, frozenset[str]]:
    """The action words of each motif, by the motif's name."""
    return {
        name: frozenset((action.word or action.kind).lower() for action in motif.actions)
        for name, motif in _unit(slug).dance.motifs.items()
    }


def test_no_two_units_share_more_than_two_in_a_hundred_runs() -> None:
    for one, other in _PAIRS:
        shared = runs(one) & runs(other)
        least = min(len(runs(one)), len(runs(other)))
        said = sorted(" ".join(run) for run in shared)
        assert least > 400, "a unit without words proves nothing"
        assert len(shared) <= MOST_SHARED * least, (one, other, f"{len(shared)} of {least}", said)


@pytest.mark.parametrize("one", sorted({one for one, _ in _PAIRS}))
def test_no_motif_shares_more_than_half_its_action_words(one: str) -> None:
    for other in (second for first, second in _PAIRS if first == one):
        shares_few_action_words(one, other)


def shares_few_action_words(one: str, other: str) -> None:
    for name, words in moves(one).items():
        for name_there, words_there in moves(other).items():
            shared = words & words_there
            least = min(len(words), len(words_there))
            assert len(shared) <= MOST_MOVES * least, (name, name_there, sorted(shared))
