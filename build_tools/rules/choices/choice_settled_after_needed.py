"""A choice is settled by the step that needs it: the one that develops with it, or the first run.

Where pupils decide how a motif changes, they decide it as they change it. Where they decide the
order of the sections, they decide it before they run the whole.

Bad:
    anemone-new: {of: anemone, device: change of body part, choice: opening-part}
    lesson 2: develops: [anemone-new]
    lesson 3: settles: [opening-part]
Good:
    anemone-new: {of: anemone, device: change of body part, choice: opening-part}
    lesson 2: develops: [anemone-new], settles: [opening-part]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import StepPlace, progress, settled, step_at
from build_tools.views.dance.whole_runs import whole_runs

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "lesson-numbers-broken", "choice-never-settled")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each choice settled after a step that cannot do without it."""
    for name, places in settled(unit).items():
        need = min(_needs(unit, name), default=None)
        if need is None or places[0] <= need[0]:
            continue
        lesson, step = step_at(unit, places[0])
        yield Finding(
            lesson.file,
            ("steps", places[0].step, "settles", step.settles.index(name)),
            f"`{name}` is settled in {places[0]}, but {need[1]} in {need[0]}",
            f"settle `{name}` in {need[0]} or before it",
        )


def _needs(unit: Unit, choice: str) -> Iterator[tuple[StepPlace, str]]:
    """The steps that need the choice, and what they do with it."""
    for name, development in unit.dance.developments.items():
        if development.choice == choice and (made := progress(unit)[name].made):
            yield made[0], f"`{name}`, which is changed by it, is developed"
    if unit.dance.order_choice == choice:
        for run in whole_runs(unit):
            if run.named:
                yield run.place, "the whole is run in that order"
