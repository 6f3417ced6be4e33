"""Pupils are taught every device they change a motif by.

A development that is only named leaves the teacher to guess what pupils do. The device stands in a
step's `teaches`, or a step says it in plain words: slower, the other way round, only the end.

Bad:
    no step teaches retrograde, or says backwards
    gust-back: {of: gust, device: retrograde}
Good:
    gust-back: {of: gust, device: retrograde}
    lesson 2: develops: [gust-back], teaches: [retrograde]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.devices import says_device
from build_tools.views.dance.progress import progress, steps_in_order
from build_tools.views.lesson.told_in_step import told

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each device that no step teaches or says; the first use of it counts."""
    steps = steps_in_order(unit)
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
        where = f"{places[0]}, where pupils make it," if places else "any step"
        yield Finding(
            unit.file,
            ("developments", name, "device"),
            f"`{name}` is made by {device}, and neither the `teaches` nor the words of {where} "
            "say what that is"
            if places
            else f"`{name}` is made by {device}, and no step teaches it or says what that is",
            f"write `teaches: [{device}]` in the step where pupils make `{name}`, and say in its "
            "`say` what changes",
        )
