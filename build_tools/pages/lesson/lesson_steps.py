"""The steps of a lesson as its page shows them."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.pages.frame.frame import Link
from build_tools.pages.pieces.for_scripts import StepData, step_data
from build_tools.pages.pieces.music import played_data
from build_tools.pages.pieces.picture import Picture
from build_tools.pages.pieces.questions import QuestionView, question_view
from build_tools.pages.pieces.script import Script, script_of
from build_tools.pages.pieces.step_help import StepHelp
from build_tools.views.lesson.grouping_in_words import grouping_in_words
from build_tools.views.lesson.lesson_wording import (
    WAY_TO_TALK,
    has_way_to_talk,
    into_in_words,
    phase_in_words,
    where_in_words,
)
from build_tools.views.lesson.step_facts import StepFacts, step_facts
from build_tools.views.lesson.teachers_part import Told, teachers_parts
from build_tools.views.lesson.timings import StepTime, step_times
from build_tools.views.paper.paper_size import OnPaper
from build_tools.views.words.plain_words import minutes_in_words
from build_tools.views.words.punctuation import capital, quoted


@dataclass(frozen=True, slots=True)
class StepView:
    """One step of a lesson."""

    number: int
    """Its number, from 1."""
    data: StepData
    """What the page tells its scripts of it."""
    played: str | None
    """What of the recording is played for it, for scripts; None where nothing is."""
    does: str
    """What pupils do, in a few words."""
    time: str
    """From which minute to which."""
    minutes: str
    """How long it lasts, in words."""
    phase: str
    """What kind of step it is, in plain words."""
    grouping: str
    """How pupils are grouped, in words."""
    into: str | None
    """What you say to get them into those groups, in quote marks."""
    where: str | None
    """Where they stand and which way they face."""
    say: str | None
    """What you say aloud, in quote marks."""
    task: str
    """What pupils do."""
    you: str | None
    """What you do while they move."""
    yours: tuple[Script, ...]
    """What you sound and say and how fast, who starts on which count, and the signs of joins."""
    says_on_paper: bool
    """Whether the lesson's own two sides have room for what is said."""
    in_full: tuple[Script, ...]
    """The same without looking at the steps before, for whoever sees this step alone: what that has
    besides, or says otherwise under the same label."""
    look_for: str | None
    """The one thing to look for."""
    questions: tuple[QuestionView, ...]
    """Questions to ask."""
    easier: str | None
    """How to make the task easier."""
    harder: str | None
    """How to make the task harder."""
    talk: Link | None
    """The way to the questions, from the step that looks and talks."""
    strips: tuple[Picture, ...]
    """Pictures of what the step makes or changes, where not drawn above."""
    plans: tuple[Picture, ...]
    """The floor, where pupils stand so for the first time in the lesson.

    Paper shows it too: before the steps, or else on the side of notes.
    """
    told: str
    """How much of its moves there is room for on paper, from 0 to 5."""
    help: StepHelp
    """What its moves are, how to run its minutes, who is left over, ways sitting and on wheels."""


def step_views(
    unit: Unit,
    lesson: Lesson,
    helps: tuple[StepHelp, ...],
    strips: tuple[tuple[Picture, ...], ...],
    paper: OnPaper,
    plans: tuple[tuple[Picture, ...], ...],
) -> tuple[StepView, ...]:
    """The steps, each with its own help and pictures."""
    return tuple(
        _step(unit, lesson, *each, says_on_paper=each[0].number - 1 in paper.said)
        for each in zip(
            step_facts(unit, lesson),
            step_times(lesson),
            lesson.steps,
            strips,
            helps,
            paper.told,
            teachers_parts(unit, lesson, in_full=False),
            teachers_parts(unit, lesson, in_full=True),
            plans,
            strict=True,
        )
    )


def _step(
    unit: Unit,
    lesson: Lesson,
    facts: StepFacts,
    time: StepTime,
    step: Step,
    strips: tuple[Picture, ...],
    helped: StepHelp,
    told: int,
    yours: tuple[Told, ...],
    in_full: tuple[Told, ...],
    plans: tuple[Picture, ...],
    *,
    says_on_paper: bool,
) -> StepView:
    return StepView(
        number=facts.number,
        data=step_data(facts),
        played=played_data(unit.dance, step),
        does=step.does,
        time=_("{start} to {end}", start=time.start, end=time.end),
        minutes=minutes_in_words(step.minutes),
        phase=phase_in_words(step.phase),
        grouping=capital(grouping_in_words(step.grouping)),
        into=into_in_words(step.into) if step.into else None,
        where=where_in_words(step),
        say=quoted(step.say) if step.say else None,
        task=step.task,
        you=step.you,
        yours=tuple(map(script_of, yours)),
        says_on_paper=says_on_paper,
        in_full=tuple(script_of(one) for one in in_full if one not in yours),
        look_for=step.look_for,
        questions=tuple(question_view(q, lesson) for q in step.ask),
        easier=step.easier,
        harder=step.harder,
        talk=Link(_(WAY_TO_TALK), "#at-talk") if has_way_to_talk(lesson, step) else None,
        strips=strips,
        help=helped,
        plans=plans,
        told=str(told),
    )
