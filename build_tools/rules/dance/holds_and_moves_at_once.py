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
    stay|stays|keep|keeps|are|be ~1 still
    freeze|freezes
    wait|waits
    """
)
_MOVES = Saying(
    """
    open|opens|turn|turns|spin|spins|travel|travels|run|runs|jump|jumps|drift|drifts|wave|waves
    sway|sways|float|floats|reach|reaches|walk|walks|rise|rises|swing|swings
    """
)
_CLAUSES = re.compile(r",|;|\band\b|\bwhile\b")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each rule of an improvised section that moves a part which holds."""
    for letter, section in unit.dance.sections.items():
        for passage in section.danced:
            for role, what, words in _holding(passage):
                names = {stem(word) for word in (role, what.partition("-")[0])}
                for n, rule in enumerate(section.improvised_rules):
                    moves = _MOVES.said(rule)
                    if moves is None or _HOLDS.said(rule) or not names & stems_in(rule):
                        continue
                    yield Finding(
                        unit.file,
                        ("sections", letter, "improvised", "rules", n),
                        f"rule {n + 1} of section {letter} lets the {what.partition('-')[0]} move "
                        f'("{moves.text}"), but `who` says "{words}", and {role} dance `{what}`',
                        "say in both lines whether they hold or move",
                    )


def _holding(passage: Passage) -> Iterator[tuple[str, str, str]]:
    """The roles that `who` keeps still, each with what it dances and the words."""
    for clause in _CLAUSES.split(passage.who or ""):
        if _HOLDS.said(clause) is None:
            continue
        for role, what in zip(passage.roles, passage.what, strict=False):
            if stem(role) in stems_in(clause):
                yield role, what, clause.strip()
