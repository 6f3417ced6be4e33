"""Where pupils are coming from: the story so far, and where this lesson starts from last time."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import _, ngettext
from build_tools.pages.pieces.last_time import LastTime, last_time_of
from build_tools.views.dance.journey import Journey, journeys, piece_danced_alone
from build_tools.views.dance.when_made import sources
from build_tools.views.lesson.lesson_wording import never_did
from build_tools.views.words.plain_words import listed, name_in_words
from build_tools.views.words.punctuation import quoted, sentence


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
            _journey_in_words(unit, journey, lesson.number)
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


def _journey_in_words(unit: Unit, journey: Journey, today: int) -> str:
    """The phrase “wave” was made in lesson 1 and is changed today. It comes again in lesson 4."""
    made = next((stop.lesson for stop in journey.stops if "made" in stop.deeds), today)
    later = [stop.lesson for stop in journey.stops if stop.lesson > today]
    opening = _today(unit, journey.motif, made, today)
    if not later:
        return opening
    again = ngettext(
        "It comes again in lesson {lessons}.",
        "It comes again in lessons {lessons}.",
        len(later),
        lessons=listed([str(n) for n in later]),
    )
    return f"{opening} {again}"


def _today(unit: Unit, motif: str, made: int, today: int) -> str:
    """What today makes of a motif that lesson `made` made: changed, or a piece of it alone."""
    name = quoted(name_in_words(motif))
    piece = piece_danced_alone(unit, motif, today)
    moves = listed(piece)
    if piece and made == today:
        return ngettext(
            "The phrase {move} is made today, and its {moves} is also danced without the rest.",
            "The phrase {move} is made today, and its {moves} are also danced without the rest.",
            len(piece),
            move=name,
            moves=moves,
        )
    if piece:
        return ngettext(
            "The phrase {move} was made in lesson {lesson}; today its {moves} is danced alone as "
            "well.",
            "The phrase {move} was made in lesson {lesson}; today its {moves} are danced alone as "
            "well.",
            len(piece),
            move=name,
            lesson=made,
            moves=moves,
        )
    if made == today:
        return _("The phrase {move} is made and changed today.", move=name)
    return _(
        "The phrase {move} was made in lesson {lesson} and is changed today.",
        move=name,
        lesson=made,
    )
