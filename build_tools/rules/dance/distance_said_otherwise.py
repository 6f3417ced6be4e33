"""How far apart dancers stand in words is how far apart they stand in the score.

"Two big steps from anyone", and the plan is drawn with one step: pupils stand as they are told and
the dance from above as it is drawn, so that one of them walks into the next. A big step is taken
for one and a half, a small one for two thirds, and an arm's length for about a step.

Bad:
    start: {place: "Beside your partner, three steps apart", apart: 1, …}
Good:
    start: {place: "Beside your partner, three steps apart", apart: 3, …}
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Standing
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.distances import Distance, distances
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each start and end whose words say another distance than its fields."""
    for letter, section in unit.dance.sections.items():
        for field, standing in (("start", section.start), ("end", section.end)):
            if section.returns and field not in section.changes:
                continue
            for name, has, said in _otherwise(standing):
                yield Finding(
                    unit.file,
                    ("sections", letter, field, name),
                    f"`{name}` is {figures(has)}, but `place` says {listed(said, 'and')}",
                    "write the distance that pupils are told, in steps as a child walks, or mend "
                    "`place`",
                )


def _otherwise(standing: Standing) -> Iterator[tuple[str, Fraction, list[str]]]:
    """Each distance of the fields that is none of those said: its field, what it is, the words."""
    said = distances(standing.place)
    if not said or standing.apart is None:
        return
    apart = [one for one in said if _is(one, standing.apart)]
    groups = standing.groups_apart
    if not apart and (groups is None or not all(_is(one, groups) for one in said)):
        yield "apart", standing.apart, [one.said for one in said]
    if groups is None or not apart:
        return
    left = [one for one in said if one is not apart[0]]
    if left and not any(_is(one, groups) for one in left) and groups < _least(left):
        yield "groups_apart", groups, [one.said for one in left]


def _is(said: Distance, has: Fraction) -> bool:
    return said.least - 0.01 <= float(has) <= said.most + 0.01


def _least(said: list[Distance]) -> float:
    return min(one.least for one in said)
