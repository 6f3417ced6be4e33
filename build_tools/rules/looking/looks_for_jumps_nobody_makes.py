"""A look_for asks for landings only where somebody jumps.

Partners who push the air have no landing to look at: the line was copied from another step, and
what the step is about is looked at by nobody.

Bad:
    task: Walk and stop., look_for: Soft landings.
Good:
    task: Walk, jump and stop., look_for: Soft landings.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.hard_work import JUMPS
from build_tools.sentences.sayings import Saying, saying_of
from build_tools.views.dance.when_made import inside, names_in
from build_tools.views.written.hazards import told_in, written_actions

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")
_JUMPED = Saying(
    """
    landing|landings
    soft|softly|quiet|quietly|silent|silently land|lands
    land|lands ~1 soft|softly|quiet|quietly|silently
    n:jump
    """
)
_MADE = Saying(
    """
    @jump|land|jumping|run|rush|burst|pop|break
    card|cards|moves|that move
    """,
    {"jump": JUMPS},
)
"""Somebody jumps, or does whatever a card says."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each step that looks for a jump, and neither says nor dances one."""
    words = sorted({a.word for a in written_actions(unit.dance) if a.word and "jump" in a.kinds})
    called = saying_of("\n".join(word.casefold() for word in words))
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            said = _JUMPED.said(step.look_for)
            if said is None or step.look_for is None:
                continue
            told = [text for text in (*told_in(step), step.does) if text != step.look_for]
            if _MADE.in_any(told) or called.in_any(told) or _jumps(unit, names_in(step)):
                continue
            yield Finding(
                lesson.file,
                ("steps", n, "look_for"),
                f'`look_for` has "{said.text}", but nobody jumps in step {n + 1}',
                "look for what the step asks, or add the jump to its task",
            )


def _jumps(unit: Unit, names: tuple[str, ...]) -> bool:
    """Whether what a step names has a jump in it; a step that names nothing may have any."""
    known = unit.dance.motifs.keys() | unit.dance.developments.keys()
    parts = unit.dance.sections.keys() if "whole" in names else names
    return any(
        "jump" in action.kinds
        for name in inside(unit.dance, (*parts,)) | frozenset(parts)
        if name in known
        for action in actions_of(unit.dance, name)
    )
