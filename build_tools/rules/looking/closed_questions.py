"""Every lesson asks at least one question that yes or no cannot answer.

To "did it work?" a class says yes, and the teacher has learnt nothing. To "what did you see?" it
has to look. A question whose own answers are yes and no is closed wherever it stands, and so is
one that offers two things and takes one of them as the answer: is it sharp or slow?

Bad:
    question: Were the freezes still?
    answers: ["yes", "no"]
Good:
    question: What was quite still, and what moved?
    answers: [the feet, the last dancer]
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.asking import is_closed
from build_tools.views.written.questions import AskedQuestion, asked

GRADE: Grade = "question"
READS = "en"
SOURCE = "Lerman and Borstel, 2003: questions that can be answered freely, with no opinion built in"


_EITHER = re.compile(
    r"(?:is|are|was|were|do|does|did|has|have|can|should)\b[^?]*\bor\b", re.IGNORECASE
)
_YES_OR_NO = frozenset({"yes", "no", "maybe", "yes and no"})


def _answered_by_yes(one: AskedQuestion) -> bool:
    """Whether an answer is yes or no, and the question asks for no more than that."""
    answers = {answer.casefold().strip(" .!") for answer in one.question.answers}
    return not answers.isdisjoint(_YES_OR_NO) and is_closed(one.text)


_WORD = re.compile(r"[a-z]+(?:['’-][a-z]+)*")


def _one_is_right(one: AskedQuestion) -> bool:
    """Whether a question offers two things, and the only answer is one of them: sharp or slow."""
    if len(one.question.answers) != 1 or not _EITHER.match(one.text):
        return False
    answer = set(_WORD.findall(one.question.answers[0].casefold()))
    return bool(answer) and answer <= set(_WORD.findall(one.text.casefold()))


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson all of whose questions can be answered with yes or no."""
    for lesson in unit.lessons:
        questions = list(asked(lesson))
        plain = [one for one in questions if _answered_by_yes(one) or _one_is_right(one)]
        for one in plain:
            yield Finding(
                lesson.file,
                one.path,
                f'the question "{one.text}" is answered by `{", ".join(one.question.answers)}`',
                "start it with what, which or how, and write answers that name what was seen",
            )
        if plain or not questions or not all(is_closed(one.text) for one in questions):
            continue
        number = len(questions)
        yield Finding(
            lesson.file,
            questions[-1].path,
            f"lesson {lesson.number} asks {number} "
            + (
                "question, and yes or no answers it"
                if number == 1
                else "questions, and yes or no answers every one"
            ),
            "start one with what, which or how, such as: what did you see the group do?",
        )
