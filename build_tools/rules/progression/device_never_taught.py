"""Pupils are taught every device they change a motif by.

A development that is only named leaves the teacher to guess what pupils do. The device stands in a
step's `teaches`, or a step says it in plain words: slower, the other way round, only the end. For
a class that begins before 7, plain words are better: the name of the new move, or that something is
swapped, higher or slower, is enough.

Bad:
    no step teaches retrograde, or says backwards
    gust-back: {of: gust, device: retrograde}
Good:
    gust-back: {of: gust, device: retrograde}
    lesson 2: develops: [gust-back], teaches: [retrograde]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Development
from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.devices import says_device
from build_tools.sentences.sayings import Saying
from build_tools.views.dance.when_made import progress, steps_in_order
from build_tools.views.lesson.told_in_step import told

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")
_TERMS_FROM = 7
"""Years from which on a class meets the trade's names. Common practice, no source."""
_CHANGES = Saying(
    """
    swap|swaps|instead
    change|changes ~3 move|moves|way|one
    slower|faster|quicker|slowly|higher|lower|bigger|smaller|longer|shorter
    other|another ~1 side|way|level|speed|part
    twice as
    low|high|tall|small|big ~2 all ~1 through
    for =go
    """
)
"""What is changed, in words that a child of five knows."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each device that no step teaches or says; the first use of it counts."""
    steps = steps_in_order(unit)
    old = ages(unit.years)
    young = old is not None and old[0] < _TERMS_FROM
    known = {word.casefold() for _, _, step in steps for word in step.teaches}
    for name, development in unit.dance.developments.items():
        device = development.device
        if device in known:
            continue
        known.add(device)
        if development.relationship and development.relationship in known:
            continue
        places = progress(unit)[name].made
        own = [step for place, _, step in steps if place in places] or [s for _, _, s in steps]
        if any(says_device(device, text) for step in own for text in told(step)):
            continue
        if any(device in text.lower() for _, _, step in steps for text in told(step)):
            continue
        if (
            young
            and places
            and any(_in_plain_words(development, text) for step in own for text in told(step))
        ):
            continue
        where = f"{places[0]}, where pupils make it," if places else "any step"
        yield Finding(
            unit.file,
            ("developments", name, "device"),
            f"`{name}` is made by {device}, and neither the `teaches` nor the words of {where} "
            "say what that is"
            if places
            else f"`{name}` is made by {device}, and no step teaches it or says what that is",
            "say in plain words, in the step where pupils make it, what changes: the trade's name "
            "can wait"
            if young
            else f"write `teaches: [{device}]` in the step where pupils make `{name}`, and say in "
            "its `say` what changes",
        )


def _in_plain_words(development: Development, text: str) -> bool:
    """Whether a text says that something changes, or names the move that is new."""
    new = [development.replacement, *(one.action for one in development.added)]
    words = [action.word for action in new if action is not None and action.word]
    said = text.casefold()
    return _CHANGES.said(text) is not None or any(word.casefold() in said for word in words)
