"""Across the unit, pupils move for longer than they watch and talk.

Dance is learned by dancing. Watching sharpens it, in small measure: where half watch while half
dance, half of those minutes are watched.

Bad:
    in each lesson
    steps:
      - {phase: warm-up, minutes: 6, …}
      - {phase: explore, minutes: 12, …}
      - {phase: look and talk, minutes: 22, …}
Good:
    in each lesson
    steps:
      - {phase: warm-up, minutes: 6, …}
      - {phase: explore, minutes: 26, …}
      - {phase: look and talk, minutes: 8, …}
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import ceil

from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.watching import some_dance
from build_tools.views.words.plain_words import minutes_in_words

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Hollis and others 2017, International Journal of Behavioral Nutrition and Physical Activity "
    "14:52: half of a PE lesson moving is the advice of afPE and CDC"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where watching and talking take more of the unit than moving does."""
    halves = {
        lesson.number: sum(_watched_halves(step) for step in lesson.steps)
        for lesson in unit.lessons
    }
    watched = Fraction(sum(halves.values()), 2)
    moved = sum(s.minutes for lesson in unit.lessons for s in lesson.steps) - watched
    if watched <= moved:
        return
    worst = max(unit.lessons, key=lambda lesson: (halves[lesson.number], -lesson.number))
    most = Fraction(halves[worst.number], 2)
    yield Finding(
        worst.file,
        ("steps",),
        f"in the whole unit pupils watch and talk for {figures(watched)} minutes and move for "
        f"{figures(moved)}; in lesson {worst.number} they watch and talk for {figures(most)} of "
        f"{sum(step.minutes for step in worst.steps)}",
        f"turn {minutes_in_words(ceil((watched - moved) / 2))} or more of watching into "
        "dancing, such as by letting groups dance at once",
    )


def _watched_halves(step: Step) -> int:
    """Half minutes of a step in which a pupil watches or talks."""
    if step.phase == "show" or step.grouping == "half class":
        return step.minutes
    if step.phase != "look and talk":
        return 0
    dances = step.shows or step.dances or some_dance(step.task)
    return step.minutes if dances else 2 * step.minutes
