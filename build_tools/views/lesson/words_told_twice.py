"""The words of a join that the author gives already: the beat of the same step has them no more."""

from __future__ import annotations

import re

from build_tools.model.lesson import Step
from build_tools.views.words.words_of_text import words_of_text

_BESIDE = re.compile(r"(?P<before> \((?:[^()“”]+, )?)“(?P<said>[^“”]+)”\)")
"""What is said in a join, last in the brackets that tell what is sounded there."""
_LEAST = 3
"""Words one after another that the author gives too: fewer may stand anywhere."""


def without_words_given(told: str, step: Step) -> str:
    """A beat without the words of its joins, where the author has each of them in the step."""
    given = words_of_text(" ".join(filter(None, (step.you, step.say))))

    def shorter(found: re.Match[str]) -> str:
        if not _has_all(given, words_of_text(found["said"])):
            return found[0]
        before = found["before"].removesuffix(", ")
        return f"{before})" if before.strip() != "(" else ""

    return _BESIDE.sub(shorter, told)


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
