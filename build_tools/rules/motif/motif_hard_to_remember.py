"""A motif is as long as pupils of its age keep in mind.

Usual lengths: up to 4 actions over 8 counts at 5 to 7, 6 over 12 at 7 to 9, 8 over 16 at 9 to 11,
10 over 32 above. The same action danced again counts once. A long motif of few moves, such as a
figure of two walks, is easy to keep.

Bad:
    years: [{nation: England, years: [1, 2]}]
    actions: [{travel: 2}, {jump: 2}, {turn: 2}, {gesture: 2}, {transfer: 2}, {stillness: 2}]
Good:
    years: [{nation: England, years: [1, 2]}]
    actions: [{travel: 2}, {jump: 2}, {turn: 2}, {stillness: 2}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.load import Load, age_of, load_of
from build_tools.views.words.plain_words import counts_in_words, how_many

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each motif beyond the largest for the unit's age."""
    age = age_of(unit)
    if age is None:
        return
    most = age.largest
    for name, motif in unit.dance.motifs.items():
        load = load_of(motif.actions)
        long = load.counts > most.counts and load.actions * 2 > most.actions
        if load.actions > most.actions or long:
            yield Finding(
                unit.file,
                ("motifs", name),
                f"`{name}` has {load.actions} different actions over {figures(load.counts)} "
                f"counts, and pupils aged {age.said} keep about {most.actions} over "
                f"{figures(most.counts)}",
                f"take {_over(load, most)} out of `{name}`, or make two motifs of it",
            )


def _over(load: Load, most: Load) -> str:
    """What is too much: the actions over the most, or else the counts."""
    if load.actions > most.actions:
        return how_many(load.actions - most.actions, "different action")
    return counts_in_words(load.counts - most.counts)
