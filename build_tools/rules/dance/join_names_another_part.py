"""A join's sign names the part that comes next.

Joins that do not say `from` and `to` stand in the order of the form. Where two of them changed
places, the teacher holds up the letter C and the class is to dance B.

Bad:
    transitions: [{from: A, to: B, cue: The teacher holds up the letter C, …}, …]
Good:
    transitions: [{from: A, to: B, cue: The teacher holds up the letter B, …}, …]
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.dance import Dance, Transition
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice")

_LETTER = re.compile(r"\b(?:letter|card|part|section|sign)s?(?: for)? ([A-Z])\b(?!['’])")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each sign that names only sections on neither side of its join."""
    dance = unit.dance
    for n, join in enumerate(dance.transitions):
        named = _letters(dance, join) or _names_changed_over(dance, join)
        if named:
            yield Finding(
                unit.file,
                ("transitions", n, "cue"),
                f"the sign from {join.start} to {join.end} names {listed(sorted(named))}: joins "
                "that do not say `from` and `to` stand in the order of the form, "
                f"{' '.join(dance.form)}",
                f"move the join to its place, or write `from` and `to` with it; if it does lead "
                f"to {join.end}, name {join.end} in its sign",
            )


def _letters(dance: Dance, join: Transition) -> frozenset[str]:
    """The letters that a sign says, if none of them is a section that the join is between."""
    said = {one for one in _LETTER.findall(join.cue) if one in dance.sections}
    beside = {join.start[:1], join.end[:1]}
    return frozenset(said) if "any" not in (join.start, join.end) and not said & beside else _NONE


def _names_changed_over(dance: Dance, join: Transition) -> frozenset[str]:
    """The section whose name this sign says, where the sign of its own join says this one's."""
    for other in dance.transitions:
        ends = {join.start, join.end, other.start, other.end}
        if other.end == join.end or not ends <= set(dance.sections):
            continue
        crossed = _says(dance, join, other.end) and _says(dance, other, join.end)
        straight = _says(dance, join, join.end) or _says(dance, other, other.end)
        if crossed and not straight:
            return frozenset((other.end,))
    return _NONE


def _says(dance: Dance, join: Transition, letter: str) -> bool:
    name = dance.sections[letter].name
    return bool(name) and re.search(rf"\b{re.escape(name or '')}\b", join.cue, re.I) is not None


_NONE: frozenset[str] = frozenset()
