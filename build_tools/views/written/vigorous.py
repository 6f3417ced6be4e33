"""Vigorous work in a lesson, and what gets bodies ready for it."""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.problem import FieldPath
from build_tools.sentences.kinds_of_move import kinds_moved
from build_tools.sentences.travel import fast_travel
from build_tools.views.written.jumps import jump_danced


def vigorous(dance: Dance, step: Step) -> str | None:
    """Why the step is vigorous work, to be read after its number; None if it is not.

    A step that says how hard the body works is taken at its word, and so is a warm-up that runs.
    """
    if step.intensity:
        return "is vigorous" if step.intensity == "vigorous" else None
    jump = jump_danced(dance, step)
    if jump:
        return f"dances a jump ({jump.said})"
    if step.phase != "warm-up":
        for text in (step.say, step.task, step.does):
            if said := fast_travel(text or ""):
                return f'travels fast (the words "{said.text}")'
    return None


def place_of(lesson: Lesson, index: int) -> FieldPath:
    """Where a lesson says how hard the step at `index` works the body: the field, or the step."""
    said = lesson.steps[index].intensity
    return ("steps", index, "intensity") if said else ("steps", index)


def prepares(dance: Dance, step: Step) -> bool:
    """Whether the step gets bodies ready: a warm-up, or anything else danced without haste."""
    if vigorous(dance, step):
        return False
    if step.phase == "warm-up" or step.intensity:
        return True
    if step.phase == "look and talk":
        return False
    if step.makes or step.develops or step.joins or step.dances:
        return True
    return any(kinds_moved(text) for text in (step.say or "", step.task, step.does))


def unprepared(dance: Dance, lesson: Lesson) -> Iterator[tuple[int, str]]:
    """The vigorous steps with nothing before them that prepares: each index from 0, and why.

    A warm-up that is vigorous itself is the last of them: mended, it prepares for what follows.
    """
    for index, step in enumerate(lesson.steps):
        why = vigorous(dance, step)
        if why:
            yield index, why
        if step.phase == "warm-up" or prepares(dance, step):
            return
