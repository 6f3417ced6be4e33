"""What a unit does not say and a picture of the floor needs: fields to ask for."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from build_tools.model.dance import Action, Dance, Section
from build_tools.paths.group_sizes import groups_of
from build_tools.paths.places import Slots
from build_tools.paths.shapes_in_class import USUAL_APART
from build_tools.paths.steps import goes


@dataclass(frozen=True, slots=True)
class Unsaid:
    """A field that is not said and would tell where dancers are."""

    path: tuple[str | int, ...]
    """Where it would stand in the unit's document."""
    drawn_as: str
    """What is drawn instead, in words."""


_STANDING = {
    "apart": f"{USUAL_APART} steps apart",
    "within": "in the usual way for such groups",
    "groups_apart": "spread evenly over the floor",
}


def unsaid_of_start(section: Section, found: Slots) -> Iterator[Unsaid]:
    """What the start of a section does not say, where its places are new."""
    path = ("sections", section.letter)
    for name in found.unsaid:
        yield Unsaid((*path, "start", name), _STANDING[name])
    if section.groups is None and groups_of(section).size > 1:
        yield Unsaid((*path, "groups"), f"groups of {groups_of(section).size}")


def unsaid_of_moves(dance: Dance) -> Iterator[Unsaid]:
    """What the moves of a dance do not say."""
    for name, motif in dance.motifs.items():
        if _led_somewhere(dance, name):
            continue
        for n, action in enumerate(motif.actions):
            for field, drawn in _of_action(action):
                yield Unsaid(("motifs", name, "actions", n, field), drawn)


def _led_somewhere(dance: Dance, name: str) -> bool:
    """Whether every passage that dances the motif says what it goes towards."""
    passages = [p for section in dance.sections.values() for p in section.danced if name in p.what]
    return bool(passages) and all(passage.towards is not None for passage in passages)


def _of_action(action: Action) -> Iterator[tuple[str, str]]:
    if goes(action) and action.towards is None:
        if action.direction is None and action.step != "side-step":
            yield "direction", "forwards"
        aside = action.direction in ("sideways", "diagonal") or action.step == "side-step"
        if aside and action.side is None:
            yield "side", "to the right"
    if "turn" in action.kinds and action.turn_by is None and action.facing is None:
        yield "turn_by", "a whole turn"
