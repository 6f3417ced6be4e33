"""A motif is made before anyone watches it.

Nobody can show what is not there yet. A motif is shown by name, within a section, within the
whole dance, or as a development that comes from it. One that the teacher brings counts as made
where pupils first dance it.

Bad:
    lesson 1: shows: [gust]
    lesson 2: makes: [gust]
Good:
    lesson 1: makes: [gust]
    a later step: shows: [gust]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import held, progress, steps_in_order

GRADE: Grade = "error"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where each motif is first shown, if it is made later or never."""
    found = progress(unit)
    by_place = {place: (lesson, step) for place, lesson, step in steps_in_order(unit)}
    for motif in unit.dance.motifs:
        made, shown = found[motif].made[:1], found[motif].shown[:1]
        if not shown or (made and made <= shown):
            continue
        lesson, step = by_place[shown[0]]
        index, part = next(
            (n, p) for n, p in enumerate(step.shows) if motif in held(unit.dance, (p,))
        )
        yield Finding(
            lesson.file,
            ("steps", shown[0].step, "shows", index),
            f"`{motif}` is shown in {shown[0]}{_within(motif, part)}, but "
            + (f"it is first made in {made[0]}" if made else "no step makes it"),
            f"write `makes: [{motif}]` in the step where pupils make it, before it is shown",
        )


def _within(motif: str, part: str) -> str:
    if part == motif:
        return ""
    if part == "whole":
        return ", within the whole dance"
    return f", within section {part}" if len(part) == 1 else f", as `{part}`"
