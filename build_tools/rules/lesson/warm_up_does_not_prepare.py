"""The warm-up moves the body in at least one way in which the lesson goes on to move it.

A warm-up of arm circles does not get legs ready for leaps, and one in which pupils sit and listen
gets nothing ready. It is the `task` that is read, where it tells moves. A warm-up whose words are
not known here is left to the teacher.

Bad:
    phase: warm-up, does: Loosen up, task: Circle each arm.
Good:
    phase: warm-up, does: Loosen up, task: Walk, then bounce softly.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.kinds_of_move import NO_MOVING, WARMS_ANYTHING, kinds_moved
from build_tools.views.dance.when_made import inside
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = (
    "Warming-up in primary schools (county leaflet): pulse raising, then mobility, then the "
    "movements of the activity"
)
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_ON_FEET = frozenset({"travel", "turn", "jump", "transfer"})
"""Where a step needs one of these, arms that are ready are not enough."""
_IN_WORDS = {
    "travel": "travelling",
    "turn": "turns",
    "jump": "jumps",
    "gesture": "arm and hand moves",
    "transfer": "shifts of weight",
}


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each lesson whose warm-up shares no kind of move with its hard work."""
    for lesson in unit.lessons:
        finding = _unprepared(unit.dance, lesson)
        if finding:
            yield finding


def _unprepared(dance: Dance, lesson: Lesson) -> Finding | None:
    warm = [(n, step) for n, step in enumerate(lesson.steps) if step.phase == "warm-up"]
    if not warm or any(step.dances for _, step in warm):
        return None
    index, first = warm[0]
    if WARMS_ANYTHING.in_any(t for _, s in warm for t in (s.say, s.task, s.does)):
        return None
    ready = frozenset(kind for _, step in warm for kind in kinds_moved(step.task))
    if not ready and not NO_MOVING.said(first.task):
        return None
    for n, step in enumerate(lesson.steps):
        if n <= index or step.phase in ("warm-up", "cool-down"):
            continue
        wanted = _kinds(dance, step)
        if not wanted or (step.intensity != "vigorous" and "jump" not in wanted):
            continue
        if ready & (wanted & _ON_FEET or wanted):
            return None
        return Finding(
            lesson.file,
            ("steps", index, "task"),
            f"the warm-up gets {_kinds_in_words(ready) or 'nothing'} ready, but step {n + 1} needs "
            f"{_kinds_in_words(wanted)}: 0 of {len(wanted)} in common",
            f"add what the lesson needs, such as: {_such_as(wanted)}",
        )
    return None


def _kinds_in_words(kinds: frozenset[str]) -> str:
    return listed([words for kind, words in _IN_WORDS.items() if kind in kinds])


def _such_as(wanted: frozenset[str]) -> str:
    for kind, task in (
        ("jump", "bounce softly, knees bent"),
        ("travel", "walk, then side-step into space"),
        ("turn", "turn slowly, once each way"),
        ("transfer", "sway, bend and rise"),
    ):
        if kind in wanted:
            return task
    return "reach and stretch"


def _kinds(dance: Dance, step: Step) -> frozenset[str]:
    """The kinds of action a step needs, by its words and by what it names."""
    parts = (*step.makes, *step.develops, *step.joins, *step.dances, *step.shows)
    named = {
        kind
        for name in inside(dance, parts)
        if name not in dance.sections
        for action in actions_of(dance, name)
        for kind in action.kinds
    }
    told = kinds_moved(step.task) | kinds_moved(step.say or "")
    return frozenset(named - {"stillness"}) | told
