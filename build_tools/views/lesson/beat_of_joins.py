"""What is sounded where a step dances several parts, rests between them or walks the joins."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.movement.development import actions_of
from build_tools.movement.whole import transition_between, transition_counts
from build_tools.views.dance.order_danced import WHOLE
from build_tools.views.lesson.beat_of_parts import (
    Stretch,
    danced_in_order,
    joins_alone,
    parts_in_a_run,
)
from build_tools.views.lesson.beat_of_step import made_in_step
from build_tools.views.lesson.joins_walked import JOINS_WALKED, Pair, joins_walked
from build_tools.views.words.plain_words import name_in_words
from build_tools.views.words.punctuation import capital
from build_tools.views.words.sections_called import in_short

_RESTS = re.compile(r"(?:^|[.;] )Rest\b", re.IGNORECASE)
_DANCES = re.compile(r"\b(?:dance|play)\b", re.IGNORECASE)
_FEWEST_LETTERS = 4
"""A shorter word of a part's name may be any word: in, go, and."""


def run_of(dance: Dance, step: Step) -> tuple[Stretch, ...]:
    """The parts and joins that a step goes through, each with its sound or sign; none of one part.

    Where pupils rest between two parts, there is no join to sound.
    """
    letters = danced_in_order(dance, step)
    if letters:
        apart = () if WHOLE in (*step.dances, *step.shows) else _apart(dance, step, letters)
        return parts_in_a_run(dance, letters, apart)
    return _joins_by_themselves(dance, step)


def run_sounds(dance: Dance, step: Step) -> set[str]:
    """What is sounded in a run, as later steps know it from there; no joins that are only walked:
    a later run of the whole dance without its joins looks as if it had none.
    """
    walked = bool(joins_walked(dance, step))
    return {one.told for one in run_of(dance, step) if not (walked and one.is_join)}


def practises_joins(dance: Dance, step: Step) -> bool:
    """Whether the joins are what a step is for, so that what is sounded in them is told there."""
    return bool(step.joins or joins_walked(dance, step))


def _apart(dance: Dance, step: Step, letters: tuple[str, ...]) -> tuple[Pair, ...]:
    """Neighbours between which the class rests, by the words of the task: tide. Rest. Crabs."""
    task = step.task.casefold()
    at = {letter: _named_at(dance, letter, task) for letter in letters}
    rests = [found.start() for found in _RESTS.finditer(step.task)]
    return tuple(
        (one, other)
        for one, other in pairwise(letters)
        if (first := at[one]) is not None
        and (then := at[other]) is not None
        and any(first < rest < then for rest in rests)
    )


def _named_at(dance: Dance, letter: str, task: str) -> int | None:
    """Where a task first names a part, by a word of its name."""
    words = re.findall(r"\w+", (dance.sections[letter].name or "").casefold())
    places = [
        found.start()
        for word in words
        if len(word) >= _FEWEST_LETTERS and (found := re.search(rf"\b{re.escape(word)}\b", task))
    ]
    return min(places, default=None)


def _joins_by_themselves(dance: Dance, step: Step) -> tuple[Stretch, ...]:
    """What a step dances, and the joins that it walks, where its counts are those of both.

    None where pupils chose the order: which joins there are is then theirs.
    """
    walked, names = joins_walked(dance, step), (*step.makes, *step.dances)
    if not walked or len(names) != 1 or dance.order_choice is not None:
        return ()
    between = [join for pair in walked if (join := transition_between(dance, *pair))]
    counts = _counts_of(dance, names[0])
    if step.counts != counts + sum(map(transition_counts, between), Fraction(0)):
        return ()
    made, joins = made_in_step(dance, replace(step, counts=counts)), joins_alone(dance, walked)
    if not made or len(joins) != len(between):
        return ()
    known = in_short(dance, names[0]) if names[0] in dance.sections else name_in_words(names[0])
    part = Stretch(capital(known), made)
    told = f"{step.does}. {step.task}"
    walks, dances = JOINS_WALKED.search(told), _DANCES.search(told)
    first = bool(walks and dances and walks.start() < dances.start())
    return (*joins, part) if first else (part, *joins)


def _counts_of(dance: Dance, name: str) -> Fraction:
    if name in dance.sections:
        return dance.sections[name].counts or Fraction(0)
    return sum((one.counts for one in actions_of(dance, name)), Fraction(0))
