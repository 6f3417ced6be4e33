"""Where in a unit something is asked of pupils, and what has been said by then."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from dataclasses import dataclass

from build_tools.model.dance import Action, Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.movement.devices import Actions
from build_tools.problem import FieldPath
from build_tools.sentences.sayings import Said, Saying
from build_tools.views.dance.when_made import inside
from build_tools.views.written.unit_text import DOING, unit_text

_FOR_SOME = frozenset({"change", "if"})


@dataclass(frozen=True, slots=True)
class Hazard:
    """`lesson` and `step` are indexes from 0; `said` is how a teacher would point to it."""

    file: str
    path: FieldPath
    lesson: int
    step: int
    said: str


def hazards(
    unit: Unit, what: Saying, judge: Callable[[str], Said | None] | None = None
) -> Iterator[Hazard]:
    """Every field of a step that asks for it, in the order of the unit.

    Where `judge` is given, it has the last word on a field that says `what`.
    """
    for found in unit_text(unit).saying(what, DOING):
        path = found.field.path
        if path[:1] != ("steps",):
            continue
        said = judge(found.field.text) if judge else found.said
        if said:
            lesson, step = found.document - 1, int(path[1])
            yield Hazard(found.file, path, lesson, step, f'the words "{said.text}"')


def first_hazard(
    unit: Unit,
    what: Saying,
    danced: Collection[str] = (),
    judge: Callable[[str], Said | None] | None = None,
) -> Hazard | None:
    """The first step whose words ask for it, or that dances one of the names in `danced`."""
    by_words = next(hazards(unit, what, judge), None)
    for number, lesson in enumerate(unit.lessons if danced else ()):
        for index, step in enumerate(lesson.steps):
            if by_words and (by_words.lesson, by_words.step) <= (number, index):
                return by_words
            for name in sorted(inside(unit.dance, named_in(step)).intersection(danced)):
                return Hazard(lesson.file, ("steps", index), number, index, f"`{name}`")
    return by_words


def of_step(unit: Unit, hazard: Hazard) -> tuple[str, ...]:
    """What the hazard's own step says to everyone, and its easier way."""
    step = unit.lessons[hazard.lesson].steps[hazard.step]
    return (*told_in(step), *((step.easier,) if step.easier else ()))


def text_at(unit: Unit, hazard: Hazard) -> str:
    """What stands in the field of the hazard."""
    step = unit.lessons[hazard.lesson].steps[hazard.step]
    return str(getattr(step, str(hazard.path[2])) or "")


def told_in(step: Step) -> tuple[str, ...]:
    """What a step tells all pupils or their teacher, and what it looks for in them."""
    return tuple(t for t in (step.into, step.say, step.task, step.you, step.look_for) if t)


def told_before(unit: Unit, hazard: Hazard) -> Iterator[str]:
    """What the class has been told by the step of the hazard, the nearest first.

    The lesson's `safety`, earlier steps of the lesson, and the same of the lessons before.
    """
    for number in range(hazard.lesson, -1, -1):
        lesson = unit.lessons[number]
        last = hazard.step if number == hazard.lesson else len(lesson.steps) - 1
        yield from _told_by(lesson, last)


def _told_by(lesson: Lesson, last: int) -> Iterator[str]:
    yield from lesson.safety
    for step in reversed(lesson.steps[: last + 1]):
        yield from told_in(step)


def for_all(path: FieldPath) -> bool:
    """Whether a field is for everyone, and not for some pupils or some days only."""
    return not path or path[0] not in _FOR_SOME


def named_in(step: Step) -> tuple[str, ...]:
    """The parts of the dance that a step makes, joins, dances or shows."""
    return (*step.makes, *step.develops, *step.joins, *step.dances, *step.shows)


def written_actions(dance: Dance) -> Iterator[Action]:
    """Every action written in motifs and developments, before anything is worked out."""
    for motif in dance.motifs.values():
        yield from motif.actions
    for development in dance.developments.values():
        if development.replacement:
            yield development.replacement
        for addition in development.added:
            yield addition.action


class _Latest:
    """The dance worked out last. Several rules ask for it one after another."""

    kept: tuple[Dance | None, dict[str, Actions]] = (None, {})


def actions_by_name(dance: Dance) -> dict[str, Actions]:
    """The actions of every motif and development, worked out."""
    kept, found = _Latest.kept
    if kept is not dance:
        found = {n: actions_of(dance, n) for n in (*dance.motifs, *dance.developments)}
        _Latest.kept = (dance, found)
    return found


def names_with(dance: Dance, wanted: Callable[[Action], bool]) -> frozenset[str]:
    """The motifs and developments that have an action as `wanted`, once they are worked out."""
    return frozenset(
        name
        for name, actions in actions_by_name(dance).items()
        if any(wanted(action) for action in actions)
    )
