"""How many dance a section together: as the unit says, or as its formation and parts suggest."""

from __future__ import annotations

from functools import lru_cache

from build_tools.model.dance import Groups, Section
from build_tools.movement.canon_and_unison import parts_in

_USUAL_GROUP = 4


@lru_cache(maxsize=256)
def _alone_or(size: int) -> Groups:
    return Groups(size, {})


def groups_of(section: Section) -> Groups:
    """The groups that dance it.

    Where the unit does not say: pairs are two, small groups as many as the parts of a passage, or
    four; where all stand as one, as many as the most parts.
    """
    return section.groups if section.groups is not None else _alone_or(_suggested(section))


def _suggested(section: Section) -> int:
    parts = max((parts_in(passage) for passage in section.danced), default=1)
    formations = (section.start.formation, section.end.formation)
    if "small groups" in formations:
        return parts if parts > 2 else _USUAL_GROUP
    if "pairs" in formations or "partner" in (section.start.facing, section.end.facing):
        return 2
    return min(parts, 8)
