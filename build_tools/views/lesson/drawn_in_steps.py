"""Which motifs and developments each step of a lesson makes, changes or dances, and draws."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.movement.development import roots
from build_tools.views.dance.left_open import OPEN, drawn_actions
from build_tools.views.dance.parts_named import motifs_in
from build_tools.views.lesson.notes_in_steps import danced_in


def drawn_in_steps(dance: Dance, steps: Sequence[Step]) -> tuple[tuple[str, ...], ...]:
    """What each step makes or changes and a class dances; what only leads to it is left out."""
    in_sections = _in_sections(dance)
    seen: set[str] = set()
    found = []
    for step in steps:
        named = [n for n in (*step.makes, *step.develops) if _is_motif(dance, n) and n not in seen]
        seen |= set(named)
        kept = [n for n in named if n in in_sections or not _leads_to_drawn(dance, n, named)]
        found.append(tuple(n for n in kept if not _mirrors(dance, n, seen)))
    return tuple(found)


def danced_by(dance: Dance, step: Step) -> tuple[str, ...]:
    """What a step makes, changes or dances again, without what only leads to another of its own."""
    own = [n for n in (*step.makes, *step.develops) if _is_motif(dance, n)]
    inside = motifs_in(dance, (*step.makes, *danced_in(step)))
    before = {n for n in own if n not in _in_sections(dance) and _leads_to_drawn(dance, n, own)}
    return tuple(n for n in motifs_in(dance, (*own, *inside)) if n not in before)


def _in_sections(dance: Dance) -> set[str]:
    return {name for s in dance.sections.values() for passage in s.danced for name in passage.what}


def _mirrors(dance: Dance, name: str, seen: set[str]) -> bool:
    """Whether it is only the mirror of what the lesson draws: the same with sides swapped."""
    development = dance.developments.get(name)
    return development is not None and development.device == "mirror" and development.of in seen


def _leads_to_drawn(dance: Dance, name: str, named: Sequence[str]) -> bool:
    """Whether another of those that the step makes comes of it and shows its own moves."""
    return any(
        other != name
        and name in _sources(dance, other)
        and any(action.kind != OPEN for action in drawn_actions(dance, other))
        for other in named
    )


def _sources(dance: Dance, name: str) -> set[str]:
    found: set[str] = set()
    at = dance.developments.get(name)
    while at is not None:
        found.add(at.of)
        at = dance.developments.get(at.of)
    return found | set(roots(dance, name))


def _is_motif(dance: Dance, name: str) -> bool:
    return name in dance.motifs or name in dance.developments
