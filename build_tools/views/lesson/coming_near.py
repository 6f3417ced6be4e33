"""Whether a step takes dancers towards one another, where their unit has not settled how.

Partners or a ring come near by travel towards a partner or the middle, or by travel forwards from a
start that faces them. Who dance side by side, go one way together or go round meet nobody, and
what the author says of a wheelchair in such a move settles who goes where.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Action, Dance, Passage, Section
from build_tools.views.lesson.moves_met import MoveMet, StepMoves

_ONE_ANOTHER = frozenset({"partner", "centre"})
_ABOUT_TURN = frozenset({"half"})


def have_to_agree(dance: Dance, moves: StepMoves) -> bool:
    """Whether some move of the step goes towards others and nothing says how on wheels."""
    by_motif: dict[str | None, list[MoveMet]] = {}
    for one in moves.danced:
        by_motif.setdefault(one.motif, []).append(one)
    return any(
        met.wheels is None
        for section, passage in _passages(dance, moves)
        for name in passage.what
        for met in _going_near(section, passage, by_motif.get(name, []))
    )


def _passages(dance: Dance, moves: StepMoves) -> Iterator[tuple[Section, Passage]]:
    """Where what the step dances stands in the dance: in its own sections, if it has any."""
    its_own = {*moves.parts, *moves.parts_again}
    for letter, section in dance.sections.items():
        if not its_own or letter in its_own:
            yield from ((section, passage) for passage in section.danced)


def _going_near(section: Section, passage: Passage, met: list[MoveMet]) -> Iterator[MoveMet]:
    """The moves that travel towards the partner or the middle of the group."""
    facing = section.start.facing
    for one in met:
        action = one.action
        if action is None:
            continue
        facing = action.facing or facing
        if "travel" in action.kinds and _is_near(action, passage, facing):
            yield one
        if "turn" in action.kinds and action.turn_by in _ABOUT_TURN:
            facing = "away"


def _is_near(action: Action, passage: Passage, facing: str) -> bool:
    towards = action.towards or passage.towards
    if action.goes_round:
        return False
    if towards is not None:
        return towards in _ONE_ANOTHER and action.direction != "backwards"
    return facing in _ONE_ANOTHER and action.direction in (None, "forwards")
