"""What each view of a lesson tells its scripts of the lesson."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.views.lesson.step_facts import StepFacts


@dataclass(frozen=True, slots=True)
class StepData:
    """What a page tells its scripts of a step, each as it stands in an attribute."""

    step: str
    """Its number, from 1."""
    minutes: str
    """How long it lasts, in minutes."""
    least: str
    """The fewest minutes it can be done in."""
    phase: str
    """What kind of step it is, in the schema's word."""
    grouping: str
    """How pupils are grouped, in the schema's word."""
    sits: str | None
    """The most minutes pupils can sit in a row, where they sit in it; None where they move."""
    shows: str | None
    """The most seconds a run of what it shows takes, with its change over; None without one."""
    talk: str | None
    """The seconds of talk after a showing; None where it shows nothing timed."""
    at_once: str | None
    """How many groups dance at the same time, where the words say that groups show in turn."""
    can_wait: bool
    """Whether it may be left out when time is short."""
    travels: bool
    """Whether all travel in it at once."""
    parts: str | None
    """The letters of the sections that it dances in their places; None where it dances none."""
    on_spots: bool
    """Whether pupils are on the spots on which they stand in the dance."""
    stands: str | None
    """By which groups pupils stand on spots in it though each dances alone; None by none."""
    before: str | None
    """The groupings that earlier lessons made, said of the first step."""
    halves: str | None
    """What its halves are, where its words say it: teams, or halves of each group."""


def step_data(facts: StepFacts) -> StepData:
    """The facts of a step as attributes."""
    showing = facts.showing
    return StepData(
        step=str(facts.number),
        minutes=str(facts.minutes),
        least=str(facts.least),
        phase=facts.phase,
        grouping=facts.grouping,
        sits=None if facts.sits is None else str(facts.sits),
        shows=str(showing.each) if showing else None,
        talk=str(showing.talk) if showing else None,
        at_once=str(showing.at_once) if showing and showing.at_once else None,
        can_wait=facts.can_wait,
        travels=facts.travels,
        parts=" ".join(facts.parts) or None,
        on_spots=facts.on_spots,
        stands=facts.stands,
        before=" ".join(facts.made_before) or None,
        halves=facts.halves,
    )


@dataclass(frozen=True, slots=True)
class ForScripts:
    """What the page tells its scripts, and every view of the hall with it."""

    unit: str
    """The unit's name in addresses."""
    lesson: str
    """The lesson's number."""
    lessons: str
    """How many lessons there are."""
    minutes: str
    """How many minutes the lesson lasts."""


def for_scripts(unit: Unit, lesson: Lesson) -> ForScripts:
    """What every view of a lesson tells its scripts."""
    return ForScripts(unit.slug, str(lesson.number), str(len(unit.lessons)), str(lesson.minutes))
