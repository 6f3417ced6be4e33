"""What is checked and said before a lesson moves: the author's lines, and what always holds."""

from __future__ import annotations

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.page_words.words import N_, _
from build_tools.views.lesson.class_groups import GROUP_SIZES
from build_tools.views.lesson.lesson_wording import EVERY_TIME
from build_tools.views.lesson.notes_in_steps import danced_in
from build_tools.views.lesson.room_beside_chairs import tells_room_beside_chairs

ROOM_BESIDE_CHAIRS = N_("Leave two steps more beside a wheelchair, one beside a chair.")
"""Said where the unit itself does not say how much room, and others dance near."""


def checks_before(unit: Unit, lesson: Lesson) -> tuple[str, ...]:
    """The lines under "Before they move".

    Room beside a chair is for all the others to leave: under one step, folded away, a teacher read
    it too late.
    """
    near = any(
        GROUP_SIZES.get(step.grouping, 1) > 1 and (step.makes or step.develops or danced_in(step))
        for step in lesson.steps
    )
    room = (_(ROOM_BESIDE_CHAIRS),) if near and not tells_room_beside_chairs(unit) else ()
    return (*lesson.safety, *room, _(EVERY_TIME))
