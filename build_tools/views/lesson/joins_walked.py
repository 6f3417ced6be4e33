"""Which joins of the dance a step walks again, and how they go sitting and on wheels."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.page_words.words import _
from build_tools.views.lesson.as_in_steps import ways_of_other_steps
from build_tools.views.lesson.notes_read import Explained
from build_tools.views.words.sections_called import in_short

JOINS_WALKED = re.compile(
    r"\b(?:walk|practise) (?:(?:each|every) join|(?:all|both|the|our)(?: \w+){0,2} joins)\b",
    re.IGNORECASE,
)
"""Words of a step in which the class goes over all joins of the dance; the weakest join is one."""
Pair = tuple[str, str]
"""The letters of two parts, one danced after the other."""


def joins_walked(dance: Dance, step: Step) -> tuple[Pair, ...]:
    """The joins that a step goes over by themselves, in the order of the dance."""
    if step.joins:
        return ()
    walked = JOINS_WALKED.search(f"{step.does}. {step.task}")
    return tuple(dict.fromkeys(pairwise(dance.form))) if walked else ()


def ways_of_joins(
    dance: Dance,
    walked: Sequence[Pair],
    before: Iterable[tuple[Lesson, Sequence[Sequence[Explained]]]],
) -> tuple[Explained, ...]:
    """How the joins go sitting and on wheels, by the lessons that practised them, the last first.

    `before` has each lesson with the ways that its notes give to each of its steps.
    """
    found: dict[Pair, list[Explained]] = {}
    for lesson, of_steps in before:
        for step, ways in zip(lesson.steps, of_steps, strict=True):
            joined = [one for one in dict.fromkeys(pairwise(step.joins)) if one in walked]
            if not joined or not ways or ways_of_other_steps(ways):
                continue
            if not any(one in found for one in joined):
                found[joined[0]] = list(_called(dance, joined, ways))
    return tuple(way for pair in walked for way in found.get(pair, ()))


def _called(dance: Dance, joined: Sequence[Pair], ways: Sequence[Explained]) -> Iterator[Explained]:
    """The ways by the join that they are of: what its step was called says nothing here."""
    if len(joined) > 1 or len(ways) > 1:
        yield from (replace(way, text="") for way in ways)
        return
    before, after = (in_short(dance, letter) for letter in joined[0])
    word = _("{before} to {after}", before=before, after=after)
    yield replace(ways[0], word=word, text="")
