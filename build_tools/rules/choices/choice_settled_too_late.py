"""A choice is settled before the last run of the whole, so that it is rehearsed.

What is decided after the last rehearsal is danced for the first time in front of watchers. On the
day of showing, it is settled before the first run of that day.

Bad:
    lesson 6, step 3: dances: [whole]
    step 4: settles: [last-shape], shows: [whole]
Good:
    lesson 6, step 3: settles: [last-shape], dances: [whole]
    step 4: shows: [whole]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import StepPlace, settled
from build_tools.views.dance.whole_runs import Run, step_of_showing, whole_runs

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each choice first settled when it can no longer be rehearsed."""
    if not unit.dance.choices:
        return
    shown = step_of_showing(unit)
    if shown is None:
        return
    runs = [run for run in whole_runs(unit) if run.named and run.place < shown]
    for name, places in settled(unit).items():
        if not places or (late := _late(places[0], runs, shown)) is None:
            continue
        step = unit.lessons[[u.number for u in unit.lessons].index(places[0].lesson)].steps[
            places[0].step
        ]
        yield Finding(
            next(u.file for u in unit.lessons if u.number == places[0].lesson),
            ("steps", places[0].step, "settles", step.settles.index(name)),
            f"`{name}` is settled in {places[0]}, {late}",
            f"settle `{name}` in an earlier step, before a run of the whole dance",
        )


def _late(place: StepPlace, runs: list[Run], shown: StepPlace) -> str | None:
    """Why `place` is late, in the reader's words; None if it is not."""
    if place >= shown:
        return f"and the whole dance is shown in {shown}"
    if not runs:
        return None  # a whole that is never run has its own rule
    last = runs[-1]
    if place > last.place or (place == last.place and last.times == 1):
        after = "in" if place == last.place else "after"
        return f"{after} the last run of the whole before it is shown ({last.place})"
    of_the_day = [run.place for run in runs if run.place.lesson == shown.lesson]
    if of_the_day and place > of_the_day[0]:
        return f"after the first run of the day of showing ({of_the_day[0]})"
    return None
