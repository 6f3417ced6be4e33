"""What of a section is off where its counts are borne out, and what it dances does not fill them.

The section's counts are borne out where the steps that dance it count as many, or where what is
heard in it lasts as long. Then the fault is in what is danced: in the starts of a canon, in a
phrase that lasts a count too many wherever it is danced, or in one passage.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from fractions import Fraction

from build_tools.model.dance import Dance, Passage, Section
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import CANONS, passage_counts
from build_tools.movement.sounding import length_of
from build_tools.movement.whole import lengths
from build_tools.problem import FieldPath
from build_tools.sentences.counts_of_moves import lengths_said
from build_tools.views.dance.when_made import names_in, steps_in_order
from build_tools.views.words.dancers_named import dancers_named
from build_tools.views.written.unit_text import unit_text

_FEWEST_PARTS = 2
"""In a canon of one part nobody follows."""


def place_to_mend(unit: Unit, section: Section, counts: Fraction, danced: Fraction) -> FieldPath:
    """Where to mend a section of `counts` in which `danced` counts are danced."""
    path: FieldPath = ("sections", section.letter)
    counted = _counted(unit, section)
    heard = length_of(section.heard, counted=True, tempo=unit.dance.tempo)
    by_steps = counts in counted and danced not in counted
    if not by_steps and (heard != counts or danced in counted):
        return (*path, "counts")
    over = danced - counts
    starts = [n for n, one in enumerate(section.danced) if _starts_off(one, over)]
    known, passages = lengths(unit.dance), list(enumerate(section.danced))
    parts = [n for n, one in passages if _by_parts(one, known, over)]
    if len(starts) == 1 and not parts:
        return (*path, "danced", starts[0], "after")
    if not parts and (phrase := _phrase_off(unit, section, over)):
        return phrase
    if by_steps:
        for fits in (_by_parts, _by_times):
            for n, passage in passages:
                if fits(passage, known, over):
                    return (*path, "danced", n)
        for n, passage in passages:
            if passage_counts(passage, known) % unit.dance.phrase not in _ends(unit.dance):
                return (*path, "danced", n)
    return (*path, "counts")


def _counted(unit: Unit, section: Section) -> set[Fraction | None]:
    """What the steps count that dance this section and no other."""
    return {
        step.counts
        for _, _, step in steps_in_order(unit)
        if {n for n in names_in(step) if n in unit.dance.sections or n == "whole"}
        == {section.letter}
    }


def _ends(dance: Dance) -> tuple[Fraction, Fraction]:
    """What is left of a phrase where a passage ends with one, or with half of one."""
    return Fraction(0), Fraction(dance.phrase, 2)


def _starts_off(passage: Passage, over: Fraction) -> bool:
    """Whether it is a canon that other starts would make as long as is left for it."""
    if passage.fit not in CANONS or passage.after is None or not passage.parts:
        return False
    after = passage.after - over / (passage.parts - 1) if passage.parts > 1 else Fraction(0)
    return after > 0 and after.denominator == 1 and passage.times == 1


def _by_parts(passage: Passage, known: Mapping[str, Fraction], over: Fraction) -> bool:
    """Whether it is a canon with too many parts, or with fewer than its words name."""
    if passage.fit not in CANONS or passage.parts is None:
        return False
    if over < 0 and dancers_named(passage.who or "") in (None, passage.parts):
        return False
    long = sum((known[name] for name in passage.what), Fraction(0)) * passage.times
    apart = passage.after if passage.after is not None else long
    return not over % apart and passage.parts - over / apart >= _FEWEST_PARTS


def _by_times(passage: Passage, known: Mapping[str, Fraction], over: Fraction) -> bool:
    """Whether dancing it once more or less would mend it."""
    return passage.times > 1 and abs(over) == passage_counts(passage, known) / passage.times


def _phrase_off(unit: Unit, section: Section, over: Fraction) -> FieldPath | None:
    """The one phrase that ends with no phrase of the sound, and would mend all if it did."""
    dance, known = unit.dance, lengths(unit.dance)
    often: Counter[str] = Counter()
    for passage in section.danced:
        if passage.fit != "unison":
            continue
        for name in passage.what:
            often[_first_so_long(dance, name)] += passage.times
    found = [
        (name, over / times)
        for name, times in often.items()
        if known[name] % dance.phrase not in _ends(dance)
        # a move is off by a count or three; by more, something is left out or danced too often
        and abs(over / times) < dance.phrase / 2
        and known[name] - over / times > 0
        and (known[name] - over / times) % dance.phrase in _ends(dance)
    ]
    return _written_at(unit, *found[0]) if len(found) == 1 else None


def _first_so_long(dance: Dance, name: str) -> str:
    """The motif or development that this one has its length from."""
    known = lengths(dance)
    while (one := dance.developments.get(name)) is not None and known[one.of] == known[name]:
        name = one.of
    return name


def _written_at(unit: Unit, name: str, over: Fraction) -> FieldPath:
    """Where the length of a phrase is written that is `over` counts too long."""
    development = unit.dance.developments.get(name)
    if development is None:
        moves = list(_said_otherwise(unit, name, over))
        path: FieldPath = ("motifs", name)
        return (*path, "actions", moves[0]) if len(moves) == 1 else path
    path = ("developments", name)
    if development.replacement is not None:
        return (*path, "replace", "by")
    return (*path, "counts") if development.counts else path


def _said_otherwise(unit: Unit, name: str, over: Fraction) -> Iterator[int]:
    """The moves of a motif that words give the counts they would have to have."""
    actions = unit.dance.motifs[name].actions
    words = tuple(dict.fromkeys(action.word for action in actions if action.word))
    if not words:
        return
    said = {
        (claim.moves[0], Fraction(claim.counts))
        for _, fields in unit_text(unit).documents
        for field in fields
        for claim in lengths_said(field.text, words, ())
        if claim.name is None and len(claim.moves) == 1
    }
    for n, action in enumerate(actions):
        if action.word and (action.word.casefold(), action.counts - over) in said:
            yield n
