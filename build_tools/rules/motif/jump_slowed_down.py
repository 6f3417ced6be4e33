"""A slower motif leaves its jumps as quick as they were.

A travel, a turn or a sink can take twice as long. Nobody can hang in the air: a jump given more
counts becomes a wait, or two jumps. Give the counts to the move before it or after it.

Bad:
    drift: {actions: [{travel: 4, as: float}, {jump: 2, as: hop}, {transfer: 2, as: settle}], …}
    drift-slow: {of: drift, device: change of speed, counts: [8, 4, 4]}
Good:
    drift: {actions: [{travel: 4, as: float}, {jump: 2, as: hop}, {transfer: 2, as: settle}], …}
    drift-slow: {of: drift, device: change of speed, counts: [8, 2, 6]}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import action_label

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_DEVICES = ("change of speed", "change of rhythm")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each jump that a change of speed or rhythm makes longer."""
    dance = unit.dance
    for name, development in dance.developments.items():
        if development.device not in _DEVICES or not development.counts:
            continue
        pairs = zip(actions_of(dance, development.of), actions_of(dance, name), strict=True)
        for n, (before, after) in enumerate(pairs):
            if before.kind != "jump" or after.counts <= before.counts:
                continue
            yield Finding(
                unit.file,
                ("developments", name, "counts", n),
                f"`{name}` gives the jump {action_label(before)} {figures(after.counts)} counts, "
                f"and in `{development.of}` it takes {figures(before.counts)}: nobody can hang in "
                "the air",
                f"leave it at {figures(before.counts)}, and give "
                f"{figures(after.counts - before.counts)} to the action before or after it",
            )
