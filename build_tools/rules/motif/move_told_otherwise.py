"""What the notes say of a move fits how the move is written.

A teacher who does not dance goes by the line in the notes: "**Pop**: three long leaps". If the
motif has small jumps there, one of the two is from an earlier plan, and pupils do what they hear.

Bad:
    actions: [{jump: 2, as: hop, size: small}]
    notes: "**Hop**: a great big leap."
Good:
    actions: [{jump: 2, as: hop, size: small}]
    notes: "**Hop**: a small jump, two feet to two feet."
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from build_tools.model.dance import Action
from build_tools.model.unit import Unit
from build_tools.movement.effort import qualities
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.actions_written import actions_written

GRADE: Grade = "question"
SOURCE = "common practice, no source"

_LINE = re.compile(r"^\W*(?P<word>[a-z][a-z ]{1,22}?)\W*(?::|\bis\b|\bare\b)(?P<told>.*)$")
_BIG = (
    r"\b(?:big|bigger|biggest|large|huge|great|long(?! (?:backs?|necks?|spines?)\b)|wide|"
    r"enormous|far)\b"
)
"""A long back is how one stands or sits, whatever the size of the move."""
_SMALL = r"\b(?:small|smaller|smallest|tiny|little|short)\b"
_QUICK = r"\b(?:quick|quickly|sudden|suddenly|sharp|sharply|fast)\b"
_SLOW = r"\b(?:slow|slowly|smooth|smoothly|gradual|gradually|gentle|gently)\b"
_AGAINST: Mapping[str, str] = {
    "small": _BIG,
    "big": _SMALL,
    "sustained": _QUICK,
    "sudden": _SLOW,
    "forwards": r"\b(?:backwards|sideways)\b",
    "backwards": r"\b(?:forwards|sideways)\b",
    "sideways": r"\b(?:forwards|backwards)\b",
}
_NOT = re.compile(r"\b(?:not|never|no|nobody|without|rather than|instead of)\b")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line about one move that goes against its size, time or way."""
    actions: dict[str, list[Action]] = {}
    for _, action in actions_written(unit.dance):
        if action.word:
            actions.setdefault(action.word.lower(), []).append(action)
    for lesson in unit.lessons:
        for place, line in enumerate(lesson.notes.split("\n")):
            if told := _told(line, actions):
                yield Finding(lesson.file, ("notes", place), *told)
        for n, line in enumerate(lesson.safety):
            if told := _told(line, actions):
                yield Finding(lesson.file, ("safety", n), *told)


def _told(line: str, actions: Mapping[str, list[Action]]) -> tuple[str, str] | None:
    """What is wrong with a line about one move, and how to mend it."""
    found = _LINE.match(line.lower().replace("*", ""))
    if found is None or found.group("word").strip() not in actions:
        return None
    word, told = found.group("word").strip(), found.group("told")
    for said in _values(actions[word]):
        against = re.search(_AGAINST[said], told)
        # what is ruled out is not what is told
        if against and not _NOT.search(told) and not re.search(rf"\b{said}\b", told):
            return (
                f"the line on {word} says `{against.group()}`, but {word} is written as `{said}`",
                f"mend the line, or the action {word} under `motifs` or `developments`",
            )
    return None


def _values(actions: list[Action]) -> list[str]:
    """The size, time quality and direction that every action of the word has."""
    each = [{a.size or "", a.direction or "", *qualities(a.dynamics)} for a in actions]
    return sorted(set.intersection(*each) & _AGAINST.keys())
