"""What a lesson looked for comes back in the next one.

`next` starts the next lesson where this one ended, but if nothing of what was looked for stands in
its focus, in a look_for or in a later task, it is danced once and forgotten: a class gets better
only at what comes back. The last lesson has nothing after it.

Bad:
    looking_for: zebra stripes
    focus: Make the second part
Good:
    looking_for: zebra stripes
    focus: Make the second part, with the zebra stripes of last time
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.telling import telling_words
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Hattie and Timperley, The Power of Feedback, 2007: feedback counts where the next task uses it"
)
NEEDS = ("lesson-numbers-broken",)
_OPENING = 2
"""Warm-up and recall, which `next` may decide; what comes later is the lesson's own."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson that leaves what the one before looked for."""
    for lesson, following in pairwise(unit.lessons):
        talk = lesson.look_and_talk
        if talk is None:
            continue
        looked_for = telling_words((talk.looking_for,))
        if not looked_for or looked_for & telling_words(_own(following)):
            continue
        yield Finding(
            following.file,
            ("focus",),
            f'lesson {lesson.number} looked for "{talk.looking_for}", and of that neither the '
            f"focus, a `look_for` nor a later task of the {how_many(len(following.steps), 'step')} "
            f"of lesson {following.number} says a word",
            "name it in the focus or in a `look_for`, such as: with the same clear starts",
        )


def _own(lesson: Lesson) -> Iterator[str]:
    yield lesson.focus
    if lesson.look_and_talk is not None:
        yield lesson.look_and_talk.looking_for
    for n, step in enumerate(lesson.steps):
        texts = [step.look_for]
        if n >= _OPENING:
            texts += [step.does, step.say, step.task, step.easier, step.harder]
        yield from (text for text in texts if text)
