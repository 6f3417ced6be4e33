"""What a move means, in plain words, with how it feels; the same on the page, card and paper."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.body.poses import moved
from build_tools.page_words.words import _
from build_tools.views.diagrams.body_words import body_in_words
from build_tools.views.lesson.feel_besides import feel_besides
from build_tools.views.lesson.moves_met import MoveMet
from build_tools.views.words.punctuation import sentence


@dataclass(frozen=True, slots=True)
class MoveMeant:
    """A move and what it means."""

    word: str
    """The pupils' word."""
    means: str
    """What the body does, in plain words."""
    feel: str | None
    """How it feels: slow and smooth. None where the meaning says it."""


def meant(one: MoveMet) -> MoveMeant:
    """A move with the author's words for it; without them, what its picture shows."""
    if one.means is not None or one.action is None:
        feel = feel_besides(one.means or "", one.action.dynamics) if one.action else ""
        return MoveMeant(one.word, sentence(one.means or ""), sentence(feel) if feel else None)
    return MoveMeant(one.word, sentence(body_in_words(moved(one.action, one.before))), None)


def part_heading(called: str) -> str:
    """What stands before who dances what in a section: Part A: tide."""
    return _("Part {name}", name=called)
