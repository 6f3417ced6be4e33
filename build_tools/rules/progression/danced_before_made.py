"""What a step dances or shows is made by then.

A step that rehearses what is not there yet cannot be taught as written. A warm-up or a step of
exploring may dance something ahead of its making: it is planted there.

Bad:
    lesson 1: dances: [C]
Good:
    lesson 1: dances: [A]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import progress, steps_in_order
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where a thing is first danced by its name, if it is made only later."""
    ways, sections = progress(unit), unit.dance.sections
    waiting = {name: way.made[0] for name, way in ways.items() if way.made}
    for place, lesson, step in steps_in_order(unit):
        if step.phase in ("warm-up", "explore"):
            continue
        for field, n, part in _danced(step):
            inside = tuple(sections) if part == "whole" else (part,)
            early = [name for name in inside if name in waiting and place < waiting[name]]
            if not early:
                continue
            said = [f"section {name}" if name in sections else f"`{name}`" for name in early]
            made = [str(waiting.pop(name)) for name in early]
            be = "is" if len(early) == 1 else "are"
            deed = "shown" if field == "shows" else "danced"
            whole = f"the whole is {deed}" if part == "whole" else f"{said[0]} is {deed}"
            it = f"{listed(said)} {be}" if part == "whole" else "it is"
            yield Finding(
                lesson.file,
                ("steps", place.step, field, n),
                f"{whole} in {place}, but {it} first made in {listed(list(dict.fromkeys(made)))}",
                f"move the {'showing' if field == 'shows' else 'dancing'} after {made[-1]}, or the "
                f"making before {place}",
            )


def _danced(step: Step) -> Iterator[tuple[str, int, str]]:
    """What a step dances and what it shows: the field, the place in it and the part."""
    for field, parts in (("dances", step.dances), ("shows", step.shows)):
        for n, part in enumerate(parts):
            yield field, n, part
