"""What is danced in a counted section fills its counts exactly.

The teacher counts the section aloud. If what is danced is shorter, pupils stand about; if it is
longer, the next section starts over their heads. In a canon the last part's finish counts. Where
the steps count as many as the section has, what is danced is to be mended, and it is told there.

Bad:
    wave: {actions: [{travel: 4}, {jump: 4}], …}
    A: {counts: 32, danced: [{what: [wave], times: 3, as: unison}], …}
Good:
    wave: {actions: [{travel: 4}, {jump: 4}], …}
    A: {counts: 24, danced: [{what: [wave], times: 3, as: unison}], …}
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from build_tools.model.dance import Passage, Section
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import CANONS, passage_counts
from build_tools.movement.counts import figures
from build_tools.movement.whole import danced_counts, lengths
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.progress import names_in, steps_in_order
from build_tools.views.words.dancers_named import dancers_named

GRADE: Grade = "error"
SOURCE = "common practice, no source"
NEEDS = (
    "unknown-name",
    "name-used-twice",
    "development-does-not-work",
    "canon-not-spelt-out",
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each counted section whose passages do not add up to its counts."""
    known = lengths(unit.dance)
    for letter, section in unit.dance.sections.items():
        if section.counts is None:
            continue
        if not section.danced:
            yield _nothing_said(unit, section)
            continue
        danced = danced_counts(unit.dance, section)
        if danced == section.counts:
            continue
        each = " + ".join(
            f"{figures(passage_counts(p, known))} ({_label(p)})" for p in section.danced
        )
        apart = figures(abs(danced - section.counts))
        mend = (
            f"take {apart} off what is danced" if danced > section.counts else f"dance {apart} more"
        )
        yield Finding(
            unit.file,
            _place(unit, section, section.counts, danced),
            f"section {letter} has {figures(section.counts)} counts, but what is danced in it "
            f"takes {figures(danced)}: {each}",
            f"write `counts: {figures(danced)}`, or {mend}",
        )


def _place(unit: Unit, section: Section, counts: Fraction, danced: Fraction) -> FieldPath:
    """The passage to mend where the steps bear the section's counts out; else its counts."""
    path: FieldPath = ("sections", section.letter)
    counted = {
        step.counts
        for _, _, step in steps_in_order(unit)
        if {n for n in names_in(step) if n in unit.dance.sections or n == "whole"}
        == {section.letter}
    }
    if counts not in counted or danced in counted:
        return (*path, "counts")
    known, over = lengths(unit.dance), danced - counts
    passages = list(enumerate(section.danced))
    for fits in (_by_parts, _by_times, _off_the_phrase):
        for n, passage in passages:
            if fits(passage, known, over, unit.dance.phrase):
                return (*path, "danced", n)
    return (*path, "counts")


def _by_parts(
    passage: Passage, known: Mapping[str, Fraction], over: Fraction, _phrase: int
) -> bool:
    """Whether it is a canon with too many parts, or with fewer than its words name."""
    if passage.fit not in CANONS:
        return False
    if over < 0 and dancers_named(passage.who or "") in (None, passage.parts):
        return False
    long = sum((known[name] for name in passage.what), Fraction(0)) * passage.times
    apart = passage.after if passage.after is not None else long
    return not over % apart


def _by_times(
    passage: Passage, known: Mapping[str, Fraction], over: Fraction, _phrase: int
) -> bool:
    """Whether dancing it once more or less would mend it."""
    return passage.times > 1 and abs(over) == passage_counts(passage, known) / passage.times


def _off_the_phrase(
    passage: Passage, known: Mapping[str, Fraction], _over: Fraction, phrase: int
) -> bool:
    """Whether it ends neither with a phrase nor with half of one."""
    return passage_counts(passage, known) % phrase not in (0, Fraction(phrase, 2))


def _nothing_said(unit: Unit, section: Section) -> Finding:
    counts = figures(section.counts) if section.counts else "0"
    return Finding(
        unit.file,
        ("sections", section.letter, "counts"),
        f"section {section.letter} has {counts} counts, but 0 of them are filled: `danced` is not "
        "there",
        f"write under `danced` what fills the {counts} counts",
    )


def _label(passage: Passage) -> str:
    names = " and ".join(passage.what)
    times = f", {passage.times} times" if passage.times > 1 else ""
    parts = f" of {passage.parts} parts" if passage.parts else ""
    after = f" {figures(passage.after)} apart" if passage.after is not None else ""
    fit = "" if passage.fit == "unison" else f", {passage.fit}{parts}{after}"
    return f"{names}{times}{fit}"
