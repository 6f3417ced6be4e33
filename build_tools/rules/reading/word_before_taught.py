"""A word of the dance trade is said only when it has been taught.

"Now in canon", in lesson 1, and canon is taught in lesson 3: pupils do something else, or wait. A
word that the line itself explains, or that it only announces for a later lesson, is let be.

Bad:
    lesson 1: say: Now dance it in canon.
    lesson 3: teaches: [canon]
Good:
    lesson 1: say: Go one after another, four counts apart.
    lesson 3: teaches: [canon]
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.explained import LATER, explains, in_another_sense
from build_tools.sentences.trade_words import HARD_WORDS, covered, in_sight, trade_words_in
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_FIELDS = ("into", "say", "task", "you")
NEEDS = ("lesson-numbers-broken",)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each trade word at the first step that uses it before its lesson."""
    words = in_sight(HARD_WORDS, unit_text(unit).words)
    words = tuple(word for word in words if not covered(word, unit.words))
    taught = {word: n for word in words if (n := _taught_in(unit.lessons, word)) is not None}
    for index, lesson in enumerate(unit.lessons):
        for n, step in enumerate(lesson.steps):
            for field in _FIELDS:
                text = getattr(step, field)
                early = [word for word, first in taught.items() if first > index]
                for word in trade_words_in(text or "", early):
                    if in_another_sense(text or "", word) or LATER.mentioned(text):
                        continue
                    first = taught.pop(word)
                    if explains(text or "", word):
                        continue
                    yield Finding(
                        lesson.file,
                        ("steps", n, field),
                        f"step {n + 1} of lesson {lesson.number} uses `{word}`, which pupils learn "
                        f"in lesson {unit.lessons[first].number}",
                        f"say it in plain words, or teach `{word}` in lesson {lesson.number}",
                    )


def _taught_in(lessons: Iterable[Lesson], word: str) -> int | None:
    """The first lesson, from 0, that teaches or explains the word."""
    for index, lesson in enumerate(lessons):
        if covered(word, (*lesson.words, *(t for step in lesson.steps for t in step.teaches))):
            return index
    return None
