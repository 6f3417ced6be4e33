"""Faults of where dancers stand and look, told in words as the score does not have it."""

from __future__ import annotations

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()


def _first(unit: EditableUnit) -> str:
    return str(unit.top["dance"]["form"].split()[0])


@fault("distance-said-otherwise", "set")
def six_steps_in_words_and_two_in_the_score(unit: EditableUnit) -> Place | None:
    path = ("sections", _first(unit), "start")
    unit.set(unit.file, (*path, "place"), "On your own spot, six steps apart")
    return unit.set(unit.file, (*path, "apart"), 2)


@fault("facing-said-otherwise", "set")
def face_to_face_in_words_and_to_the_front_in_the_score(unit: EditableUnit) -> Place | None:
    path = ("sections", _first(unit), "start")
    unit.set(unit.file, (*path, "place"), "Face to face with your partner, low")
    return unit.set(unit.file, (*path, "facing"), "front")


@fault("side-named-otherwise", "set")
def a_side_on_the_other_hand(unit: EditableUnit) -> Place | None:
    unit.set(unit.file, ("dance", "sides"), {"left": "quay", "right": "island"})
    file = unit.lesson_files[0]
    return unit.set(file, ("steps", 1, "task"), "Look to the island, on your left, and wait.")


@fault("groups-do-not-make-the-class", "set")
def a_class_of_thirty_in_groups_of_twenty_nine(unit: EditableUnit) -> Place | None:
    words = "Stand in your groups. 30 are five fours and three threes."
    return unit.set(unit.lesson_files[0], ("steps", 1, "into"), words)
