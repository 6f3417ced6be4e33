"""How long a step takes in which pupils show what they have made."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Dance
from build_tools.model.lesson import Step
from build_tools.movement.counts import seconds
from build_tools.movement.development import actions_of, total
from build_tools.movement.whole import whole_seconds
from build_tools.sentences.wording_lesson import groups_at_a_time

USUAL_CLASS = 30
CHANGE_OVER_SECONDS = 15
TALK_SECONDS = 60
GROUP_SIZES = {"alone": 1, "pairs": 2, "threes": 3, "fours": 4, "fives": 5, "sixes": 6}


@dataclass(frozen=True, slots=True)
class Showing:
    """One showing. `runs` is how often what is shown is danced, each time by other pupils."""

    groups: int
    """How many groups the class makes; 2 where it shows in halves."""
    runs: int
    run: Fraction
    """The least seconds of one run."""
    talk: int
    """Seconds of talk; 0 where the next step is for talking."""

    @property
    def seconds(self) -> Fraction:
        """What all the runs, their changes over and the talk take."""
        return self.runs * (self.run + CHANGE_OVER_SECONDS) + self.talk


def showing(
    dance: Dance, step: Step, after: Step | None = None, pupils: int = USUAL_CLASS
) -> Showing | None:
    """How `step` is shown; None where it shows nothing or its length is not known.

    Halves, or groups two by two, show to each other, unless the words say that groups show in
    turn. `after` is the step that follows.
    """
    if not step.shows:
        return None
    run = shown_seconds(dance, step.shows)
    if run is None:
        return None
    talk = TALK_SECONDS
    if step.phase != "look and talk" and after is not None and after.phase == "look and talk":
        talk = 0
    at_once = groups_at_a_time(" ".join((step.into or "", step.say or "", step.task)))
    size = GROUP_SIZES.get(step.grouping)
    if at_once is None or size is None:
        return Showing(2, 1 if step.grouping == "whole class" else 2, run, talk)
    groups = -(-pupils // size)
    return Showing(groups, -(-groups // at_once), run, talk)


def shown_seconds(dance: Dance, parts: tuple[str, ...]) -> Fraction | None:
    """The least seconds that `parts` last together; None where counts have no tempo."""
    if "whole" in parts:
        whole = whole_seconds(dance)
        return None if whole is None else whole.least
    found = Fraction(0)
    for name in parts:
        section = dance.sections.get(name)
        if section is not None and section.seconds is not None:
            found += section.seconds.least
            continue
        counts = section.counts if section is not None else total(actions_of(dance, name))
        if counts is None or dance.tempo is None:
            return None
        found += seconds(counts, dance.tempo)
    return found
