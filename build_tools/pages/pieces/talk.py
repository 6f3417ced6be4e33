"""Looking and talking, as the lesson's page and its card show it."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson, LookAndTalk
from build_tools.model.unit import Unit
from build_tools.pages.pieces.questions import QuestionView, question_view
from build_tools.views.words.punctuation import sentence

_LOOKERS = {
    "yourself": "Each pupil looks back at their own dance",
    "partner": "Partners look at each other",
    "another pair": "Pairs look at another pair",
    "another group": "Groups look at another group",
    "half the class": "Half the class looks at the other half",
    "whole class": "The whole class looks",
}


@dataclass(frozen=True, slots=True)
class TalkView:
    """Looking and talking."""

    who: str
    """Who looks at whom."""
    at: str
    """What of the dance they look at, such as the whole dance."""
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
    last = lesson is unit.lessons[-1]
    following = unit.lessons[unit.lessons.index(lesson) + 1].number if not last else 0
    return TalkView(
        who=_LOOKERS[talk.who],
        at=talk.at,
        looking_for=sentence(talk.looking_for),
        questions=tuple(question_view(q) for q in talk.questions),
        next_heading="Where the class goes from here"
        if last
        else f"Where lesson {following} starts",
        seen=sentence(talk.next.seen) if talk.next else None,
        not_yet=sentence(talk.next.not_yet) if talk.next else None,
    )
