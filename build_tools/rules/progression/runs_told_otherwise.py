"""The story so far tells of no more runs of the whole dance than there have been.

A teacher who takes the class over reads there what pupils can do. Where it says that the whole has
been run twice, and the first run is in this very lesson, the lesson starts too far on.

Bad:
    lesson 2: story_so_far: The whole has been run nine times.
Good:
    lesson 2: story_so_far: The class has made part A.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.runs_told import runs_told
from build_tools.views.dance.whole_runs import whole_runs
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each story so far with more runs than the lessons before it have."""
    for lesson in unit.lessons:
        told = runs_told(lesson.story_so_far or "")
        if told is None:
            continue
        number, said = told
        before = sum(run.times for run in whole_runs(unit) if run.place.lesson < lesson.number)
        if number > before:
            yield Finding(
                lesson.file,
                ("story_so_far",),
                f'`story_so_far` says "{said.text}", which is {how_many(number, "run")}, but the '
                f"lessons before have {how_many(before, 'run')} of the whole",
                "tell what there is before this lesson, or run the whole in an earlier one",
            )
