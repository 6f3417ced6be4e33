"""A part that holds on in one line does not move in another.

`who` says that twos hold on, and a rule of the same section lets the anemones, which twos dance,
open and turn: half the class asks which. The part's name, its role or what it dances is looked for
in the rules.

Bad:
    danced: [{what: [gust, reed], as: side by side, parts: 2, who: ones blow and twos hold on, roles: [ones, twos]}]
    rules: [Reeds turn and open on the spot.]
Good:
    danced: [{what: [gust, reed], as: side by side, parts: 2, who: ones blow and twos hold on, roles: [ones, twos]}]
    rules: [Reeds stay quite still.]
"""  # noqa: E501 - an example stands on one line

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.dance import Passage
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.words.parts_said import stem, stems_in

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)
_HOLDS = Saying(
    """
    hold|holds ~1 on|still
    hold|holds|keep|keeps ~1 shape|place|position|pose
    stay|stays|keep|keeps|are|be|stand|stands ~1 still
    stay|stays put
    freeze|freezes|motionless|frozen
    are|stay|be rocks|stones|statues|trees
    wait|waits
    """
)
_MOVES = Saying(
    """
    open|opens|turn|turns|spin|spins|travel|travels|run|runs|jump|jumps|drift|drifts|wave|waves
    sway|sways|float|floats|reach|reaches|walk|walks|rise|rises|swing|swings
    move|moves|stir|stirs|hop|hops|skip|skips|sink|sinks|circle|circles|go|goes|roll|rolls
    """
)
_STILL = Saying("stir|stirs|budge|budges|move|moves|moving|shift|shifts")
"""What is denied of a part that holds: twos who don't stir."""
_EVERY_PART = Saying("both|every|each|all ~1 partner|dancer|part\neveryone|everybody\nboth")
_NOBODY = Saying("stand|stands|stay|stays|keep|keeps|is|are still\nhold|holds still")
"""What is denied of every part: nobody stands still."""
_CLAUSES = re.compile(r",|;|\band\b|\bwhile\b|\bbut\b")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each rule of an improvised section that moves a part which holds."""
    for letter, section in unit.dance.sections.items():
        for passage in section.danced:
            for role, what, words in _holding(passage):
                names = frozenset(stem(word) for word in (role, what.partition("-")[0]))
                others = _names(passage) - names
                for n, rule in enumerate(section.improvised_rules):
                    moves = _moved_in(rule, names, others)
                    if moves is None:
                        continue
                    yield Finding(
                        unit.file,
                        ("sections", letter, "improvised", "rules", n),
                        f"rule {n + 1} of section {letter} lets the {what.partition('-')[0]} move "
                        f'("{moves}"), but `who` says "{words}", and {role} dance `{what}`',
                        "say in both lines whether they hold or move",
                    )


def _names(passage: Passage) -> frozenset[str]:
    return frozenset(
        stem(word) for word in (*passage.roles, *(what.partition("-")[0] for what in passage.what))
    )


def _moved_in(rule: str, names: frozenset[str], others: frozenset[str]) -> str | None:
    """The words of a rule that move the part called by one of `names`; None where none do.

    In each clause the first that is named is the one who does it: ones may circle round the twos.
    """
    if _NOBODY.denied(rule):
        return rule.strip()
    for clause in _CLAUSES.split(rule):
        moves = _MOVES.said(clause)
        if moves is None or _HOLDS.said(clause):
            continue
        first = next((s for w in clause.lower().split() if (s := stem(w)) in names | others), None)
        if first in names or (first is None and _EVERY_PART.said(clause)):
            return moves.text
    return None


def _holding(passage: Passage) -> Iterator[tuple[str, str, str]]:
    """The roles that `who` keeps still, each with what it dances and the words."""
    for clause in _CLAUSES.split(passage.who or ""):
        held = _HOLDS.said(clause) or _STILL.denied(clause)
        if held is None:
            continue
        before = clause[: clause.find(held.text)].lower().split()
        roles = {stem(role) for role in passage.roles}
        last = next((one for word in reversed(before) if (one := stem(word)) in roles), None)
        for role, what in zip(passage.roles, passage.what, strict=False):
            if stem(role) == last or (last is None and stem(role) in stems_in(clause)):
                yield role, what, clause.strip()
