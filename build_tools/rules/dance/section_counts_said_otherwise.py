"""A text that tells how long a section is tells the counts that the section has.

A teacher who counts the eights on the fingers, and was told five where the part has six, says the
next letter eight counts early, and half the class goes with the voice.

Bad:
    A: {counts: 32, …}
    notes: A is five eights. On the last one, say the next letter.
Good:
    A: {counts: 32, …}
    notes: A is four eights. On the last one, say the next letter.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Dance
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed
from build_tools.views.words.section_lengths_said import (
    NOUNS,
    SectionLength,
    section_lengths_said,
)
from build_tools.views.written.unit_text import place_of, unit_text

GRADE: Grade = "question"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each field that gives a section other counts than it has."""
    text = unit_text(unit)
    for file, field in text.at(text.holding(NOUNS)):
        for said in section_lengths_said(field.text):
            has = _counts(unit.dance, said)
            if not has or _fits(has, said):
                continue
            words = " ".join(said.said.split())
            pairs = zip(said.letters, has, strict=True)
            which = listed([f"{letter} has {counts}" for letter, counts in pairs])
            yield Finding(
                file,
                place_of(field, said.said),
                f"`{field.kind}` says `{words}`, which is {said.counts} counts, but {which}",
                "say the counts that the section has, or mend the section",
            )
            break


def _counts(dance: Dance, said: SectionLength) -> list[Fraction]:
    """The counts of each section named; none where one of them is not counted, or not there."""
    sections = [dance.sections.get(letter) for letter in said.letters]
    counts = [one.counts for one in sections if one is not None and one.counts is not None]
    return counts if len(counts) == len(said.letters) else []


def _fits(has: list[Fraction], said: SectionLength) -> bool:
    together = not said.each and sum(has, Fraction(0)) == said.counts
    return together or all(counts == said.counts for counts in has)
