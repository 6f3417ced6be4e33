"""A step that makes or dances jumps is not put down as gentle.

Whoever plans for a pupil with asthma, or after lunch, reads how hard each step works. Jumps raise
the pulse: they are steady work at least.

Bad:
    wave: {actions: [{travel: 4, as: rush}, {jump: 2, as: break}], …}
    a step: dances: [wave], intensity: gentle
Good:
    wave: {actions: [{travel: 4, as: rush}, {jump: 2, as: break}], …}
    a step: dances: [wave], intensity: vigorous
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import inside, names_in
from build_tools.views.words.plain_words import action_label

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each gentle step that names something with a jump in it."""
    dance = unit.dance
    for lesson in unit.lessons:
        for n, step in enumerate(lesson.steps):
            if step.intensity != "gentle" or step.phase == "look and talk":
                continue
            jumps = [
                (name, action)
                for name in sorted(inside(dance, names_in(step)))
                if name not in dance.sections
                for action in actions_of(dance, name)
                if "jump" in action.kinds
            ]
            if not jumps:
                continue
            name, action = jumps[0]
            yield Finding(
                lesson.file,
                ("steps", n, "intensity"),
                f"step {n + 1} is `gentle`, but it dances `{name}`, in which "
                f"{action_label(action)} is a jump",
                "write `steady` or `vigorous`, or leave the jump out of this step",
            )
