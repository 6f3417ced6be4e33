"""A sustained move has time, and a sudden one is over soon.

Sustained means that it goes on and on: in one count there is nothing to go on, and from high to low
or back it takes more than a second. Sudden means all at once: over four counts or more nothing is.
One of the two, the word or the counts, is a slip.

Bad:
    {transfer: 1, as: shut, dynamics: [sustained]}
Good:
    {transfer: 1, as: shut, dynamics: [sudden]}
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Action
from build_tools.model.unit import Unit
from build_tools.movement.counts import seconds
from build_tools.movement.effort import qualities
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.actions_written import actions_written
from build_tools.views.words.plain_words import action_label, counts_in_words

GRADE: Grade = "question"
SOURCE = (
    "Laban and Lawrence, Effort, 1947: in time an effort is sudden or sustained; the lengths are "
    "common practice"
)

_LEAST_SUSTAINED = Fraction(4, 5)
_FROM_END_TO_END = ("high to low", "low to high")
_LEAST_FROM_END_TO_END = Fraction(1)
"""Seconds in which nobody goes two levels down or up and goes on and on as well."""
_MOST_SUDDEN = 4
_USUAL_TEMPO = 100


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each action whose length and time quality do not go together."""
    tempo = unit.dance.tempo or _USUAL_TEMPO
    for path, action in actions_written(unit.dance):
        found = qualities(action.dynamics)
        lasts = seconds(action.counts, tempo)
        far = action.level in _FROM_END_TO_END
        short = lasts <= _LEAST_FROM_END_TO_END if far else lasts < _LEAST_SUSTAINED
        if "sustained" in found and short and (far or action.counts <= 1):
            said = f"takes {counts_in_words(action.counts)}, {float(lasts):.1f} seconds"
            said += f", {action.level}" if far else ""
            yield Finding(
                unit.file,
                path,
                f"{action_label(action)} is {_word(action, 'sustained')}, but it {said}",
                "give it two counts or more, or make it sudden",
            )
        elif "sudden" in found and action.counts >= _MOST_SUDDEN and action.kind != "travel":
            yield Finding(
                unit.file,
                path,
                f"{action_label(action)} is {_word(action, 'sudden')}, but it takes "
                f"{counts_in_words(action.counts)}",
                "give it a count or two, or make it sustained",
            )


def _word(action: Action, quality: str) -> str:
    """The word of `dynamics` that brings the quality."""
    return f"`{next(word for word in action.dynamics if quality in qualities((word,)))}`"
