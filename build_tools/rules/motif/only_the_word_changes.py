"""A development changes what the body does, not only what it is called.

Where the counts, the level, the way and all the rest stay, and only the word is new, pupils dance
the same thing twice under two names.

Bad:
    drift: {actions: [{travel: 4, as: float}, {jump: 2, as: hop}], …}
    drift-new:
      of: drift
      device: replacing an action
      replace: {action: 1, by: {travel: 4, as: glide}}
Good:
    drift: {actions: [{travel: 4, as: float}, {jump: 2, as: hop}], …}
    drift-new:
      of: drift
      device: replacing an action
      replace: {action: 1, by: {turn: 4, as: whirl}}
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields
from operator import attrgetter

from build_tools.model.dance import Action
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of, what_changes
from build_tools.movement.devices import Actions
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = (
    "Smith-Autard, Dance Composition, chapter abstracts: a development varies the motif, and what "
    "varies nothing is a repetition"
)
NEEDS = (
    "unknown-name",
    "name-used-twice",
    "development-does-not-work",
    "development-changes-nothing",
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each development that differs from its source in words alone."""
    dance = unit.dance
    for name, development in dance.developments.items():
        before, after = actions_of(dance, development.of), actions_of(dance, name)
        if before == after or _unnamed(before) != _unnamed(after):
            continue
        other = actions_of(dance, development.joined_to) if development.joined_to else ()
        if not what_changes(before, development, other):
            continue
        n, old, new = next(
            (n, a, b) for n, (a, b) in enumerate(zip(before, after, strict=True), start=1) if a != b
        )
        yield Finding(
            unit.file,
            ("developments", name),
            f"`{name}` ({development.device}) calls action {n} {new.word or 'nothing'} in place of "
            f"{old.word or 'nothing'}, and changes nothing else",
            "change what the body does in it, such as its kind, level or direction",
        )


_ALL_BUT_ITS_WORD = attrgetter(*(one.name for one in fields(Action) if one.name != "word"))


def _unnamed(actions: Actions) -> list[tuple[object, ...]]:
    return [_ALL_BUT_ITS_WORD(action) for action in actions]
