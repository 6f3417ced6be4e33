"""A transition that serves for several joins leads to one formation.

Where pupils decide the order, one way has to serve wherever a section comes. It cannot lead into a
circle and into a row: those sections fit together only if each starts as the others do. Pupils
spread out, in pairs or in groups may be so in one place.

Bad:
    A: {start: {formation: line, …}, …}
    B: {start: {formation: line, …}, …}
    C: {start: {formation: circle, …}, …}
    transitions: [{from: any, to: any, …}]
Good:
    A: {start: {formation: line, …}, …}
    B: {start: {formation: line, …}, …}
    C: {start: {formation: line, …}, …}
    transitions: [{from: any, to: any, …}]
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from build_tools.model.dance import Standing
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.joins import crossings
from build_tools.views.words.plain_words import listed
from build_tools.views.words.standing_said import standing_in_words

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "transition-missing")

_LOOSE = ("scattered", "pairs", "small groups", "cluster")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section that starts otherwise than most that one way leads to."""
    dance = unit.dance
    leads: dict[int, list[str]] = {}
    for way in crossings(dance):
        if way.by is not None:
            to = leads.setdefault(dance.transitions.index(way.by), [])
            to += [way.second] if way.second not in to else []
    told: set[str] = set()
    for n, letters in leads.items():
        starts = {letter: _kind(dance.sections[letter].start) for letter in letters}
        usual, times = Counter(starts.values()).most_common(1)[0]
        others = [letter for letter in letters if starts[letter] != usual]
        if not others or times == len(others):
            others = others[-1:]
        for letter in others:
            if letter in told:
                continue
            told.add(letter)
            like = [one for one in letters if starts[one] == usual]
            sections, start = ("section", "starts") if len(like) == 1 else ("sections", "start")
            yield Finding(
                unit.file,
                ("sections", letter, "start", "formation"),
                f"section {letter} starts {standing_in_words(dance.sections[letter].start)}, but "
                f"transition {n + 1}, which leads there, leads to {sections} {listed(like)} too, "
                f"which {start} {standing_in_words(dance.sections[like[0]].start)}",
                f"start section {letter} as the others do, or write a transition of its own",
            )


def _kind(standing: Standing) -> str:
    """The formation, or one word for those in which nobody has a place that others see."""
    return "loose" if standing.formation in _LOOSE else standing.formation
