"""No part of the dance has two things to do at once.

A pupil has one body. Where more things go on side by side than there are parts, or where the next
section starts while the same dancers are still moving in the last one, nobody can do both.

Bad:
    {what: [float, spin, hop], as: side by side, parts: 2}
Good:
    {what: [float, spin, hop], as: side by side, parts: 3}
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from itertools import pairwise

from build_tools.model.dance import Dance, Section, Transition
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import PartSpan, part_spans, parts_in, passage_counts
from build_tools.movement.counts import figures
from build_tools.movement.development import actions_of
from build_tools.movement.whole import lengths, transition_between
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "error"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")

_EVERYONE = (0, 1)
"""Part 0 of 1: all the dancers together."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each passage with too many things and each start that is too early."""
    for letter, section in unit.dance.sections.items():
        for n, passage in enumerate(section.danced):
            things, parts = len(passage.what), passage.parts
            if passage.fit == "side by side" and parts and things > parts:
                yield Finding(
                    unit.file,
                    ("sections", letter, "danced", n, "parts"),
                    f"in section {letter}, {things} things go on side by side in {parts} parts, so "
                    f"{things - parts} of them has nobody free to dance it",
                    f"write `parts: {things}`, or take a thing out of `what`",
                )
    for n, transition in enumerate(unit.dance.transitions):
        if transition.kind == "overlap" and transition.counts:
            yield from _too_early(unit, n, transition, transition.counts)


def _too_early(unit: Unit, n: int, overlap: Transition, early: Fraction) -> Iterator[Finding]:
    dance = unit.dance
    for first, second in dict.fromkeys(pairwise(dance.form)):
        if transition_between(dance, first, second) is not overlap:
            continue
        before, after = dance.sections[first], dance.sections[second]
        if before.counts is None or after.counts is None:
            continue
        known = lengths(dance)
        last = _moving(dance, before, known, before.counts - early, before.counts)
        next_ = _moving(dance, after, known, Fraction(0), early)
        clash = _clash(last, next_)
        if clash is None:
            continue
        yield Finding(
            unit.file,
            ("transitions", n, "counts"),
            f"section {second} starts {figures(early)} counts before section {first} ends, and in "
            f"those counts {clash} moves in both",
            f"let those who start section {second} be still at the end of section {first}, or "
            "write `as: straight on` with no counts",
        )
        return


def _clash(last: set[tuple[int, int]], next_: set[tuple[int, int]]) -> str | None:
    """Who moves in both; None where nobody does, or where the parts cannot be compared."""
    if not last or not next_:
        return None
    if _EVERYONE in last and _EVERYONE in next_:
        return "everyone"
    if _EVERYONE in last or _EVERYONE in next_:
        part, of = min((last | next_) - {_EVERYONE})
        return f"part {part} of {of}"
    both = last & next_
    return f"part {min(both)[0]} of {min(both)[1]}" if both else None


def _moving(
    dance: Dance, section: Section, known: Mapping[str, Fraction], low: Fraction, high: Fraction
) -> set[tuple[int, int]]:
    """The parts, each with how many there are, that move between two counts of a section."""
    found: set[tuple[int, int]] = set()
    start = Fraction(0)
    for passage in section.danced:
        count = parts_in(passage)
        for span in part_spans(passage, known):
            if _moves(dance, span, low - start, high - start):
                found.add((span.part, count) if count > 1 else _EVERYONE)
        start += passage_counts(passage, known)
    return found


def _moves(dance: Dance, span: PartSpan, low: Fraction, high: Fraction) -> bool:
    now = span.start
    for action in actions_of(dance, span.what):
        end = min(now + action.counts, span.end)
        if action.kind != "stillness" and now < high and end > low and now < end:
            return True
        now += action.counts
    return False
