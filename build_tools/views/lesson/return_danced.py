"""Which lesson's words hold where a step dances a changed return alone: those of its making."""

from __future__ import annotations

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson, Step
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of
from build_tools.views.dance.parts_named import letters_in, motifs_in
from build_tools.views.lesson.later_parts import first_lessons
from build_tools.views.lesson.notes_in_steps import danced_in
from build_tools.views.words.plain_words import action_label


def dances_a_return(dance: Dance, step: Step) -> bool:
    """Whether a step dances a changed return and no other part."""
    sections = [dance.sections[letter] for letter in letters_in(dance, danced_in(step))]
    return bool(sections) and all(one.returns is not None for one in sections)


def lesson_of_return(unit: Unit, lesson: Lesson, step: Step, word: str) -> Lesson | None:
    """The earlier lesson that made the changed return, where a step dances nothing else.

    What the first lesson says of a move, to turn to a partner, is wrong in a return in which
    partners face each other already. None where that lesson's notes may be of a move of the
    same `word` elsewhere.
    """
    if not dances_a_return(unit.dance, step):
        return None
    first = first_lessons(unit)
    made = max(first[letter] for letter in letters_in(unit.dance, danced_in(step)))
    found = next((one for one in unit.lessons if one.number == made < lesson.number), None)
    return found if found and _made_for_it(unit.dance, found, step, word) else None


def _made_for_it(dance: Dance, lesson: Lesson, step: Step, word: str) -> bool:
    """Whether all that a lesson makes with a move of that word is danced in the return."""
    in_return = motifs_in(dance, danced_in(step))
    made = [name for one in lesson.steps for name in (*one.makes, *one.develops)]
    return all(
        name in in_return
        for name in motifs_in(dance, made)
        if any(action_label(one).casefold() == word.casefold() for one in actions_of(dance, name))
    )
