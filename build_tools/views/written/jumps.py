"""Jumps in a step: danced in what the step names, or asked for in its words."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.movement.development import actions_of
from build_tools.sentences.jumps import jump
from build_tools.views.dance.when_made import inside
from build_tools.views.words.plain_words import action_label

Field = Literal["say", "task", "does"]


@dataclass(frozen=True, slots=True)
class Jump:
    """One jump: how a teacher would point to it, and the field whose words ask for it, if any."""

    said: str
    field: Field | None


def jump_in(dance: Dance, step: Step) -> Jump | None:
    """A jump in what `step` says, sets or dances; None if there is none."""
    texts: tuple[tuple[Field, str], ...] = (
        ("say", step.say or ""),
        ("task", step.task),
        ("does", step.does),
    )
    for field, text in texts:
        if said := jump(text):
            return Jump(f'the words "{said.text}"', field)
    return jump_danced(dance, step)


def jump_danced(dance: Dance, step: Step) -> Jump | None:
    """A jump in the motifs, developments and sections that `step` names; None if there is none.

    Developments have to work and names to be known.
    """
    parts = (*step.makes, *step.develops, *step.joins, *step.dances, *step.shows)
    for name in sorted(inside(dance, parts)):
        if name in dance.sections:
            section = dance.sections[name]
            for text in (section.improvised_from or "", *section.improvised_rules):
                if jump(text):
                    return Jump(f"a jump in section {name}", None)
            continue
        for action in actions_of(dance, name):
            if "jump" in action.kinds:
                return Jump(f"{action_label(action)} in `{name}`", None)
    return None
