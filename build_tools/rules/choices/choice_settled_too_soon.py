"""A choice is settled once there is something to decide about.

Whether an answer is bigger or smaller cannot be chosen while there is no question yet: pupils
have nothing to try the two on.

Bad:
    crab-answer: {of: crab, device: change of size, choice: answer-size}
    lesson 1: settles: [answer-size]
    lesson 3: makes: [crab], develops: [crab-answer]
Good:
    crab-answer: {of: crab, device: change of size, choice: answer-size}
    lesson 3: makes: [crab], develops: [crab-answer], settles: [answer-size]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import progress, settled, step_at

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each choice settled before what its development is made from."""
    ways = progress(unit)
    told: set[str] = set()
    for name, development in unit.dance.developments.items():
        choice = development.choice
        places = settled(unit).get(choice or "", ())
        source = ways[development.of].made
        if not choice or not places or not source or choice in told or places[0] >= source[0]:
            continue
        told.add(choice)
        lesson, step = step_at(unit, places[0])
        yield Finding(
            lesson.file,
            ("steps", places[0].step, "settles", step.settles.index(choice)),
            f"`{choice}` is settled in {places[0]}, but `{development.of}`, which it changes into "
            f"`{name}`, is first made in {source[0]}",
            f"settle `{choice}` in the step that develops `{name}`",
        )
