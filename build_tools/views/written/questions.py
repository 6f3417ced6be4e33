"""The questions of a lesson, and what kind of answer each asks for."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from build_tools.model.lesson import Lesson, Question
from build_tools.problem import FieldPath
from build_tools.sentences.word_lists import word_list

_WORD = re.compile(r"[a-z']+")
_CLAUSE = re.compile(r"[,;:.!?]")

YES_OR_NO_STARTS = word_list(
    "is are was were am did do does can could has have had will would shall should may might "
    "isn't aren't wasn't weren't didn't don't doesn't can't couldn't hasn't haven't won't"
)
"""Words that start a question to which yes and no are answers."""
OPEN_WORDS = word_list(
    "what which who whose where why how describe tell explain show choose point name say"
)
"""Words that ask for more than yes or no, wherever in the question they stand."""
_JUDGES = re.compile(
    r"\b(?:best|better|worst|worse|favourites?|(?:was|were|is|are|how|so) (?:good|bad)"
    r"|good (?:about|at)|(?:did|do) you (?:like|enjoy|prefer)|liked? most|you liked|you enjoyed"
    r"|improved?|wrong|mistakes?|perfect|nicest|most beautiful|two stars|marks out of)\b"
)
_DESCRIBES = re.compile(
    r"\b(?:see|saw|seen|notice|noticed|hear|heard|spot|spotted|watch|watched)\b"
)
_WHERE_TO_NEXT = word_list(
    "next would could should clearer better improve change try keep mend help stronger "
    "sharper smoother practise"
)
_LOOKS_BACK = re.compile(
    r"\b(?:last (?:time|week|lesson)|lesson (?:\d+|one|two|three|four|five)|earlier|since|before"
    r"|used to|at the start|than when|so far|weeks? ago)\b"
)


@dataclass(frozen=True, slots=True)
class AskedQuestion:
    """One question with its place in the lesson's file.

    `step` is the index of the step in which it is asked, from 0; None in `look_and_talk`.
    """

    path: FieldPath
    step: int | None
    question: Question

    @property
    def text(self) -> str:
        """The question in small letters."""
        return self.question.question.lower()


def asked(lesson: Lesson) -> Iterator[AskedQuestion]:
    """Every question of the lesson: those of its steps in order, then those of its talk."""
    for n, step in enumerate(lesson.steps):
        for k, question in enumerate(step.ask):
            yield AskedQuestion(("steps", n, "ask", k, "question"), n, question)
    if lesson.look_and_talk:
        for k, question in enumerate(lesson.look_and_talk.questions):
            yield AskedQuestion(("look_and_talk", "questions", k, "question"), None, question)


def is_closed(question: str) -> bool:
    """Whether yes or no would answer it: "Did it work?", not "Did it work, and why?"."""
    text = question.lower()
    if OPEN_WORDS.intersection(_WORD.findall(text)):
        return False
    clauses = (_WORD.match(clause.strip()) for clause in _CLAUSE.split(text))
    return any(first and first.group() in YES_OR_NO_STARTS for first in clauses)


def judges(question: Question) -> bool:
    """Whether it asks what was good or bad, and not what was seen.

    One that compares with an earlier lesson does not judge: it asks what has changed.
    """
    text = question.question.lower()
    if question.looks_back_to is not None or not _JUDGES.search(text):
        return False
    return not _DESCRIBES.search(text) and not _LOOKS_BACK.search(text)


def looks_back(question: Question) -> bool:
    """Whether it compares with earlier work, by its field or in its words."""
    return question.looks_back_to is not None or bool(_LOOKS_BACK.search(question.question.lower()))


def asks_where_to_next(question: Question) -> bool:
    """Whether it asks what to keep, to change or to make clearer from here."""
    return not _WHERE_TO_NEXT.isdisjoint(_WORD.findall(question.question.lower()))
