"""A showing fits into its step: every run, the change over between runs and the talk.

Eight groups one by one, with a change over each time, take many minutes in which most pupils
watch. Halves, or two groups at once, show the same in two runs. It is worked out for a class of
30 and the longest that what is shown can last, with 15 seconds for each change over and a minute
of talk; half a minute more is let pass.

Bad:
    minutes: 4, grouping: fours, task: Show one group at a time. Eight runs of 25 seconds
Good:
    minutes: 4, grouping: half class, task: Half dance while half watch. Swap
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.lesson.showing import CHANGE_OVER_SECONDS, Showing, showing
from build_tools.views.words.plain_words import length_in_words, minutes_in_words

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "tempo-missing")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step whose minutes are fewer than its showing takes."""
    for lesson in unit.lessons:
        for index, step in enumerate(lesson.steps):
            found = showing(unit, lesson, index)
            if found is None or found.needs <= step.minutes:
                continue
            halves = found.in_halves()
            quicker = halves.runs < found.runs and halves.needs <= step.minutes
            other = "let half the groups dance at once" if quicker else "show a part only"
            yield Finding(
                lesson.file,
                ("steps", index, "minutes"),
                f"step {index + 1} has {minutes_in_words(step.minutes)}, but its showing takes "
                f"about {_sum_in_words(found)}",
                f"give it {minutes_in_words(found.needs)}, or {other}",
            )


def _sum_in_words(found: Showing) -> str:
    run = length_in_words(found.run)
    runs = f"{found.runs} runs" if found.runs > 1 else "1 run"
    who = f" ({found.groups} groups in a class of {USUAL_CLASS})" if found.groups > 2 else ""
    talk = f", and {length_in_words(found.talk)} of talk" if found.talk else ""
    change = f"{CHANGE_OVER_SECONDS} seconds to change over"
    change += " after each" if found.runs > 1 else ""
    whole = length_in_words(found.seconds)
    return f"{whole}: {runs} of {run}{who}, {change}{talk}"
