"""A word that pupils call stands for one move in the whole dance.

Pupils learn the dance by its words. If stretch rises in one motif and sinks in the next, half the
class does one and half the other. A move may take other counts or another feel, and a development
may change it; its kind, its level and its way stay the same.

Bad:
    warp: {actions: [{gesture: 2, as: unroll, level: low to high}], …}
    weave: {actions: [{gesture: 2, as: unroll, level: high to low}], …}
Good:
    warp: {actions: [{gesture: 2, as: unroll, level: low to high}], …}
    weave: {actions: [{gesture: 2, as: unroll, level: low to high}], …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Action
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = "common practice, no source"

_FIELDS = ("kind", "level", "direction", "pathway")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each action of a motif whose word an earlier motif has otherwise."""
    first: dict[str, tuple[str, Action]] = {}
    for name, motif in unit.dance.motifs.items():
        for n, action in enumerate(motif.actions):
            if not action.word:
                continue
            where, earlier = first.setdefault(action.word.casefold(), (name, action))
            apart = next((f for f in _FIELDS if _differ(earlier, action, f)), None)
            if where == name or apart is None:
                continue
            yield Finding(
                unit.file,
                ("motifs", name, "actions", n),
                f"`{action.word}` has {_said(action, apart)} in `{name}`, but in `{where}` "
                f"{_said(earlier, apart)}",
                f"write it as in `{where}`, or call it by another word",
            )


def _differ(first: Action, second: Action, field: str) -> bool:
    """Whether two actions both say something in a field, and not the same."""
    one, other = getattr(first, field), getattr(second, field)
    return bool(one and other and one != other)


def _said(action: Action, field: str) -> str:
    return f"`{action.kind}`" if field == "kind" else f"`{field}: {getattr(action, field)}`"
