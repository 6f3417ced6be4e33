"""What pupils meet of actions, space, dynamics and relationships: what they do, never mentions.

A unit meets a word where a step makes, develops, joins, dances or shows something that has it.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from build_tools.model.dance import Action, Dance
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.movement.effort import qualities
from build_tools.views.dance.when_made import inside

HEADINGS: Mapping[str, tuple[str, ...]] = {
    "actions": ("travel", "turn", "jump", "gesture", "stillness", "transfer"),
    "space": (
        "low", "middle", "high", "forwards", "backwards", "sideways", "diagonal", "up", "down",
        "straight", "curved", "zigzag", "small", "big", "scattered", "line", "two lines", "file",
        "circle", "semicircle", "horseshoe", "V", "cluster",
    ),
    "dynamics": (
        "strong", "light", "sudden", "sustained", "direct", "indirect", "free", "bound", "punch",
        "press", "slash", "wring", "dab", "glide", "flick", "float",
    ),
    "relationships": (
        "alone", "pairs", "threes", "fours", "fives", "sixes", "half class", "whole class",
        "unison", "canon", "question and answer", "side by side", "mirror", "match",
        "lead and follow", "contrast", "complement",
    ),
}  # fmt: skip
"""The words of the schemas, under the headings of the movement framework."""


def met(unit: Unit) -> frozenset[str]:
    """Every word of `HEADINGS` that pupils of the unit meet by doing."""
    dance, words = unit.dance, set[str]()
    done: set[str] = set()
    for lesson in unit.lessons:
        for step in lesson.steps:
            parts = (*step.makes, *step.develops, *step.joins, *step.dances, *step.shows)
            if parts:
                words.add(step.grouping)
                done |= inside(dance, parts)
    for name in done:
        if name in dance.sections:
            words |= _of_section(dance, name)
        else:
            words |= {word for action in actions_of(dance, name) for word in _of_action(action)}
            words |= _of_development(dance, name)
    return frozenset(words)


def devices_done(unit: Unit) -> tuple[str, ...]:
    """The devices by which pupils develop something in a step, in order."""
    known = unit.dance.developments
    return tuple(
        dict.fromkeys(
            known[name].device
            for lesson in unit.lessons
            for step in lesson.steps
            for name in step.develops
            if name in known
        )
    )


def _of_section(dance: Dance, letter: str) -> set[str]:
    section = dance.sections[letter]
    found = {section.start.formation, section.end.formation}
    for passage in section.danced:
        # the kinds of canon are one thing to look for across a bank
        found.add("canon" if passage.fit.startswith("canon") else passage.fit)
    return found


def _of_action(action: Action) -> Iterable[str]:
    yield from action.kinds
    for range_ in (action.level, action.size):
        if range_:
            yield from range_.split(" to ")
    yield from filter(None, (action.direction, action.pathway))
    # an action of effort is its name and its qualities: glide is light, sustained and direct
    yield from (*action.dynamics, *qualities(action.dynamics))


def _of_development(dance: Dance, name: str) -> set[str]:
    development = dance.developments.get(name)
    if development is None:
        return set()
    mirror = {"mirror"} if development.device == "mirror" else set()
    return mirror | {w for w in (development.relationship, development.formation) if w}
