"""A cue is given by those who dance before it.

"When the last crab has snapped", and the crabs come only in the section after: nobody is there to
snap. Motifs are known by their names; a cue that says what comes next, and not what is over, is let
be.

Bad:
    transitions: [{from: A, to: B, cue: When the last gust has gone, …}, …]
Good:
    transitions: [{from: A, to: B, cue: When the last drop has gone, …}, …]
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.dance import Dance, Motif, Transition
from build_tools.model.unit import Unit
from build_tools.movement.development import roots
from build_tools.movement.whole import transition_between
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.forms import forms
from build_tools.sentences.reading import read
from build_tools.sentences.sayings import Saying
from build_tools.views.dance.joins import may_follow
from build_tools.views.words.parts_said import stem, stems_in
from build_tools.views.words.plain_words import action_label, listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work", "transition-missing")
_OVER = Saying(
    """
    last|final
    after|once
    is|are ~2 finished|done|over|still|gone|stopped|ended|snapped|low|down
    has|have *
    finish|finishes|end|ends
    come|comes ~1 to ~1 rest|end|stop
    on ~3 count|counts of
    """
)
_LEAST = 4
"""Letters of a name that is no everyday word."""
_COMES = re.compile(r"\b(?:ready|about) (?:to|for)\b.*", re.IGNORECASE | re.DOTALL)
"""What comes next is not what is over."""
_MOVES = 2
"""Moves of a motif that together can be meant of no other."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each cue that waits for a motif which is not danced before it."""
    dance = unit.dance
    for n, transition in enumerate(dance.transitions):
        if _OVER.said(transition.cue) is None:
            continue
        named = _named(dance, transition.cue)
        before = _before(dance, transition)
        if not named or not before:
            continue
        danced = {letter: _danced(dance, letter) for letter in before}
        if any(named & names for names in danced.values()):
            continue
        elsewhere = [x for x in dance.sections if named & _danced(dance, x)]
        yield Finding(
            unit.file,
            ("transitions", n, "cue"),
            f"`cue` waits for the {listed(sorted(named))}, danced in section {listed(elsewhere)}, "
            f"but section {listed(sorted(before))} comes before it",
            "name what is danced before the change",
        )


def _named(dance: Dance, cue: str) -> frozenset[str]:
    """The motifs that a cue names, or knows by two of their moves: after the rush and the spin."""
    cue = _COMES.sub("", cue)
    said = stems_in(cue)
    words = frozenset(word.form for word in read(cue).words)
    by_moves = (
        word
        for name, motif in dance.motifs.items()
        if _moves_said(motif, words) >= _MOVES
        for word in name.split("-")
        if len(word) >= _LEAST
    )
    return frozenset((*(name for name in _names(dance) if stem(name) in said), *by_moves))


def _moves_said(motif: Motif, words: frozenset[str]) -> int:
    labels = {action_label(action) for action in motif.actions}
    return sum(not words.isdisjoint(forms(label)) for label in labels)


def _names(dance: Dance) -> frozenset[str]:
    """The words by which motifs are called."""
    return frozenset(
        word for name in dance.motifs for word in name.split("-") if len(word) >= _LEAST
    )


def _danced(dance: Dance, letter: str) -> frozenset[str]:
    """The words for what a section dances, its name and its idea among them."""
    section = dance.sections[letter]
    motifs = {root for p in section.danced for what in p.what for root in roots(dance, what)}
    said = stems_in(f"{section.name or ''} {section.idea} {' '.join(section.improvised_rules)}")
    return frozenset(
        word
        for word in _names(dance)
        if stem(word) in said or any(word in motif.split("-") for motif in motifs)
    )


def _before(dance: Dance, transition: Transition) -> frozenset[str]:
    """The sections that it may come after."""
    return frozenset(
        first
        for first, second in may_follow(dance)
        if transition_between(dance, first, second) is transition
    )
