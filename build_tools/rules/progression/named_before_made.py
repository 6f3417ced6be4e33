"""Pupils are asked to dance only what they have made by then.

A step says "dance the ember" in lesson 1, and the ember is made in lesson 3: pupils look at each
other, and the teacher turns pages. What is told of a later lesson, and an everyday word that is
also a motif's name, are let be.

Bad:
    lesson 1, say: Now dance part C.
Good:
    lesson 1, say: Now dance part A.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.own_names import (
    danced_by_moves,
    danced_by_name,
    listed_moves,
    named_title,
)
from build_tools.views.dance.when_made import StepPlace, progress

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each text that has pupils dance what a later lesson makes."""
    ways = progress(unit)
    first = {name: way.made[0] for name, way in ways.items() if way.made}
    for lesson in unit.lessons:
        later = {name: place for name, place in first.items() if place.lesson > lesson.number}
        if not later:
            return
        moves = {name: _own_moves(unit, name, later) for name in later if name in unit.dance.motifs}
        for n, step in enumerate(lesson.steps):
            for field, text in _texts(step):
                found = _named(unit, text, later, moves)
                if found is None:
                    continue
                name, said = found
                yield Finding(
                    lesson.file,
                    ("steps", n, field),
                    f'step {n + 1} has pupils dance "{said}", but `{name}` is not made before '
                    f"{first[name]}",
                    "name what pupils have made by now, or say that it comes later",
                )


def _texts(step: Step) -> Iterator[tuple[str, str]]:
    for field, text in (("into", step.into), ("say", step.say), ("task", step.task)):
        if text:
            yield field, text


def _named(
    unit: Unit,
    text: str,
    later: Mapping[str, StepPlace],
    moves: Mapping[str, tuple[str, ...]],
) -> tuple[str, str] | None:
    """What of `later` the text has pupils dance; `moves` are the words of a motif's own moves."""
    dance = unit.dance
    for name in later:
        said = None
        if name in dance.sections:
            said = named_title(text, name, dance.sections[name].idea)
        elif name in dance.motifs or name in dance.developments:
            said = danced_by_name(text, name)
        if said is None and name in moves:
            said = danced_by_moves(text, moves[name]) or listed_moves(text, moves[name])
        if said:
            return name, said
    return None


def _own_moves(unit: Unit, name: str, later: Mapping[str, StepPlace]) -> tuple[str, ...]:
    """The words of its moves that no motif has which is made by now."""
    had = {
        action.word
        for other, motif in unit.dance.motifs.items()
        if other not in later
        for action in motif.actions
    }
    words = (action.word for action in unit.dance.motifs[name].actions)
    return tuple(dict.fromkeys(word for word in words if word and word not in had))
