"""Pupils develop at least one motif in the course of the unit.

A dance grows by changing what is there: slower, bigger, mirrored, shared out. Where nothing is
developed, pupils copy moves and repeat them, and learn little about making dances. A dance that
is improvised throughout has no motifs to develop, and one whose motifs are all the teacher's may
be learned as it is.

Bad:
    no step develops anything
    motifs: {gust: …}
Good:
    motifs: {gust: …}
    developments: {gust-slow: {of: gust, device: change of speed, counts: [4, 4]}}
    lesson 2: develops: [gust-slow]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
SOURCE = (
    "Smith-Autard, Dance Composition: repetition in dance exists as development and variation of "
    "a motif"
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding if the unit has motifs and no step develops anything."""
    dance = unit.dance
    if not dance.motifs or any(s.develops for lesson in unit.lessons for s in lesson.steps):
        return
    if not dance.developments and all(m.made_by == "teacher" for m in dance.motifs.values()):
        return
    first = next(iter(dance.developments), None)
    yield Finding(
        unit.file,
        ("developments",) if first else ("motifs",),
        f"the unit has {how_many(len(dance.motifs), 'motif')} and "
        f"{how_many(len(dance.developments), 'development')}, but no step in "
        f"{how_many(len(unit.lessons), 'lesson')} develops anything",
        f"write `develops: [{first}]` in the step where pupils change the motif"
        if first
        else "change one motif by one device under `developments`, and name it in a step's "
        "`develops`",
    )
