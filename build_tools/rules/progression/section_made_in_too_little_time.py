"""A new section gets at least 8 minutes of finding, making, developing and joining.

Pupils need time to try, choose and practise. In less they copy the first idea, and the section
falls apart when it is joined to others. All its lessons count together, and so does the time for
the motifs in it. To recall is not yet to make.

Bad:
    no other step works on B
    lesson 2: makes: [B], minutes: 5
Good:
    lesson 2: develops: [gust-slow], minutes: 6
    a later step: makes: [B], minutes: 7
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import (
    StepPlace,
    held,
    made_by_dancing,
    progress,
    steps_in_order,
)
from build_tools.views.words.plain_words import minutes_in_words

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")

_LEAST = 8


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section with too few minutes; one never made has its own rule."""
    dance, found, steps = unit.dance, progress(unit), steps_in_order(unit)
    for letter, section in dance.sections.items():
        if not found[letter].made:
            continue
        first = found[letter].made[0]
        inside = held(dance, (letter,))
        dancing = made_by_dancing(dance, section)
        worked = [
            (place, step)
            for place, _, step in steps
            if not inside.isdisjoint((*step.makes, *step.develops, *step.joins))
            or (dancing and letter in step.dances and step.phase != "recall")
            or _explores_for(place, step, first)
        ]
        minutes = sum(step.minutes for _, step in worked)
        if minutes >= _LEAST:
            continue
        adds = "; ".join(f"{place}: {step.minutes}" for place, step in worked)
        yield Finding(
            unit.file,
            ("sections", letter),
            f"section {letter} has {minutes_in_words(minutes)} of finding, making, developing and "
            f"joining in all ({adds}), and under {_LEAST} is little",
            f"give section {letter} {minutes_in_words(_LEAST - minutes)} more in lesson "
            f"{first.lesson}, or let it be a part of the section next to it",
        )


def _explores_for(place: StepPlace, step: Step, first: StepPlace) -> bool:
    """Whether pupils explore in the section's own lesson before they make it."""
    return step.phase == "explore" and place.lesson == first.lesson and place < first
