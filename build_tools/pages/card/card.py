"""The lesson as a card for the hand: one step at a time, and the time there is."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TypedDict

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.pages.frame.frame import Frame, frame
from build_tools.pages.hall.hall import Ways, groups_words, ways
from build_tools.pages.page import Page
from build_tools.pages.pieces.for_scripts import ForScripts, StepData, for_scripts, step_data
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.last_time import LastTime, last_time_of
from build_tools.pages.pieces.motif_drawn import MotifDrawn, motif_drawn
from build_tools.pages.pieces.notes import notes_html
from build_tools.pages.pieces.picture import Picture
from build_tools.pages.pieces.questions import QuestionView, question_view
from build_tools.pages.pieces.standing import standing_plans
from build_tools.pages.pieces.step_help import StepHelp, step_helps
from build_tools.pages.pieces.talk import TalkView, talk_view
from build_tools.pages.pieces.trouble import trouble_lines
from build_tools.views.diagrams.body_sprite import sprite
from build_tools.views.lesson.checks_before import checks_before
from build_tools.views.lesson.lesson_wording import (
    DEFERENCE,
    heading_of_change,
    into_in_words,
    where_in_words,
)
from build_tools.views.lesson.moves_in_steps import todays_moves
from build_tools.views.lesson.moves_met import TodaysMoves
from build_tools.views.lesson.step_facts import step_facts
from build_tools.views.lesson.teachers_part import teachers_parts
from build_tools.views.words.plain_words import minutes_in_words
from build_tools.views.words.punctuation import kept_together, quoted
from build_tools.views.words.the_room import the_room


@dataclass(frozen=True, slots=True)
class CardStep:
    """One step of the lesson on the card."""

    data: StepData
    """What the card tells its scripts of it."""
    does: str
    """What pupils do, in a few words."""
    minutes: str
    """How long it lasts, in words."""
    groups: str
    """How pupils are grouped, in words."""
    into: str | None
    """What you say to get them into those groups, in quote marks."""
    say: str | None
    """What you say aloud, in quote marks."""
    task: str
    """What pupils do."""
    you: str | None
    """What you do while they move."""
    yours: tuple[Labelled, ...]
    """What you sound and how fast, who starts on which count, and the signs of joins."""
    look_for: str | None
    """The one thing to look for."""
    questions: tuple[QuestionView, ...]
    """The one question of a step; the questions of looking and talking."""
    talk: str | None
    """Who looks at what, where the step is for looking and talking."""
    where: str | None
    """Where they stand and which way they face."""
    easier: str | None
    """How to make the task easier."""
    harder: str | None
    """How to make the task harder."""
    strips: tuple[Picture, ...]
    """Pictures of what the step makes or changes."""
    plans: tuple[Picture, ...]
    """The floor, where pupils stand so for the first time in the lesson."""
    help: StepHelp
    """What its moves are, how to run its minutes, who is left over, ways sitting and on wheels."""
    can_wait: bool
    """Whether it may be left out when time is short."""
    after: str
    """What comes after it."""


@dataclass(frozen=True, slots=True)
class CardView:
    """The card for the hand."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    for_scripts: ForScripts
    """What the card tells its scripts."""
    ways: Ways
    """The ways to the other views of the lesson."""
    title: str
    """What the lesson is called, without its number."""
    pupils_make: str
    """What pupils will have made by the end."""
    minutes: str
    """How long it lasts, in words."""
    room: str
    """Which side is the front, and what the unit calls the others."""
    safety: tuple[str, ...]
    """What to check and say before they move: the lesson's own lines, and those of every time."""
    deference: str
    """That the school's own risk assessment comes first."""
    last_time: LastTime | None
    """Where the lesson starts, from what was seen at the end of the one before."""
    notes: Markup
    """The author's notes that are about no one step."""
    bodies: Markup
    """The bodies that pictures point to, drawn once."""
    change: tuple[Labelled, ...]
    """Ways to change the lesson to fit the class."""
    steps: tuple[CardStep, ...]
    """In the order of the lesson, one on the card at a time."""
    trouble: tuple[Labelled, ...]
    """One line for each thing that can go wrong."""
    short_of_time: str | None
    """What the author says to do when time is short."""
    not_dancing: str
    """A part for a pupil who cannot dance today."""
    talk: TalkView | None
    """Where the next lesson starts, from what was seen."""


