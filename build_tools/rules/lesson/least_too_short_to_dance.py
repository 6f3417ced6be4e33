"""The fewest minutes of a step hold the runs of the whole that it asks for.

A class that is short of time goes by `least`. Three minutes for a dance of a minute and three
quarters, twice and with a rest, cannot be kept: the second run is lost, and with it what was
mended.

Bad:
    dances: [whole], task: Dance it all five times., minutes: 15, least: 1
Good:
    dances: [whole], task: Dance it all., minutes: 15, least: 15
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.whole import seconds_in_order
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.numbers import number_of
from build_tools.views.words.plain_words import length_in_words, minutes_in_words

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")
_WHOLE = (
    r"(?:dance|run|perform) (?:it(?: all)?|the whole(?: dance)?|all of it|the dance|everything|"
    r"from [a-z ]{1,40} to [a-z ]{1,40})"
)
_TIMES = re.compile(
    rf"\b{_WHOLE}(?: through)?,? (?P<often>twice|(?:two|three|four|five|[2-5]) times)",
    re.IGNORECASE,
)
_AGAIN = re.compile(rf"\b{_WHOLE}\b.*\b{_WHOLE} (?:again|once more)", re.IGNORECASE)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that says fewer minutes than its runs of the whole take."""
    length = seconds_in_order(unit.dance)
    if length is None:
        return
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            runs = _runs(step)
            needed = Fraction(runs) * length.least
            if "whole" in step.dances and step.least < step.minutes and step.least * 60 < needed:
                yield Finding(
                    lesson.file,
                    ("steps", n, "least"),
                    f"step {n + 1} has {minutes_in_words(step.least)} at least, but {runs} "
                    f"{'run' if runs == 1 else 'runs'} of the whole take "
                    f"{length_in_words(needed)}",
                    f"write `least: {int(-(-needed // 60))}` or more, or ask for fewer runs",
                )


def _runs(step: Step) -> int:
    """The runs of the whole that the task asks for; one where it does not say."""
    if (said := _TIMES.search(step.task)) is not None:
        return number_of(said.group("often").lower().split()[0]) or 1
    return 2 if _AGAIN.search(step.task) else 1
