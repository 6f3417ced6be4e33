"""On which count of a section each move begins, by the pupils' own words for the moves."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from build_tools.model.dance import Dance, Section
from build_tools.movement.development import actions_of
from build_tools.views.dance.parts_over_counts import parts_over_counts


def moves_begun(dance: Dance, section: Section) -> Mapping[Fraction, frozenset[str]]:
    """The counts before each move begins, in order, and the words of what begins there.

    A move that has no word is there with none; where rows begin different moves there are several.
    """
    found: dict[Fraction, set[str]] = {}
    for span in parts_over_counts(dance, section).spans:
        at = span.start
        try:
            actions = actions_of(dance, span.what)
        except (KeyError, ValueError):
            continue  # the checks say what is wrong with it
        for action in actions:
            found.setdefault(at, set()).add((action.word or "").casefold())
            at += action.counts
    return {at: frozenset(found[at]) for at in sorted(found)}
