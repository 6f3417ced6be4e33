"""A trade word in a question is one that pupils have been taught.

Asked "was your retrograde clear?", pupils who never heard the word talk about nothing. A word is
taught where a step `teaches` it, where the words of the lesson or unit explain it, or where it was
said before the question; or the question itself says what it means.

Bad:
    question: Where did you see a counterpoint?
Good:
    question: Where did you see two dances at once?
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.trade_words import (
    QUESTION_WORDS,
    covered,
    explained_beside,
    in_sight,
    trade_words_in,
)
from build_tools.views.written.questions import asked
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each trade word at the first question that uses it untaught."""
    waiting = in_sight(QUESTION_WORDS, unit_text(unit).words)
    if not waiting:
        return
    everywhere = (*unit.words, unit.builds_on.in_words)
    waiting = tuple(word for word in waiting if not covered(word, everywhere))
    for lesson in unit.lessons:
        if not waiting:
            return
        for one in asked(lesson):
            for word in trade_words_in(one.question.question, waiting):
                if explained_beside(one.question.question, word):
                    continue
                if covered(word, _met(unit, lesson, one.step)):
                    continue
                waiting = tuple(w for w in waiting if w != word)
                yield Finding(
                    lesson.file,
                    one.path,
                    f"the question uses `{word}`, a word that pupils have not met by lesson "
                    f"{lesson.number}",
                    f"say it in plain words, or explain `{word}` in `words` and write "
                    f"`teaches: [{word}]` where it is taught",
                )


def _met(unit: Unit, lesson: Lesson, step: int | None) -> Iterator[str]:
    """What pupils have heard and been taught before the question in `step`; None is the end."""
    yield from lesson.words
    for earlier in unit.lessons:
        here = earlier is lesson
        for done in earlier.steps[: step + 1 if here and step is not None else None]:
            yield from done.teaches
            yield from (done.say or "", done.task)
        if here:
            return
        yield from earlier.words
