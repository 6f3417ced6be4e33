"""How a teacher who never taught dance runs the minutes of a step in which pupils make something.

Try, keep, repeat, show a neighbour: common practice, no source. No numbers of minutes, so that the
same words hold where the lesson is fitted to a shorter slot.
"""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.model.lesson import Step

LEAST_MINUTES = 3
"""A shorter step is over before it can be divided."""
RUN_SHORT = "Try, keep one, repeat, show a neighbour."
"""The same in a line, for paper."""
_WHO = {
    "alone": ("each pupil", "they", "each pupil shows a neighbour"),
    "pairs": ("each pair", "they", "each pair shows the pair beside it"),
    "threes": ("each three", "they", "each three shows the three beside it"),
    "fours": ("each four", "they", "each four shows the four beside it"),
    "fives": ("each five", "they", "each five shows the five beside it"),
    "sixes": ("each six", "they", "each six shows the six beside it"),
    "half class": ("each half", "they", "each half shows the other"),
    "whole class": ("everyone", "they", "half the class shows the other half"),
}


def run_in_words(step: Step, helps: Sequence[str] = ()) -> str | None:
    """What the teacher does in the minutes of a step; None where its task tells all there is.

    `helps` are the author's own paragraphs about it: where one says how to keep what was tried,
    nothing is added.
    """
    if step.minutes < LEAST_MINUTES or any("keep" in text.casefold() for text in helps):
        return None
    who, they, show = _WHO[step.grouping]
    if step.phase == "explore":
        return (
            "Let them try for most of the time. Stop twice: name one thing that you saw, "
            "and let everyone try that."
        )
    if step.phase in ("make", "develop"):
        return (
            f"For about half the time, {who} tries ways of doing it. Then say “Keep one”. "
            f"Now {they} dance the one they kept, again and again, until nobody has to think. "
            f"In the last minute, {show}."
        )
    if step.phase == "join":
        return (
            "Walk it through once with no counts, and once with counts. Practise only the place "
            "where one part turns into the next. Then dance from the part before into it."
        )
    return None
