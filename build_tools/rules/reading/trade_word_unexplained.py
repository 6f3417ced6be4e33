"""A word of the dance trade in a step is explained in the words of the lesson or the unit.

A teacher new to dance meets "canon" in the middle of a task, with thirty pupils waiting. One plain
line in `words` is printed where it is needed. A word that some step `teaches` is explained too, and
so is one that the line itself explains.

Bad:
    task: Now add a glissade to it.
Good:
    task: Now add a slide to the side.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.explained import explains, in_another_sense
from build_tools.sentences.trade_words import (
    HARD_WORDS,
    TECHNIQUE_WORDS,
    covered,
    in_sight,
    trade_words_in,
)
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_FIELDS = ("into", "say", "task", "you")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each trade word at the first step that uses it unexplained."""
    waiting = in_sight(HARD_WORDS | TECHNIQUE_WORDS, unit_text(unit).words)
    if not waiting:
        return
    explained = [
        *unit.words,
        *(word for lesson in unit.lessons for word in lesson.words),
        *(word for lesson in unit.lessons for step in lesson.steps for word in step.teaches),
    ]
    waiting = tuple(word for word in waiting if not covered(word, explained))
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            for field in _FIELDS:
                text = getattr(step, field)
                for word in trade_words_in(text or "", waiting):
                    waiting = tuple(w for w in waiting if w != word)
                    if explains(text or "", word) or in_another_sense(text or "", word):
                        continue
                    yield Finding(
                        lesson.file,
                        ("steps", n, field),
                        f"step {n + 1} of lesson {lesson.number} uses `{word}`, which the unit "
                        "explains nowhere",
                        f"explain `{word}` in `words`, or say it in plain words",
                    )
