"""A harder task changes the dance; it does not only take help away, forbid something or help.

Without the cards, without counting, with eyes shut: the dance stays as it was, and those who have
mastered it wait. "Don't bump" gives them no more, and a hand to hold is for those who find it hard.
A new level, another direction, half the time or a choice of their own gives them
something to dance.

Bad:
    harder: Dance it with no counting aloud.
Good:
    harder: Keep counting aloud, and dance it in half the time.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.help_taken import only_forbids, only_helps, only_takes_help_away

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each `harder` that changes nothing of the dance."""
    for lesson in unit.lessons:
        for index, step in enumerate(lesson.steps):
            said = _no_more(step.harder) if step.harder else None
            if said:
                yield Finding(
                    lesson.file,
                    ("steps", index, "harder"),
                    f"`harder` in step {index + 1} only {said}",
                    "change the dance as well: a level, a direction, its speed, a choice",
                )


def _no_more(text: str) -> str | None:
    """What a text does that gives nobody more to dance."""
    if taken := only_takes_help_away(text):
        return f'takes help away ("{taken.text}")'
    if given := only_helps(text):
        return f'helps ("{given.text}")'
    return f'forbids something ("{text}")' if only_forbids(text) else None
