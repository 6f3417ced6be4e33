"""The number of counts that a step says is a number that its dance has.

"Build it in sixteen counts" for a build of twenty leaves the last four danced over the next part.
The number may be that of a move, a motif, a passage, a section or a join; in a canon, the counts
after the one before are those between the parts.

Bad:
    sections: {B: {danced: [{what: [wave], as: canon, parts: 4, after: 4}], …}}
    a step: makes: [B], say: Each number starts two counts after the last.
Good:
    sections: {B: {danced: [{what: [wave], as: canon, parts: 4, after: 4}], …}}
    a step: makes: [B], say: Each number starts four counts after the last.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import passage_counts
from build_tools.movement.development import actions_of
from build_tools.movement.whole import lengths, transition_between
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.numbers_of_counts import CountsSaid, counts_said, lengths_after
from build_tools.views.dance.when_made import names_in, sources, steps_in_order
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = (
    "unknown-name",
    "name-used-twice",
    "development-does-not-work",
    "canon-not-spelt-out",
    "counts-do-not-fill-section",
)

_FIELDS = ("say", "task")
_NOT_OF_THE_DANCE = ("warm-up", "cool-down", "explore")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each number of counts that nothing in its step has."""
    dance = unit.dance
    for place, lesson, step in steps_in_order(unit):
        names = names_in(step)
        if step.phase in _NOT_OF_THE_DANCE or not names or "whole" in names:
            continue
        for field in _FIELDS:
            for said in _said(getattr(step, field) or ""):
                known = _apart(dance, step) if said.apart else _known(dance, step)
                if said.waited and (apart := _apart(dance, step)):
                    known = apart
                    if any(said.counts % one == 0 for one in apart):
                        continue
                if not known or said.counts in known:
                    continue
                yield Finding(
                    lesson.file,
                    ("steps", place.step, field),
                    f"`{field}` says `{said.said}`, but what step {place.step + 1} dances has "
                    f"{listed([str(n) for n in sorted(known)], 'or')}",
                    "say the number that the dance has, or mend the dance",
                )


def _said(text: str) -> Iterator[CountsSaid]:
    """The numbers of counts in a text, and bare ones beside them: four counts, hop for three."""
    said = tuple(counts_said(text))
    yield from said
    if said:
        known = {one.counts for one in said}
        for number in lengths_after(text, ("for",)):
            if number not in known:
                yield CountsSaid(number, f"for {number}", apart=False)


def _apart(dance: Dance, step: Step) -> set[Fraction]:
    """The counts between one part's start and the next in the sections of a step."""
    return {
        passage.after
        for letter in names_in(step)
        if letter in dance.sections
        for passage in dance.sections[letter].danced
        if passage.after is not None
    }


def _known(dance: Dance, step: Step) -> set[Fraction]:
    """Every number of counts in what a step names; none where something in it is not counted."""
    named = names_in(step)
    sections = [dance.sections[name] for name in named if name in dance.sections]
    if any(section.counts is None for section in sections):
        return set()
    found: set[Fraction] = {Fraction(dance.phrase)} | ({step.counts} if step.counts else set())
    moves = {name for name in named if name in lengths(dance)}
    for section in sections:
        found |= {section.counts} if section.counts else set()
        found |= {passage_counts(passage, lengths(dance)) for passage in section.danced}
        moves |= {name for passage in section.danced for name in passage.what}
    for name in {*moves, *(s for n in moves for s in sources(dance, n))}:
        found.add(lengths(dance)[name])
        found |= {action.counts for action in actions_of(dance, name)}
    for letters in (step.joins, step.dances):
        for pair in pairwise(letters):
            between = transition_between(dance, *pair)
            found |= {between.counts} if between and between.counts else set()
    return found
