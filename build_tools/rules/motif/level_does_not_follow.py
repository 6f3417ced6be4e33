"""An action that rises or sinks starts at the level where the one before it ended.

A sink from high after a move that ended low needs a rise that nobody has counted. Pupils leave out
one or the other. Moves of one part of the body, jumps and held shapes are let be.

Bad:
    actions:
      - {transfer: 2, as: rock, level: middle to low}
      - {transfer: 2, as: sink, level: high to low}
Good:
    actions:
      - {transfer: 2, as: rock, level: low to high}
      - {transfer: 2, as: sink, level: high to low}
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import action_label

GRADE: Grade = "question"
SOURCE = "common practice, no source"

_LEFT_ALONE = ("gesture", "jump", "stillness")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each action of a motif that starts at another level."""
    for name, motif in unit.dance.motifs.items():
        for n, (before, action) in enumerate(pairwise(motif.actions), start=1):
            if action.kind in _LEFT_ALONE or before.kind in ("jump", "gesture"):
                continue
            start, rises, _ = (action.level or "").partition(" to ")
            ended = (before.level or "").rpartition(" to ")[2]
            if not rises or not ended or ended == start:
                continue
            yield Finding(
                unit.file,
                ("motifs", name, "actions", n),
                f"`{name}`: {action_label(before)} ends {ended}, but {action_label(action)} starts "
                f"{start} (`level: {action.level}`)",
                f"let {action_label(action)} start {ended}, or put a move between them",
            )
