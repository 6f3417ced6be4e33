"""A stillness stays: it has no direction, no path, and one level and size.

A held shape that is written with a way to go, or as rising, leaves the teacher to guess whether
pupils move. It is often a change that has landed on the wrong action.

Bad:
    {stillness: 2, as: hide, level: high to low}
Good:
    {stillness: 2, as: hide, level: low}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Action
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import sources
from build_tools.views.words.plain_words import action_label, listed

GRADE: Grade = "question"
SOURCE = (
    "NSW Creative Arts K-6 Syllabus, glossary, and the six body actions as taught in UK dance: "
    "stillness is a held shape"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each stillness that is written as moving, where it first is.

    What is made from a motif that is told has its fault from there, and is mended with it.
    """
    dance = unit.dance
    told: set[Action] = set()
    told_in: set[str] = set()
    for name in (*dance.motifs, *dance.developments):
        if not told_in.isdisjoint(sources(dance, name)):
            continue
        for n, action in enumerate(actions_of(dance, name)):
            if action in told or not (moving := _moving(action)):
                continue
            told.add(action)
            told_in.add(name)
            path: FieldPath = ("developments", name)
            if name in dance.motifs:
                path = ("motifs", name, "actions", n)
            yield Finding(
                unit.file,
                path,
                f"action {n + 1} of `{name}`, {action_label(action)}, is a stillness, but it has "
                f"{listed(moving)}",
                "take that off the stillness, put it on the action before it, or write another "
                "kind of action",
            )


def _moving(action: Action) -> list[str]:
    """What a stillness is said to do that only a movement can."""
    if action.kind != "stillness":
        return []
    said = [
        ("direction", action.direction),
        ("pathway", action.pathway),
        *((field, v) for field, v in (("level", action.level), ("size", action.size)) if _to(v)),
        *(("with", kind) for kind in action.also if kind != "gesture"),
    ]
    return [f"`{field}: {value}`" for field, value in said if value]


def _to(value: str | None) -> bool:
    return value is not None and " to " in value
