"""The steps of a lesson as its page shows them."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.pages.frame.frame import Link
from build_tools.pages.pieces.for_scripts import StepData, step_data
from build_tools.pages.pieces.picture import Picture
from build_tools.pages.pieces.questions import QuestionView, question_view
from build_tools.pages.pieces.strip import strip_of
from build_tools.views.diagrams.ruler import upright
from build_tools.views.lesson.grouping_in_words import grouping_in_words
from build_tools.views.lesson.step_facts import StepFacts, step_facts
from build_tools.views.lesson.timings import StepTime, step_times
from build_tools.views.words.plain_words import minutes_in_words
from build_tools.views.words.punctuation import capital, quoted

_LOOKING = "look and talk"
_TALK = Link("What to look for and ask: Look and talk, below", "#at-talk")
_PHASES = {
    "recall": "dance it again",
    "explore": "try things out",
    "develop": "change it",
    "rehearse": "practise",
    "join": "join it up",
}
"""What kind of step it is in plain words, where the schema's word is one of the trade's."""


@dataclass(frozen=True, slots=True)
class StepView:
    """One step of a lesson."""

    number: int
    """Its number, from 1."""
    data: StepData
    """What the page tells its scripts of it."""
    does: str
    """What pupils do, in a few words."""
    time: str
    """From which minute to which."""
    minutes: str
    """How long it lasts, in words."""
    ruler: Markup
    """The minutes as a ruler standing in the margin."""
    phase: str
    """What kind of step it is, in plain words."""
    grouping: str
    """How pupils are grouped, in words."""
    into: str | None
    """What you say to get them into those groups, in quote marks."""
    say: str | None
    """What you say aloud, in quote marks."""
    task: str
    """What pupils do."""
    look_for: str | None
    """The one thing to look for."""
    questions: tuple[QuestionView, ...]
    """Questions to ask."""
    counts: str | None
    """How many counts you count aloud or drum; how fast they are, where they are the first."""
    easier: str | None
    """How to make the task easier."""
    harder: str | None
    """How to make the task harder."""
    talk: Link | None
    """The way to the questions, from the step that looks and talks."""
    strips: tuple[Picture, ...]
    """Strips of what the step makes or changes, where not drawn above."""


def step_views(unit: Unit, lesson: Lesson, drawn: tuple[str, ...]) -> tuple[StepView, ...]:
    """The steps; motifs and developments in `drawn` are already on the page."""
    seen, found = set(drawn), []
    all_facts = step_facts(unit, lesson)
    first = next((n for n, step in enumerate(lesson.steps, start=1) if step.counts), None)
    for facts, time, step in zip(all_facts, step_times(lesson), lesson.steps, strict=True):
        new = [n for n in (*step.makes, *step.develops) if n not in seen and _has_strip(unit, n)]
        seen.update(new)
        strips = tuple(strip_of(unit.dance, name) for name in new)
        pace = pace_in_words(unit.dance.tempo) if facts.number == first else ""
        found.append(_step(facts, time, step, strips, pace, lesson.look_and_talk is not None))
    return tuple(found)


def pace_in_words(tempo: int | None) -> str:
    """How fast the counts go, by any clock that shows seconds; empty where there is no beat."""
    return f", {round(tempo / 6)} in ten seconds" if tempo else ""


def _has_strip(unit: Unit, name: str) -> bool:
    return name in unit.dance.motifs or name in unit.dance.developments


def _step(
    facts: StepFacts,
    time: StepTime,
    step: Step,
    strips: tuple[Picture, ...],
    pace: str,
    has_talk: bool,
) -> StepView:
    return StepView(
        number=facts.number,
        data=step_data(facts),
        does=step.does,
        time=f"{time.start} to {time.end}",
        minutes=minutes_in_words(step.minutes),
        ruler=Markup(upright(step.minutes)),
        phase=_PHASES.get(step.phase, step.phase),
        grouping=capital(grouping_in_words(step.grouping)),
        into=quoted(step.into) if step.into else None,
        say=quoted(step.say) if step.say else None,
        task=step.task,
        look_for=step.look_for,
        questions=tuple(question_view(q) for q in step.ask),
        counts=f"{figures(step.counts)}{pace}" if step.counts else None,
        easier=step.easier,
        harder=step.harder,
        talk=_TALK if has_talk and step.phase == _LOOKING else None,
        strips=strips,
    )
