"""Who tries what in a step in which something is chosen, and for how long; what ends it."""

from __future__ import annotations

import re

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.page_words.words import N_, _
from build_tools.sentences.sayings import Saying
from build_tools.views.words.marked_words import marked
from build_tools.views.words.plain_words import listed, minutes_in_words
from build_tools.views.words.punctuation import small

_CHOSEN_ANEW = Saying(
    """
    may|can|free ~2 choose|change ~3 again|anew|mind
    may|can|free ~2 choose|change ~5 any time|moment
    choose|change ~3 before|at|for each|every time|go
    """
)
_OPENING_WORDS = re.compile(r"[^.,;:]+")
_WHO = {
    "alone": N_("each pupil"),
    "pairs": N_("each pair"),
    "threes": N_("each three"),
    "fours": N_("each four"),
    "fives": N_("each five"),
    "sixes": N_("each six"),
    "half class": N_("each half"),
    "whole class": N_("everyone"),
}


def one_thing_open(dance: Dance, step: Step) -> str:
    """What a step settles, in the author's opening words, where the moves themselves are given.

    A teacher read "tries ways of doing it" of four fixed moves, of which one part was to choose.
    """
    moves = [dance.motifs[name] for name in step.makes if name in dance.motifs]
    if any(one.made_by not in ("teacher", "teacher then pupils") for one in moves):
        return ""
    opened = (_OPENING_WORDS.match(dance.choices[name].what.strip()) for name in step.settles)
    return listed([small(found[0].strip()) for found in opened if found])


def who_tries(dance: Dance, step: Step) -> str:
    """Who tries on their own: each pupil, where what is chosen is each pupil's."""
    by = {dance.choices[name].by for name in step.settles}
    grouping = "alone" if by == {"each pupil"} else step.grouping
    return _(_WHO[grouping])


def minutes_to_try(step: Step) -> str:
    """Half of the minutes of the step, marked."""
    return marked(minutes_in_words(max(1, step.minutes // 2)))


def chosen_anew(dance: Dance, step: Step) -> bool:
    """Whether each may choose anew at any time, as of whom they touch: it is never to be kept."""
    return any(_CHOSEN_ANEW.said(dance.choices[name].what) for name in step.settles)


def what_to_keep(step: Step) -> str:
    """What is said when trying is over."""
    return _("Keep one of each") if len(step.settles) > 1 else _("Keep one")
