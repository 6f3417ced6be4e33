"""The words of `into` lead pupils into the grouping of their step.

A step is in fours and its words say "find a partner": half the class stands in twos and waits, and
the teacher has to start again. Words about one over, "one over makes a three", are left out of it.

Bad:
    grouping: fours, into: Turn to the nearest person.
Good:
    grouping: fours, into: Two pairs make a four.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.grouping_sizes import other_groupings
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"

_GROUPS = ("pairs", "threes", "fours", "fives", "sixes")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each `into` that leads to other groupings and not to its step's."""
    for lesson in unit.lessons:
        for index, step in enumerate(lesson.steps):
            if step.into is None or step.grouping not in _GROUPS:
                continue
            led = other_groupings(step.into, step.grouping)
            if not led:
                continue
            yield Finding(
                lesson.file,
                ("steps", index, "into"),
                f"step {index + 1} is danced in {step.grouping}, but its `into` leads to "
                f"{listed(led)}",
                f"write words that lead to {step.grouping}, or change `grouping`",
            )
