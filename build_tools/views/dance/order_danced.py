"""The sections that a step dances one after another, for pupils to see what comes next."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.dance import Dance, Section
from build_tools.model.lesson import Step
from build_tools.views.reading.ease import sentences
from build_tools.views.words.punctuation import capital

WHOLE = "whole"


@dataclass(frozen=True, slots=True)
class OrderedSection:
    """One section in its place: its letter, and its name, or else what it is about in the author's
    first sentence."""

    letter: str
    idea: str


def order_danced(dance: Dance, step: Step) -> tuple[OrderedSection, ...]:
    """The sections in the order that they are danced: the whole form, or those that the step names.

    Empty where the step dances one section or none: no order is to be kept in mind then.
    """
    names = (*step.joins, *step.dances, *step.shows)
    letters = dance.form if WHOLE in names else tuple(dict.fromkeys(names))
    found = tuple(
        OrderedSection(letter, _in_short(dance.sections[letter]))
        for letter in letters
        if letter in dance.sections
    )
    return found if len(found) > 1 else ()


def _in_short(section: Section) -> str:
    return capital(section.name) if section.name else sentences(section.idea)[0].rstrip(".")
