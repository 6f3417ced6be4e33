"""Faults in a lesson's minutes, groups, tasks, warm-up and showing."""

from __future__ import annotations

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place, motifs_in

fault = Registry()


@fault("grouping-words-missing", "set")
def grouping_words_missing(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: s["phase"] in ("explore", "make", "develop"))
    if found is None:
        return None
    found[2].update(grouping="sixes", does="Dance on", task="Dance it twice.")
    found[2].pop("into", None)
    found[2].pop("say", None)
    return found[0], ("steps", found[1], "grouping")


@fault("least-over-planned", "stretch")
def least_over_planned(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[-1]
    return unit.set(file, ("steps", 1, "least"), unit.get(file, ("steps", 1, "minutes")) + 2)


@fault("longer-than-a-slot", "stretch")
def longer_than_a_slot(unit: EditableUnit) -> Place | None:
    return unit.set(unit.lesson_files[1], ("minutes",), 75)


@fault("making-task-unclear", "set")
def making_task_unclear(unit: EditableUnit) -> Place | None:
    danced = {
        name
        for letter in unit.top["sections"]
        for name in motifs_in(unit, letter)
        if len(unit.top["motifs"][name]["actions"]) > 2
    }
    found = unit.first_step(
        lambda s: s["phase"] == "make" and bool(danced.intersection(s.get("makes", ())))
    )
    if found is None:
        return None
    for field in ("counts", "say"):
        found[2].pop(field, None)
    found[2]["does"] = "Try something"
    return unit.set(found[0], ("steps", found[1], "task"), "Do something with your ideas.")


@fault("minutes-do-not-add-up", "set")
def minutes_do_not_add_up(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    unit.data[file]["steps"][0]["minutes"] += 2
    return file, ("minutes",)


@fault("more-watching-than-moving", "stretch")
def more_watching_than_moving(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[-1]
    for n, step in enumerate(unit.data[file]["steps"]):
        if step["phase"] == "look and talk":
            step.pop("least", None)
            unit.repeat(file, ("steps", n), 3)
            for copy in unit.data[file]["steps"][n : n + 3]:
                copy["minutes"] = 120
            return file, ("steps",)
    return None


@fault("needed-step-can-wait", "set")
def needed_step_can_wait(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: s["phase"] in ("warm-up", "look and talk", "cool-down"))
    return found and unit.set(found[0], ("steps", found[1], "can_wait"), True)


@fault("showing-does-not-fit", "stretch")
def showing_does_not_fit(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: "whole" in s.get("shows", ()))
    if found is None:
        return None
    found[2].pop("least", None)
    return unit.set(found[0], ("steps", found[1], "minutes"), 1)


@fault("too-long-sitting", "stretch")
def too_long_sitting(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: s["phase"] == "look and talk" and not s.get("shows"))
    if found is None:
        return None
    return unit.set(found[0], ("steps", found[1], "minutes"), 25)


@fault("vigorous-work-unprepared", "move")
def vigorous_work_unprepared(unit: EditableUnit) -> Place | None:
    for file, n, step in unit.steps():
        if step.get("intensity") == "vigorous":
            unit.move(file, ("steps", n), file, ("steps", 0))
            return file, ("steps", 0, "intensity")
    return None


@fault("warm-up-or-cool-down-missing", "drop")
def warm_up_or_cool_down_missing(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: s["phase"] == "cool-down")
    if found is None or found[1] != len(unit.data[found[0]]["steps"]) - 1:
        return None
    unit.drop(found[0], ("steps", found[1]))
    return found[0], ("steps",)


@fault("warm-up-does-not-prepare", "set")
def warm_up_does_not_prepare(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    step = unit.data[file]["steps"][0]
    step.update(does="Be ready", task="Sit and think of the story.")
    unit.data[file]["steps"][1]["intensity"] = "vigorous"
    for field in ("say", "look_for", "dances", "easier", "harder"):
        step.pop(field, None)
    return file, ("steps", 0, "task")


@fault("step-stands-twice", "repeat")
def step_stands_twice(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    unit.repeat(file, ("steps", 1), 2)
    return file, ("steps", 2, "does")
