"""Looking and talking, as the lesson's page and its card show it."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson, LookAndTalk
from build_tools.model.unit import Unit
from build_tools.pages.pieces.questions import QuestionView, question_view
from build_tools.views.lesson.lesson_wording import what_comes_after
from build_tools.views.lesson.looking_said import looking_said
from build_tools.views.words.punctuation import sentence


@dataclass(frozen=True, slots=True)
class TalkView:
    """Looking and talking."""

    looking: str
    """Who looks at whom and at what, or whom they watched and talk about now."""
    looking_for: str
    """The one thing looked for."""
    questions: tuple[QuestionView, ...]
    """Questions to ask."""
    next_heading: str
    """What comes after: where the next lesson starts, or where the class goes from here."""
    seen: str | None
    """Where to start if it was seen."""
    not_yet: str | None
    """Where to start if it was not seen yet."""


def talk_view(unit: Unit, lesson: Lesson, talk: LookAndTalk) -> TalkView:
    """Looking and talking, and where the class goes from there."""
    return TalkView(
        looking=looking_said(lesson, talk),
        looking_for=sentence(talk.looking_for),
        questions=tuple(question_view(q, lesson) for q in talk.questions),
        next_heading=what_comes_after(unit, lesson),
        seen=sentence(talk.next.seen) if talk.next else None,
        not_yet=sentence(talk.next.not_yet) if talk.next else None,
    )
