"""Words that the author gives already: the beat of the same step has them no more."""

from __future__ import annotations

import re

from build_tools.model.lesson import Step
from build_tools.views.words.marked_words import with_those
from build_tools.views.words.words_of_text import words_of_text

_QUOTED = re.compile(r"“(?P<said>[^“”]+)”")
_LEAST = 3
"""Words one after another that the author gives too: fewer may stand anywhere."""


def without_words_given(told: str, step: Step) -> str:
    """A beat without the words that the author has in the step: a row of them all or not at all."""
    given = words_of_text(" ".join(filter(None, (step.say, step.task, step.you))))
    return with_those(told, lambda said: not _is_given(said, given))


def _is_given(said: str, given: list[str]) -> bool:
    rows = [words_of_text(found["said"]) for found in _QUOTED.finditer(said)]
    return bool(rows) and all(words and _has_all(given, words) for words in rows)


def _has_all(given: list[str], said: list[str]) -> bool:
    """Whether `given` has the words of `said` in order, in runs that are long enough."""
    at = 0
    while said:
        runs = (_alike(given[n:], said) for n in range(at, len(given)))
        places = [(n, run) for n, run in enumerate(runs, start=at) if run >= min(_LEAST, len(said))]
        if not places:
            return False
        start, run = max(places, key=lambda place: place[1])
        at, said = start + run, said[run:]
    return True


def _alike(one: list[str], other: list[str]) -> int:
    """How many words both begin with."""
    for n, (a, b) in enumerate(zip(one, other, strict=False)):
        if a != b:
            return n
    return min(len(one), len(other))
