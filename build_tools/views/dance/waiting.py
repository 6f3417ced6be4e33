"""What those do who sit while others dance, and where they sit.

A unit may say both. Where it does not, they sit where watchers do, and count aloud only where that
is what is heard anyway: in a dance that is made up, is silent, has music or words of its own, each
watches one pair or group.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from build_tools.model.dance import Dance, Section
from build_tools.model.unit import Unit
from build_tools.movement.sounding import FOLLOWS_THE_DANCERS
from build_tools.movement.watchers import Watchers, watchers
from build_tools.page_words.words import N_, _

_ENDS = re.compile(r"\b(?:ends|corners)\b")
_SIT: dict[Watchers, str] = {
    "at the tables": N_("at the tables"),
    "at one short wall": N_("at one end"),
}
"""Where those sit of whom the sides of the hall do not tell it."""
_STRUCK = frozenset({"beat", "soft beat", "claps"})
"""Sounds that one may count aloud to."""


@dataclass(frozen=True, slots=True)
class Waiting:
    """What is known of those who sit; `does` and `where` as the unit says them."""

    counts: bool = True
    """Whether they may count aloud, where the unit does not say what they do."""
    does: str | None = None
    where: str | None = None

    @property
    def at_ends(self) -> bool:
        """Whether they sit at the ends of a wall, and not all along it."""
        return bool(self.where and _ENDS.search(self.where))


def waiting_in(unit: Unit) -> Waiting:
    """The unit's own words, or what follows from its sound."""
    space = unit.space
    where = space.who_sits_where
    if where is None and watchers(unit.dance) in _SIT:
        where = _(_SIT[watchers(unit.dance)])
    return Waiting(counted_aloud(unit.dance), space.who_sits_does, where)


def sits_to_sound(dance: Dance) -> bool:
    """Whether some of the class sit all through a section: they sound what follows the dancers."""
    return any(
        section.sound.follows == FOLLOWS_THE_DANCERS
        and any(one.by == "class" for one in section.heard)
        for section in dance.sections.values()
    )


def counted_aloud(dance: Dance) -> bool:
    """Whether every section that is danced is counted, to taps, claps or numbers alone."""
    return all(_counted(dance.sections[letter], dance) for letter in dance.form)


def _counted(section: Section, dance: Dance) -> bool:
    if section.counts is None:
        return False
    if not section.heard:
        return (section.sound or dance.sound).kind == "drum"
    numbers = (one.says and all(word.isdigit() for word in one.says) for one in section.heard)
    struck = (one.sound in _STRUCK and not one.says for one in section.heard)
    return all(a or b for a, b in zip(numbers, struck, strict=True))
