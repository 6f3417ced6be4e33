"""The parts of a passage fit each other and the passages beside it.

Parts that stop at different counts, a canon with a gap in it or one whose last part never starts,
and a split into threes after a split into pairs all leave pupils standing and asking.

Bad:
    wave: {actions: [{travel: 4}, {jump: 4}], …}
    danced: [{what: [wave], as: canon, parts: 4, after: 12}]
Good:
    wave: {actions: [{travel: 4}, {jump: 4}], …}
    danced: [{what: [wave], as: canon, parts: 4, after: 4}]
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from fractions import Fraction

from build_tools.model.dance import Passage, Section
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import CANONS, parts_in
from build_tools.movement.counts import figures
from build_tools.movement.whole import lengths
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.words_about_dance import WAITS
from build_tools.views.words.plain_words import counts_in_words, listed

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Ontario Arts Curriculum, 2010, glossary: the phrases of a canon overlap; the numbers of parts "
    "are common practice"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "canon-not-spelt-out")

_MOST_PARTS = 6
_STILL_THING = re.compile(r"\b(?:the|a|an) still(?= [a-z])", re.IGNORECASE)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each passage of a counted section whose parts do not fit."""
    split = [
        section
        for section in unit.dance.sections.values()
        if section.counts is not None and any(p.fit != "unison" for p in section.danced)
    ]
    if not split:
        return
    known = lengths(unit.dance)
    for section in split:
        before: Passage | None = None
        for n, passage in enumerate(section.danced):
            path: FieldPath = ("sections", section.letter, "danced", n)
            if passage.fit == "side by side":
                yield from _side_by_side(unit, path, section, passage, known)
            elif passage.fit in CANONS:
                yield from _canon(unit, path, section, passage, known)
            if parts_in(passage) > 1:
                if before is not None:
                    yield from _split_again(unit, path, section, before, passage)
                before = passage


def _side_by_side(
    unit: Unit, path: FieldPath, section: Section, passage: Passage, known: Mapping[str, Fraction]
) -> Iterator[Finding]:
    things = len(passage.what)
    if passage.parts and passage.parts > things and passage.parts % things and not passage.who:
        yield Finding(
            unit.file,
            (*path, "parts"),
            f"section {section.letter} has {passage.parts} parts side by side, but `what` names "
            f"{things} things, and {passage.parts} parts cannot be shared out evenly among them",
            "name one thing for each part, or say in `who` which parts dance the same",
        )
    if len({known[name] for name in passage.what}) < 2 or _says_who_waits(section, passage):
        return
    each = listed([f"`{name}` lasts {counts_in_words(known[name])}" for name in passage.what])
    apart = max(known[n] for n in passage.what) - min(known[n] for n in passage.what)
    yield Finding(
        unit.file,
        (*path, "what"),
        f"in section {section.letter}, {each}, side by side: one part stops "
        f"{counts_in_words(apart * passage.times)} before the other",
        f"give both the same counts, or say in `who` what the first to finish does for "
        f"{counts_in_words(apart * passage.times)}, such as waits still",
    )


def _says_who_waits(section: Section, passage: Passage) -> bool:
    """Whether `who` or the idea says that some wait; the still water is only what it is like."""
    return WAITS.in_any((passage.who, _STILL_THING.sub("", section.idea)))


def _canon(
    unit: Unit, path: FieldPath, section: Section, passage: Passage, known: Mapping[str, Fraction]
) -> Iterator[Finding]:
    parts, after = passage.parts or 1, passage.after
    if parts > _MOST_PARTS and not passage.who:
        yield Finding(
            unit.file,
            (*path, "parts"),
            f"section {section.letter} has a canon in {parts} parts, and more than {_MOST_PARTS} "
            "are hard to fit into a class and to see",
            f"write `parts: {_MOST_PARTS}` or fewer, or say in `who` which pupils are each part",
        )
    phrase = sum((known[name] for name in passage.what), Fraction(0)) * passage.times
    if after is None or after <= phrase:
        if passage.fit == "canon to one ending" and after and after * (parts - 1) >= phrase:
            yield Finding(
                unit.file,
                (*path, "after"),
                f"in section {section.letter} all finish together after {figures(phrase)} counts, "
                f"but part {parts} joins in only at {figures(after * (parts - 1))}: {parts - 1} "
                f"times {figures(after)}",
                "start the parts closer together, or have fewer of them",
            )
        return
    if _says_who_waits(section, passage):
        return
    yield Finding(
        unit.file,
        (*path, "after"),
        f"in section {section.letter} each part starts {figures(after)} counts after the one "
        f"before, but what it dances lasts {figures(phrase)}: for "
        f"{counts_in_words(after - phrase)} nobody moves",
        f"write `after: {figures(phrase)}` or less, or say in `who` that all hold still between",
    )


def _split_again(
    unit: Unit, path: FieldPath, section: Section, before: Passage, passage: Passage
) -> Iterator[Finding]:
    first, second = sorted((parts_in(before), parts_in(passage)))
    if second % first == 0 or passage.who:
        return
    yield Finding(
        unit.file,
        path,
        f"section {section.letter} goes from {parts_in(before)} parts to {parts_in(passage)}, and "
        "nothing says who goes where",
        f"write `parts: {parts_in(before)}`, or say in `who` which pupils are each part",
    )
