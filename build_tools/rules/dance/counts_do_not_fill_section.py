"""What is danced in a counted section fills its counts exactly.

The teacher counts the section aloud. If what is danced is shorter, pupils stand about; if it is
longer, the next section starts over their heads. In a canon the last part's finish counts. Where
the steps count as many as the section has, or what is heard lasts as long, what is danced is to be
mended, and it is told there: at a canon's starts, or at the phrase that ends with none.

Bad:
    wave: {actions: [{travel: 4}, {jump: 4}], …}
    A: {counts: 32, danced: [{what: [wave], times: 3, as: unison}], …}
Good:
    wave: {actions: [{travel: 4}, {jump: 4}], …}
    A: {counts: 24, danced: [{what: [wave], times: 3, as: unison}], …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Passage, Section
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import passage_counts
from build_tools.movement.counts import figures
from build_tools.movement.whole import danced_counts, lengths
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.off_its_counts import place_to_mend

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
            place_to_mend(unit, section, section.counts, danced),
            f"section {letter} has {figures(section.counts)} counts, but what is danced in it "
            f"takes {figures(danced)}: {each}",
            f"write `counts: {figures(danced)}`, or {mend}",
        )


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
