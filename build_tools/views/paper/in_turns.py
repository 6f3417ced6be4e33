"""What makes room on paper where a fitted lesson is danced in turns: in teams, or in two sittings.

The page's script writes for the class and the hall of the day which teams there are and who dances
each step after whom. Here such words stand as long as it writes them, in one sitting and in two,
so that what is read before the lesson moves to the further side where two sides would not hold it.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import replace

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import N_, _
from build_tools.views.lesson.once_a_lesson import once_a_lesson
from build_tools.views.lesson.step_facts import step_facts
from build_tools.views.paper.paper_size import MORE_SIDES, STRETCHES, OnPaper, on_paper
from build_tools.views.paper.printed import PrintedLesson, PrintedStep
from build_tools.views.paper.sheet import Setting
from build_tools.views.paper.sides import MOST_SIDES, Part, laid_out, sides, with_turn
from build_tools.views.paper.two_sittings import (
    in_two_sittings,
    turn_of_sittings,
    turns_of_sittings,
)
from build_tools.views.paper.typeface import Run
from build_tools.views.paper.what_is_printed import ASIDE, printed_lesson

IN_TURNS = Setting(11, 1.05, tight=True, said_leading=1.05)
"""As lesson.css sets a fitted lesson in teams."""
_TEAMS = (
    "The class is three teams, the same in every lesson. Team 1: three pairs and one three, 9. "
    "Team 2: four pairs, 8. Team 3: four pairs, 8. One team at a time dances in the middle of the "
    "hall, always on the same spots. The others sit along the front. Those who sit keep up the "
    "chant, tapping softly. In teams: steps 1, 2, 3, 4, 5, 6 and 7. In all others everyone works "
    "at once. Take a long wall as the front. For each team to dance as often as planned, it needs "
    "about 120 minutes."
)
"""Stands for what is said of the teams of the day, as long as it gets."""
_TURN = "team 1, then 2, then 3, then 4, 3 minutes each"
"""Stands for who dances a step after whom."""
_SENT, _NEXT = "“All but team 1, sit along the front and the back. Team 1: ", " Then the next team."
"""Stand for what sends one team to its place and the others to theirs."""
_TAPE = N_("Tape or chalk, for the marks in this hall")


@once_a_lesson
def aside_in_turns(unit: Unit, lesson: Lesson) -> frozenset[str]:
    """What stands on the further side besides `on_paper(…).aside`, the least of `ASIDE` that does.

    All of it where even that is not enough; nothing of a lesson that has more sides anyway.
    """
    paper = on_paper(unit, lesson)
    if paper.size == MORE_SIDES:
        return frozenset()
    for more in (frozenset[str](), *ASIDE):
        if _holds(unit, lesson, paper, paper.aside | more):
            return more - paper.aside
    return ASIDE[-1] - paper.aside


def _holds(unit: Unit, lesson: Lesson, paper: OnPaper, aside: Collection[str]) -> bool:
    """Whether two sides hold it in turns, in one sitting and however two are parted."""
    printed = printed_lesson(unit, lesson, said=paper.said, aside=aside)
    parts = _laid_out(unit, lesson, printed)
    return all(sides(each, stretch) <= MOST_SIDES for each in parts for stretch in STRETCHES)


def _laid_out(unit: Unit, lesson: Lesson, printed: PrintedLesson) -> Iterator[tuple[Part, ...]]:
    yield laid_out(_with_teams(unit, lesson, printed), IN_TURNS)
    two = in_two_sittings(printed, lesson)
    halves = laid_out(_with_teams(unit, lesson, two), IN_TURNS)
    turn = turn_of_sittings(lesson)
    for after in turns_of_sittings(lesson):
        yield with_turn(halves, turn, IN_TURNS, after)


def _with_teams(unit: Unit, lesson: Lesson, printed: PrintedLesson) -> PrintedLesson:
    """The same with the teams of the day before what comes before they move, and in its steps."""
    turning = [bool(one.parts) or one.travels for one in step_facts(unit, lesson)]
    steps = zip(printed.steps, turning, strict=True)
    return replace(
        printed,
        collect=(*printed.collect, _(_TAPE)),
        teams=(Run(_TEAMS),),
        steps=tuple(_in_turns(one) if turns else one for one, turns in steps),
    )


def _in_turns(step: PrintedStep) -> PrintedStep:
    groups, dot, into = step.how.text.removeprefix("· ").partition(" · ")
    sent = into.replace("“", _SENT, 1) + _NEXT if into else ""
    return replace(step, how=step.how._replace(text=f"· {groups}; {_TURN}{dot}{sent}"))
