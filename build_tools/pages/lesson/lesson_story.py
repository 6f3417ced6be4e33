"""Where pupils are coming from: the story so far, and where this lesson starts from last time."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import _, ngettext
from build_tools.pages.pieces.last_time import LastTime, last_time_of
from build_tools.views.dance.journey import Journey, journeys
from build_tools.views.dance.progress import sources
from build_tools.views.lesson.lesson_wording import never_did
from build_tools.views.words.plain_words import listed, name_in_words
from build_tools.views.words.punctuation import capital, sentence


@dataclass(frozen=True, slots=True)
class StoryView:
    """Where pupils are coming from."""

    so_far: str | None
    """What pupils did before."""
    last_time: LastTime | None
    """Where to start, from what was seen last time."""
    never_did: str | None
    """The question whether the lesson before was never taught."""
    never_did_start: str | None
    """Where to start then."""
    journeys: tuple[str, ...]
    """The way through the unit of each motif that today changes, each in one line."""


def story_of(unit: Unit, lesson: Lesson) -> StoryView | None:
    """The story so far, or None where there is nothing to tell, as there is of a first lesson."""
    first = lesson is unit.lessons[0]
    lines = (
        ()
        if first
        else tuple(
            _journey_in_words(journey, lesson.number)
            for journey in journeys(unit)
            if _changed_today(unit, lesson, journey.motif)
        )
    )
    view = StoryView(
        so_far=lesson.story_so_far,
        last_time=last_time_of(unit, lesson),
        never_did=never_did(unit, lesson) if lesson.never_did_last else None,
        never_did_start=sentence(lesson.never_did_last) if lesson.never_did_last else None,
        journeys=lines,
    )
    told = view.so_far or view.last_time or view.never_did or view.journeys
    return view if told else None


def _changed_today(unit: Unit, lesson: Lesson, motif: str) -> bool:
    return any(
        motif in sources(unit.dance, name) for step in lesson.steps for name in step.develops
    )


def _journey_in_words(journey: Journey, today: int) -> str:
    """Wave was made in lesson 1 and is changed today. It is danced again in lessons 4 and 5."""
    name = capital(name_in_words(journey.motif))
    made = next((stop.lesson for stop in journey.stops if "made" in stop.deeds), today)
    later = [stop.lesson for stop in journey.stops if stop.lesson > today]
    opening = (
        _("{move} is made and changed today.", move=name)
        if made == today
        else _("{move} was made in lesson {lesson} and is changed today.", move=name, lesson=made)
    )
    if not later:
        return opening
    again = ngettext(
        "It comes again in lesson {lessons}.",
        "It comes again in lessons {lessons}.",
        len(later),
        lessons=listed([str(n) for n in later]),
    )
    return f"{opening} {again}"
