"""What pupils choose in a motif or development: said on the strip that they hold, with a line."""

from __future__ import annotations

from build_tools.model.unit import Unit


def choices_in(unit: Unit, name: str) -> tuple[str, ...]:
    """What is chosen in it: by the steps that make it, and in what it is made from."""
    dance = unit.dance
    names: list[str] = []
    at = dance.developments.get(name)
    while at is not None:
        names += [at.choice] if at.choice else []
        at = dance.developments.get(at.of)
    for lesson in unit.lessons:
        for step in lesson.steps:
            if name in (*step.makes, *step.develops):
                names += step.settles
    return tuple(dance.choices[one].what for one in dict.fromkeys(names) if one in dance.choices)
