"""The counts that a step counts aloud are those of what it dances.

A teacher who drums 40 counts for a part of 48 stops while pupils are still moving. They may be
those of one thing the step names or of all, a thing danced up to four times, or sections with the
joins between them. Steps that name nothing counted are let be.

Bad:
    dances: [A], counts: 7
Good:
    dances: [A]
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from itertools import combinations, pairwise

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.whole import lengths, transition_between, transition_counts
from build_tools.movement.whole_length import whole_counts
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.parts_named import letters_in
from build_tools.views.dance.when_made import names_in, sources
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = (
    "unknown-name",
    "name-used-twice",
    "development-does-not-work",
    "canon-not-spelt-out",
    "counts-do-not-fill-section",
)

_MOST_TIMES = 4
_MOST_TOGETHER = 4


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step whose counts nothing in it has."""
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            if step.counts is None or step.phase in ("warm-up", "cool-down"):
                continue
            known = _known(unit.dance, step)
            if not known or step.counts in known.values():
                continue
            if any(step.counts in some for some in _sums(unit.dance, step, known)):
                continue
            said = listed([f"{name} has {figures(counts)}" for name, counts in known.items()])
            yield Finding(
                lesson.file,
                ("steps", n, "counts"),
                f"step {n + 1} counts {figures(step.counts)} aloud, but {said}",
                _help(unit.dance, step, known),
            )


def _known(dance: Dance, step: Step) -> dict[str, Fraction]:
    """What a step names that has counts, by what it is called."""
    found: dict[str, Fraction] = {}
    for name in names_in(step):
        if name == "whole" and whole_counts(dance).most:
            found["the whole"] = whole_counts(dance).least
        elif (section := dance.sections.get(name)) and section.counts:
            found[f"section {name}"] = section.counts
        elif name in lengths(dance):
            found[f"`{name}`"] = lengths(dance)[name]
    return found


def _sums(dance: Dance, step: Step, known: Mapping[str, Fraction]) -> Iterator[set[Fraction]]:
    """Every number of counts that dancing what the step names may take, the likeliest first."""
    own = [name for name in dict.fromkeys(names_in(step)) if name in lengths(dance)]
    own += [one for one in sorted({s for n in own for s in sources(dance, n)}) if one not in own]
    inside = [
        name
        for letter in (*step.makes, *step.joins)
        if letter in dance.sections
        for passage in dance.sections[letter].danced
        for name in passage.what
    ]
    sizes = {*known.values(), *(lengths(dance)[name] for name in (*own, *inside))}
    yield sizes
    runs = _runs(dance, step)
    yield runs | {run * 2 for run in runs}
    yield {size * times for size in sizes for times in range(2, _MOST_TIMES + 1)}
    own_sizes = [lengths(dance)[name] for name in own]
    for number in range(2, _MOST_TOGETHER + 1):
        yield {sum(chosen, Fraction(0)) for chosen in combinations(own_sizes, number)}
    yield {whole_counts(dance).most} if "the whole" in known else set()
    joins = sum((transition_counts(t) for t in dance.transitions), Fraction(0))
    yield {size + joins for size in sizes}


def _runs(dance: Dance, step: Step) -> set[Fraction]:
    """Sections one after another as a step names them, with the joins between them."""
    found: set[Fraction] = set()
    for letters in (step.joins, letters_in(dance, step.dances), letters_in(dance, step.shows)):
        for first in range(len(letters)):
            for last in range(first + 1, len(letters) + 1):
                run = letters[first:last]
                counts = sum(
                    (dance.sections[one].counts or Fraction(0) for one in run), Fraction(0)
                )
                for pair in pairwise(run):
                    between = transition_between(dance, *pair)
                    counts += transition_counts(between) if between else 0
                found.add(counts)
    return found - {Fraction(0)}


def _help(dance: Dance, step: Step, known: Mapping[str, Fraction]) -> str:
    runs = _runs(dance, step)
    best = max(runs) if runs else max(known.values())
    return f"write `counts: {figures(best)}`, or leave `counts` out"
