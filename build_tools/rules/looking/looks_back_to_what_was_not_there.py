"""A question that looks back goes to a lesson in which pupils danced the same thing.

"What is clearer than in lesson 1?" cannot be answered about something that lesson 1 did not have.
What is asked about is what the step dances, or in looking and talking what the lesson has.

Bad:
    lesson 2: makes: [gust]
    lesson 3: dances: [gust], ask: [{question: "What is clearer?", looks_back_to: 1, …}]
Good:
    lesson 2: makes: [gust]
    lesson 3: dances: [gust], ask: [{question: "What is clearer?", looks_back_to: 2, …}]
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from build_tools.model.lesson import Lesson, Question, Step
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import held, names_in
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = (
    "Department for Education, National curriculum in England: physical education, 2013: compare "
    "their performances with previous ones"
)
NEEDS = ("unknown-name", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each look back at a lesson that has none of what is asked about."""
    by_number = {lesson.number: lesson for lesson in unit.lessons}
    for lesson in unit.lessons:
        for path, question, steps in _asked(lesson):
            back = by_number.get(question.looks_back_to or 0)
            now = _names(steps)
            if back is None or not now:
                continue
            then = held(unit.dance, _names(back.steps))
            if not then.isdisjoint(held(unit.dance, now)):
                continue
            said = listed([f"section {n}" if len(n) == 1 else f"`{n}`" for n in now])
            yield Finding(
                lesson.file,
                (*path, "looks_back_to"),
                f"the question is about {said}, and looks back to lesson {back.number}, which has "
                "none of it",
                "write the number of the lesson in which pupils danced it before",
            )


def _asked(lesson: Lesson) -> Iterator[tuple[FieldPath, Question, tuple[Step, ...]]]:
    """Each question, with the steps that have what it asks about."""
    for n, step in enumerate(lesson.steps):
        for m, question in enumerate(step.ask):
            yield ("steps", n, "ask", m), question, (step,)
    if lesson.look_and_talk:
        for m, question in enumerate(lesson.look_and_talk.questions):
            yield ("look_and_talk", "questions", m), question, lesson.steps


def _names(steps: Iterable[Step]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(name for step in steps for name in names_in(step)))
