"""What is danced in a section is made by the step that makes the section, at the latest.

A section is put together from motifs and what was made of them. If one of them comes only later,
the teacher stands in the hall with a section that has a hole.

Bad:
    sections: {B: {danced: [{what: [drift-slow], as: unison}, …], …}}
    lesson 2: makes: [B]
    lesson 3: develops: [drift-slow]
Good:
    sections: {B: {danced: [{what: [drift-slow], as: unison}, …], …}}
    lesson 2: develops: [drift-slow]
    a later step: makes: [B]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import is_given, progress, steps_in_order
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section made while something danced in it is still to come."""
    dance, ways = unit.dance, progress(unit)
    made: set[str] = set()
    for place, lesson, step in steps_in_order(unit):
        for n, letter in enumerate(step.makes):
            if letter not in dance.sections or letter in made:
                continue
            made.add(letter)
            inside = dict.fromkeys(w for p in dance.sections[letter].danced for w in p.what)
            late = [
                name
                for name in inside
                if not (name in dance.motifs and is_given(dance, name))
                and (first := ways[name].made[:1]) > (place,)
                and first
            ]
            if not late:
                continue
            said = listed([f"`{name}` in {ways[name].made[0]}" for name in late])
            yield Finding(
                lesson.file,
                ("steps", place.step, "makes", n),
                f"section {letter} is made in {place}, but what is danced in it is first made "
                f"after that: {said}",
                f"make {listed([f'`{name}`' for name in late])} before {place}, or in it",
            )
