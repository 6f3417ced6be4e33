"""A lesson brings no more new actions and counts than pupils of that age keep in mind.

About one and a half of the largest motif for the age is enough: up to 4 actions over 8 counts at
5 to 7, 6 over 12 at 7 to 9, 8 over 16 at 9 to 11, 10 over 32 above. An action danced again counts
once, a change of what is known counts nothing, and what a partner makes is the partner's. A long
motif of few moves is easy to keep.

Bad:
    years: [{nation: England, years: [1, 2]}]
    gust: {actions: [{travel: 2}, {jump: 2}, {turn: 2}, {stillness: 2}], …}
    leaf: {actions: [{gesture: 2}, {transfer: 2}, {travel: 2, level: low}, {stillness: 2}], …}
    lesson 1: makes: [gust, leaf]
Good:
    years: [{nation: England, years: [1, 2]}]
    gust: {actions: [{travel: 2}, {jump: 2}, {turn: 2}, {stillness: 2}], …}
    leaf: {actions: [{gesture: 2}, {transfer: 2}, {travel: 2, level: low}, {stillness: 2}], …}
    lesson 1: makes: [gust]
    lesson 2: makes: [leaf]
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.load import age_of, new_by_lesson
from build_tools.views.dance.when_made import progress, steps_in_order
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken", "development-does-not-work")

_TIMES = Fraction(3, 2)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson with more than one and a half of the age's largest motif."""
    age = age_of(unit)
    if age is None:
        return
    most, most_counts = age.largest.actions * _TIMES, age.largest.counts * _TIMES
    for new in new_by_lesson(unit):
        many = new.load.actions > most
        long = new.load.counts > most_counts and new.load.actions > age.largest.actions
        if not (many or long):
            continue
        first = progress(unit)[new.names[0]].made[0]
        lesson = next(lesson for place, lesson, _ in steps_in_order(unit) if place == first)
        yield Finding(
            lesson.file,
            ("steps", first.step),
            f"lesson {new.lesson} brings {new.load.actions} new actions over "
            f"{figures(new.load.counts)} counts ({listed([f'`{n}`' for n in new.names])}), and "
            f"pupils aged {age.said} keep about {figures(most)} over {figures(most_counts)} in a "
            "lesson",
            f"move `{new.names[-1]}` to another lesson, or make it from moves they know",
        )
