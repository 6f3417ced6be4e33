"""Cards that a lesson uses are among what its teacher collects.

A teacher collects by the list. A pupil who is to hold up number cards, and finds none, has lost
the part that was theirs.

Bad:
    collect: [A drum, …]
    not_dancing: Holds up the number cards in turn.
Good:
    collect: ["Number cards: 1, 2, 3, 4", …]
    not_dancing: Holds up the number cards in turn.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.reading.lesson_text import text_by_field

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_CARDS = re.compile(r"(?:\b([a-z]+) )?\bcards?\b", re.IGNORECASE)
_KINDS = frozenset({"arrow", "colour", "letter", "number", "picture", "shape", "word"})
"""Words before `cards` that say which; any other word before it says nothing of the kind."""
_NOT_ASKED = frozenset({"collect", "words", "never_did_last", "story_so_far", "classroom_first"})
"""The list itself; what a word means; other lessons; what is done where the cards are kept."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first use in a lesson of each kind of card it does not collect."""
    for lesson in unit.lessons:
        yield from _missing(lesson)


def _missing(lesson: Lesson) -> Iterator[Finding]:
    collected = _kinds_in(" and ".join(lesson.collect))
    told: set[str] = set()
    for one in text_by_field(lesson):
        if one.kind in _NOT_ASKED:
            continue
        # Cards of no kind, or any cards where they are collected by no kind ("the small cards").
        for kind in sorted(_kinds_in(one.text) - collected - told):
            if collected and (not kind or "" in collected):
                continue
            told.add(kind)
            name = f"{kind} cards" if kind else "cards"
            yield Finding(
                lesson.file,
                one.path,
                f"`{one.kind}` uses {name}, which are not in `collect`",
                f"add the {name} to `collect`, with what stands on each, or do without them here",
            )


def _kinds_in(text: str) -> set[str]:
    """The kinds of card named in a text, with "" for cards whose kind is not said."""
    found = (match[1] or "" for match in _CARDS.finditer(text))
    return {kind.lower() if kind.lower() in _KINDS else "" for kind in found}
