"""Somewhere in the unit pupils decide something.

Pupils learn to make dances by choosing: a shape, an order, a change. They may decide in a choice,
in a motif of their own, within the rules of an improvised section, or in a task that says so. A
dance that is learned as it is handed on may leave nothing open.

Bad:
    every motif: from: teacher
    every step: task: Walk for eight counts.
Good:
    every motif: from: teacher
    every step: task: Walk for eight counts.
    choices: {last-shape: {what: The last shape, from: [high, low], by: class, if_not: High.}}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.finding_out import DECIDES, HANDED_ON
from build_tools.views.dance.when_made import steps_in_order
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding if nothing in the unit is left to pupils."""
    dance = unit.dance
    if dance.choices or any(motif.made_by != "teacher" for motif in dance.motifs.values()):
        return
    if any(section.kind == "improvised" for section in dance.sections.values()):
        return
    steps = (step for _, _, step in steps_in_order(unit))
    if DECIDES.in_any(text for step in steps for text in (step.into, step.say, step.task)):
        return
    ideas = (motif.idea for motif in dance.motifs.values())
    told = (unit.title, unit.summary, unit.notes, unit.stimulus.what, *ideas)
    if HANDED_ON.in_any(told):
        return
    yield Finding(
        unit.file,
        ("motifs",),
        f"the unit has {how_many(len(dance.motifs), 'motif')} from the teacher and 0 choices, and "
        "in no step of its lessons do pupils decide anything",
        "let pupils choose one thing, such as a shape or an order, write it under `choices`, and "
        "settle it in a step",
    )
