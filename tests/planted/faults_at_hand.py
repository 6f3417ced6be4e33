"""Faults of care and of plans in a hurry: what is tied, blocked or too short."""

from __future__ import annotations

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()


@fault("another-stop-signal", "set")
def a_cymbal_in_the_last_lesson(unit: EditableUnit) -> Place | None:
    for file in unit.lesson_files:
        unit.set(file, ("steps", 0, "say"), "When I raise my hand, stop.")
        unit.set(file, ("steps", 0, "task"), "Walk and turn.")
        unit.data[file]["steps"][0].pop("you", None)
    if len(unit.lesson_files) == 1:
        return None
    return unit.set(unit.lesson_files[-1], ("steps", 0, "say"), "When the bell rings, stop.")


@fault("tied-to-the-body", "set")
def a_rope_round_the_waist(unit: EditableUnit) -> Place | None:
    path = ("steps", 1, "task")
    return unit.set(unit.lesson_files[0], path, "Tie the rope round your waist, and lean.")


@fault("way-out-blocked", "set")
def chairs_in_front_of_the_door(unit: EditableUnit) -> Place | None:
    return unit.set(
        unit.lesson_files[0], ("steps", 0, "you"), "Put the chairs in front of the door."
    )


@fault("easier-asks-for-more", "set")
def easier_on_one_leg(unit: EditableUnit) -> Place | None:
    return unit.set(unit.lesson_files[0], ("steps", 1, "easier"), "Hop it on one leg.")


@fault("least-too-short-to-dance", "set")
def one_minute_for_five_runs(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda step: "whole" in step.get("dances", ()) and step["minutes"] > 1)
    if found is None:
        return None
    file, n, _ = found
    unit.set(file, ("steps", n, "task"), "Dance the whole five times.")
    return unit.set(file, ("steps", n, "least"), 1)


@fault("looks-for-jumps-nobody-makes", "set")
def landings_of_nobody(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    step = unit.data[file]["steps"][0]
    for field in ("say", "you", "into", "dances"):
        step.pop(field, None)
    step["does"], step["task"] = "Walk and stop", "Walk about, and stop on the call."
    return unit.set(file, ("steps", 0, "look_for"), "Soft landings.")


@fault("lesson-minutes-said-otherwise", "set")
def five_hundred_minutes(unit: EditableUnit) -> Place | None:
    words = "It takes 500 minutes in the hall."
    return unit.set(unit.lesson_files[0], ("classroom_first",), [words])[0], ("classroom_first", 0)


@fault("spoken-counts-do-not-add-up", "set")
def eight_counts_of_six_words(unit: EditableUnit) -> Place | None:
    words = "It is eight counts: “In, two, go, two, three, home.”"
    return unit.set(unit.lesson_files[0], ("steps", 1, "you"), words)


@fault("times-run-backwards", "set")
def a_bell_after_its_end(unit: EditableUnit) -> Place | None:
    words = "The tune begins after 2 seconds, the bell is at 47, the end at 46."
    return unit.set(unit.lesson_files[0], ("steps", 1, "you"), words)
