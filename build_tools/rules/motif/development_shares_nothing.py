"""A development keeps at least one action of the motif it comes from.

Where every action is new, nobody sees the motif in it: it is a contrast, and a motif of its own.

Bad:
    gust: {actions: [{travel: 4}], …}
    gust-new: {of: gust, device: replacing an action, replace: {action: 1, by: {turn: 4}}}
Good:
    gust: {actions: [{travel: 4}, {jump: 2}, {turn: 2}], …}
    gust-new: {of: gust, device: replacing an action, replace: {action: 1, by: {turn: 4}}}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of, kept, roots
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = (
    "Smith-Autard, Dance Composition, chapter abstracts: a development varies the motif, and "
    "contrast needs new material"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each development without an action of any motif it comes from."""
    dance = unit.dance
    for name in dance.developments:
        actions, motifs = actions_of(dance, name), sorted(roots(dance, name))
        if any(kept(dance.motifs[m].actions, actions) for m in motifs):
            continue
        number = sum(len(dance.motifs[m].actions) for m in motifs)
        yield Finding(
            unit.file,
            ("developments", name),
            f"`{name}` keeps 0 of {number} {'action' if number == 1 else 'actions'} of "
            f"{listed([f'`{m}`' for m in motifs])}",
            f"keep one of its actions, or make `{name}` a motif of its own",
        )
