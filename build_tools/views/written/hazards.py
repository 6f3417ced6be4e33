"""The first place in a unit where something is asked of pupils, and what has been said by then."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from dataclasses import dataclass

from build_tools.model.dance import Action, Dance
from build_tools.model.lesson import Step
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.movement.devices import Actions
from build_tools.problem import FieldPath
from build_tools.sentences.wordings import Wording, lowered
from build_tools.views.dance.progress import inside
from build_tools.views.reading.lesson_text import FieldText
from build_tools.views.written.unit_text import unit_text

_FOR_SOME = frozenset({"change", "if"})


@dataclass(frozen=True, slots=True)
class Hazard:
    """`lesson` and `step` are indexes from 0; `said` is how a teacher would point to it."""

    file: str
    path: FieldPath
    lesson: int
    step: int
    said: str


def first_hazard(unit: Unit, what: Wording, danced: Collection[str] = ()) -> Hazard | None:
    """The first step whose words ask for it, or that dances one of the names in `danced`."""
    by_words = next(worded_hazards(unit, what), None)
    for number, lesson in enumerate(unit.lessons if danced else ()):
        for index, step in enumerate(lesson.steps):
            if by_words and (by_words.lesson, by_words.step) <= (number, index):
                return by_words
            for name in sorted(inside(unit.dance, named_in(step)).intersection(danced)):
                return Hazard(lesson.file, ("steps", index), number, index, f"`{name}`")
    return by_words


def worded_hazards(unit: Unit, what: Wording) -> Iterator[Hazard]:
    """Every field of a step whose words ask for it, in the order of the unit."""
    for lesson, step, path, lower in unit_text(unit).doing:
        if said := what.asked(lower):
            file = unit.lessons[lesson].file
            yield Hazard(file, path, lesson, step, f'the words "{said}"')


def says(what: Wording, unit: Unit, lesson: int, step: int, in_lessons_only: bool = False) -> bool:
    """Whether something told to the class by that step says it: no later step, no later lesson."""
    text = unit_text(unit)
    for number in range(lesson + 1, 0 if in_lessons_only else -1, -1):
        _, fields = text.documents[number]
        for one, lower in zip(fields, text.lowers[number], strict=True):
            if number == lesson + 1 and one.path[:1] == ("steps",) and int(one.path[1]) > step:
                continue
            if for_some(one):
                continue
            if what.in_it(lower):
                return True
    return False


def for_some(field: FieldText) -> bool:
    """Whether a field is for some pupils or some days only, so that not all are told."""
    return field.path[:1] in {(part,) for part in _FOR_SOME}


def beside(unit: Unit, hazard: Hazard) -> tuple[str, ...]:
    """What a teacher reads just where the hazard is: its step, the lesson's safety and notes."""
    lesson = unit.lessons[hazard.lesson]
    step = lesson.steps[hazard.step]
    near = (step.into, step.say, step.task, step.look_for, step.easier)
    return tuple(lowered(text) for text in (*near, *lesson.safety, lesson.notes) if text)


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
