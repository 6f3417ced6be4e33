"""A mimed action is changed into dance: bigger, slower, with another part of the body.

Acting out sweeping or sawing is a good start and a poor dance. It becomes dance when it is
developed by a device, or where the step itself asks for another size, speed, level or path.

Bad:
    nothing is made from saw
    lesson 1: makes: [saw], task: Pretend to saw wood.
Good:
    lesson 1: makes: [saw], task: Pretend to saw wood.
    lesson 2: develops: [saw-slow]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.mime import is_left_as_mime
from build_tools.views.dance.when_made import progress, steps_in_order

GRADE: Grade = "note"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each motif made by acting out and never developed."""
    dance, ways = unit.dance, progress(unit)
    for place, lesson, step in steps_in_order(unit):
        for n, name in enumerate(step.makes):
            if name not in dance.motifs or ways[name].developed:
                continue
            idea = dance.motifs[name].idea
            if is_left_as_mime((step.does, step.say, step.task)) or is_left_as_mime((idea,)):
                yield Finding(
                    lesson.file,
                    ("steps", place.step, "makes", n),
                    f"`{name}` is acted out in {place}, and nothing is developed from it",
                    f"change `{name}` by a device, such as a change of size or speed, in a later "
                    "step with `develops`",
                )
