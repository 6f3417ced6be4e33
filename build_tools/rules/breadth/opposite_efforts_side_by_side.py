"""Two efforts that differ in everything come one after the other only where contrast is meant.

From a float straight into a punch, weight, time and space all change at once, which few pupils can
show: the second move comes out blurred. One quality changed at a time is easy, and a stillness
between the two gives the body time.

Bad:
    actions: [{gesture: 4, dynamics: [float]}, {gesture: 1, dynamics: [punch]}]
Good:
    idea: Calm, then a sudden blow
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from build_tools.model.dance import Action, Motif
from build_tools.model.unit import Unit
from build_tools.movement.effort import (
    EFFORT_ACTIONS,
    Effort,
    distance,
    opposite_quality,
    qualities,
    routes,
)
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.words_about_dance import CONTRAST
from build_tools.views.words.plain_words import action_label

GRADE: Grade = "note"
READS = "en"
SOURCE = (
    "Laban and Lawrence, Effort, 1947: eight actions, four pairs of opposites; Laban, Mastery of "
    "Movement: a change of one quality at a time is easy, a complete contrast difficult"
)

_NAMES = {effort: name for name, effort in EFFORT_ACTIONS.items()}


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each pair of neighbouring actions that are opposites in all three."""
    for name, motif in unit.dance.motifs.items():
        efforts = [_effort(action) for action in motif.actions]
        for n, (first, second) in enumerate(pairwise(efforts)):
            if first is None or second is None or distance(first, second) < 3:
                continue
            if _meant(unit, motif):
                break
            between = routes(first, second)[0][1]
            yield Finding(
                unit.file,
                ("motifs", name, "actions", n + 1),
                f"in `{name}`, {action_label(motif.actions[n])} (a {first}) goes straight into "
                f"{action_label(motif.actions[n + 1])} (a {second}): weight, time and space, "
                "3 of 3, change at once",
                f"put a stillness or a {between} between them, or say in `idea` that the contrast "
                "is meant",
            )


def _effort(action: Action) -> str | None:
    """The effort action that an action is, from its name or from its three qualities."""
    found = qualities(action.dynamics)
    if action.kind == "stillness" or any(opposite_quality(q) in found for q in found):
        return None
    corners = [
        next((q for q in pair if q in found), "")
        for pair in (("strong", "light"), ("sudden", "sustained"), ("direct", "indirect"))
    ]
    return _NAMES.get(Effort(*corners))


def _meant(unit: Unit, motif: Motif) -> bool:
    if CONTRAST.in_any((motif.idea, unit.summary)):
        return True
    return any(
        motif.name in step.makes and CONTRAST.in_any((step.say, step.task, step.look_for))
        for lesson in unit.lessons
        for step in lesson.steps
    )