def card_page(bank: Bank, unit: Unit, lesson: Lesson) -> Page:
    """The page units/<slug>/lesson-<n>-card.html."""
    path = f"units/{unit.slug}/lesson-{lesson.number}-card.html"
    title = _(
        "Card for lesson {number}: {lesson}, {unit}",
        number=lesson.number,
        lesson=lesson.title,
        unit=unit.title,
    )
    talk = talk_view(unit, lesson, lesson.look_and_talk) if lesson.look_and_talk else None
    today = todays_moves(unit, lesson)
    drawn = {name: motif_drawn(unit.dance, name) for one in today.steps for name in one.drawn}
    view = CardView(
        frame=frame(bank, path, title, lesson.pupils_make, "card.js"),
        language=unit.language,
        for_scripts=for_scripts(unit, lesson),
        ways=ways(lesson),
        title=lesson.title,
        pupils_make=lesson.pupils_make,
        minutes=kept_together(minutes_in_words(lesson.minutes)),
        room=the_room(unit.dance),
        safety=checks_before(unit, lesson),
        deference=_(DEFERENCE),
        last_time=last_time_of(unit, lesson),
        notes=notes_html(today.notes, 3),
        bodies=Markup(sprite(body for one in drawn.values() for body in one.bodies)),
        change=tuple(
            Labelled(heading_of_change(key), words) for key, words in lesson.change.items()
        ),
        steps=_steps(unit, lesson, talk, today, drawn),
        trouble=trouble_lines(lesson),
        short_of_time=lesson.trouble.get("short_of_time"),
        not_dancing=lesson.not_dancing,
        talk=talk,
    )
    return Page(path, "card/card.html", view.frame.title, view)


def _steps(
    unit: Unit,
    lesson: Lesson,
    talk: TalkView | None,
    today: TodaysMoves,
    drawn: Mapping[str, MotifDrawn],
) -> tuple[CardStep, ...]:
    """The steps; the last that looks and talks has the lesson's closing questions."""
    looking = [n for n, step in enumerate(lesson.steps) if step.phase == "look and talk"]
    afters = [*(step.does for step in lesson.steps[1:]), _("The end of the lesson")]
    plans = standing_plans(unit, lesson)
    yours = teachers_parts(unit, lesson, in_full=True)
    facts, helps = step_facts(unit, lesson), step_helps(unit, lesson, today)
    return tuple(
        CardStep(
            data=step_data(facts[n]),
            does=step.does,
            minutes=kept_together(minutes_in_words(step.minutes)),
            groups=groups_words(step.grouping),
            into=into_in_words(step.into) if step.into else None,
            say=quoted(step.say) if step.say else None,
            task=step.task,
            you=step.you,
            yours=tuple(Labelled(*one) for one in yours[n]),
            **_looking(lesson, step, talk if n in looking[-1:] else None),
            where=where_in_words(step),
            easier=step.easier,
            harder=step.harder,
            strips=tuple(drawn[name].picture for name in today.steps[n].drawn),
            plans=plans[n],
            help=helps[n],
            can_wait=step.can_wait,
            after=afters[n],
        )
        for n, step in enumerate(lesson.steps)
    )


class _Looking(TypedDict):
    """What a step looks for and asks."""

    look_for: str | None
    """The one thing to look for."""
    questions: tuple[QuestionView, ...]
    """The one question of a step; the questions of looking and talking."""
    talk: str | None
    """Who looks at what."""


def _looking(lesson: Lesson, step: Step, talk: TalkView | None) -> _Looking:
    """What is looked for and asked in a step; in the closing talk, what the lesson looks for."""
    if talk is None:
        asked = tuple(question_view(q, lesson) for q in step.ask[:1])
        return {"look_for": step.look_for, "questions": asked, "talk": None}
    return {
        "look_for": step.look_for or talk.looking_for,
        "questions": talk.questions,
        "talk": _("{who}, at {what}.", who=talk.who, what=talk.at),
    }
