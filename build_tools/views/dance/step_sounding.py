"""What is heard while a step of a lesson is counted."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.views.dance.timeline import Sounding, practice_sounding, sections_with


def step_sounding(dance: Dance, step: Step) -> Sounding:
    """What sounds over the step's counts, as in the sections that it dances or takes moves from.

    A step that names neither is practised to what sounds in the whole dance.
    """
    return sounding_over(dance, parts_named(step), step.develops, step.counts or Fraction(0))


def parts_named(step: Step) -> tuple[str, ...]:
    """What the step joins, makes, dances or shows, each once."""
    return tuple(dict.fromkeys((*step.joins, *step.makes, *step.dances, *step.shows)))


@lru_cache(maxsize=128)
def sounding_over(
    dance: Dance, names: tuple[str, ...], develops: tuple[str, ...], counts: Fraction
) -> Sounding:
    """The same by what a step names: many steps of a unit dance the same for as long."""
    letters = [name for name in names if name in dance.sections]
    found = [dance.sections[letter] for letter in letters] or [
        section for name in (*names, *develops) for section in sections_with(dance, name)
    ]
    sections = tuple({s.letter: s for s in found or dance.sections.values()}.values())
    motif = names[0] if len(names) == 1 and not letters else None
    return practice_sounding(dance, sections, counts, motif)
