"""What stands under `motifs` and `developments` is worked on or danced somewhere.

A motif that no step makes and no section dances is left over. A teacher who reads the unit looks
for its place and finds none.

Bad:
    neither a step nor a section names gust-low
    developments: {gust-low: …}
Good:
    developments: {gust-low: …}
    lesson 2: develops: [gust-low]
    sections: {A: {danced: [{what: [gust-low], as: unison}, …], …}}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import names_in, sources, steps_in_order
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each motif or development that nothing names."""
    dance = unit.dance
    used = {name for _, _, step in steps_in_order(unit) for name in names_in(step)}
    used |= {w for s in dance.sections.values() for p in s.danced for w in p.what}
    used |= {source for name in used for source in sources(dance, name)}
    for field, names in (("motifs", dance.motifs), ("developments", dance.developments)):
        for name in names:
            if name in used:
                continue
            yield Finding(
                unit.file,
                (field, name),
                f"`{name}` is in 0 of {how_many(len(dance.sections), 'section')} and in 0 steps of "
                f"{how_many(len(unit.lessons), 'lesson')}",
                f"let a step make `{name}` and a section dance it, or take it out",
            )
