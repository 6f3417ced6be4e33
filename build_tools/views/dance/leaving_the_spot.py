"""Whether a dance takes anybody over the floor, and which of its parts leave the ways open."""

from __future__ import annotations

from build_tools.model.dance import Dance, Section
from build_tools.movement.development import actions_of
from build_tools.paths.steps import goes
from build_tools.sentences.staying_in_place import stays_on_one_spot


def parts_with_ways_open(dance: Dance) -> list[str]:
    """Letters of the parts that are made up, where nobody knows who goes where."""
    return [
        letter
        for letter, section in dance.sections.items()
        if section.kind == "improvised" and not _on_one_spot(section)
    ]


def somebody_travels(dance: Dance) -> bool:
    """Whether a move takes somebody over the floor, or a part has places of its own."""
    later = [dance.sections[letter] for letter in dance.form[1:]]
    if any(section.start.spot == "new place" for section in later):
        return True
    danced = {what for one in dance.sections.values() for p in one.danced for what in p.what}
    return any(goes(action) for what in sorted(danced) for action in actions_of(dance, what))


def _on_one_spot(section: Section) -> bool:
    """Whether what is made up keeps everybody where they stand, as one of its rules says."""
    return any(stays_on_one_spot(rule) for rule in section.improvised_rules)
