"""How long a step takes in which pupils show what they have made.

A page's script does the same sum for the class of the day, in site_overrides/sums/showing.js.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from fractions import Fraction

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.movement.counts import seconds
from build_tools.movement.development import actions_of, total
from build_tools.movement.whole_length import whole_seconds
from build_tools.sentences.words_about_dance import groups_at_a_time
from build_tools.views.lesson.class_groups import GROUP_SIZES, class_groups, groupings_known

CHANGE_OVER_SECONDS = 15
TALK_SECONDS = 60
LET_PASS_SECONDS = 30
"""The sum is a rough one."""


@dataclass(frozen=True, slots=True)
class Showing:
    """One showing. `runs` is how often what is shown is danced, each time by other pupils."""

    run: int
    """The most seconds of one run."""
    talk: int
    """Seconds of talk; 0 where the next step is for talking."""
    at_once: int | None
    """How many groups dance at the same time, where the words say that groups show in turn."""
    groups: int
    """How many groups there are to show; 2 where pupils who dance alone show in halves."""
    runs: int

    @property
    def each(self) -> int:
        """What one run takes, with the change over after it, in seconds."""
        return self.run + CHANGE_OVER_SECONDS

    @property
    def seconds(self) -> int:
        """What all the runs, their changes over and the talk take."""
        return self.runs * self.each + self.talk

    @property
    def needs(self) -> int:
        """The fewest whole minutes it fits into, half a minute let pass."""
        return max(1, -(-(self.seconds - LET_PASS_SECONDS) // 60))

    def in_halves(self) -> Showing:
        """The same, with every other group dancing while the rest watch, then the other way."""
        return replace(self, at_once=None, runs=min(2, self.groups))


def showing(unit: Unit, lesson: Lesson, index: int, pupils: int = USUAL_CLASS) -> Showing | None:
    """How step `index` is shown; None where it shows nothing or its length is not known.

    Every other group shows to the rest, then they swap, unless the words say that groups show in
    turn.
    """
    step = lesson.steps[index]
    run = longest_seconds(unit.dance, step.shows) if step.shows else None
    if run is None:
        return None
    at_once = None
    if step.grouping in GROUP_SIZES:
        said = (step.into, step.say, step.task, step.you)
        at_once = groups_at_a_time(" ".join(text for text in said if text))
    # pupils who dance alone show in two halves
    grouping = "half class" if step.grouping == "alone" and at_once is None else step.grouping
    groups = len(class_groups(groupings_known(unit, lesson), grouping, pupils))
    runs = min(2, groups) if at_once is None else -(-groups // at_once)
    return Showing(math.ceil(run), _talk(lesson, step, index), at_once, groups, runs)


def _talk(lesson: Lesson, step: Step, index: int) -> int:
    after = lesson.steps[index + 1].phase if index + 1 < len(lesson.steps) else None
    return 0 if step.phase != "look and talk" and after == "look and talk" else TALK_SECONDS


def longest_seconds(dance: Dance, parts: tuple[str, ...]) -> Fraction | None:
    """The most seconds that `parts` last together; None where counts have no tempo."""
    if "whole" in parts:
        whole = whole_seconds(dance)
        return None if whole is None else whole.most
    found = Fraction(0)
    for name in parts:
        section = dance.sections.get(name)
        if section is not None and section.seconds is not None:
            found += section.seconds.most
            continue
        counts = section.counts if section is not None else total(actions_of(dance, name))
        if counts is None or dance.tempo is None:
            return None
        found += seconds(counts, dance.tempo)
    return found
