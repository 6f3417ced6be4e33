"""What a development is made from is there before it, or is made in the same step.

Nobody can slow down a wave that has not been made, or answer with a mirror that nobody has found.

Bad:
    lesson 1: develops: [drift-slow]
    lesson 2: makes: [drift]
Good:
    lesson 1: makes: [drift]
    lesson 2: develops: [drift-slow]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import is_given, progress, sources, steps_in_order
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "lesson-numbers-broken", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where each development is first made, if a source of it comes later."""
    dance, ways = unit.dance, progress(unit)
    seen: set[str] = set()
    for place, lesson, step in steps_in_order(unit):
        for n, name in enumerate(step.develops):
            if name in seen:
                continue
            seen.add(name)
            late = [
                source
                for source in (*dance.motifs, *dance.developments)
                if source in sources(dance, name)
                and not (source in dance.motifs and is_given(dance, source))
                and ways[source].made
                and ways[source].made[0] > place
            ]
            if not late:
                continue
            said = listed([f"`{source}` in {ways[source].made[0]}" for source in late])
            yield Finding(
                lesson.file,
                ("steps", place.step, "develops", n),
                f"`{name}` is developed in {place}, but what it is made from comes only later: "
                f"{said}",
                f"make {listed([f'`{source}`' for source in late])} before {place}, or develop "
                f"`{name}` after it",
            )
