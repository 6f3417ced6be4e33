"""Faults of words against the dance: counts, groups and names that the unit says otherwise."""

from __future__ import annotations

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()

_LONG = (
    "Fold the boat once more and hold it still; then fold it back, and let it drift to the next. "
)
_HARD = ("canon", "unison", "retrograde", "accumulation", "motif", "transition", "improvise")


@fault("counts-said-differ", "set")
def counts_of_a_move_said_otherwise(unit: EditableUnit) -> Place | None:
    for name, motif in unit.top["motifs"].items():
        making = unit.making(name)
        for action in motif["actions"]:
            if making is not None and action.get("as") and " " not in action["as"]:
                word = action["as"].capitalize()
                return unit.set(
                    making[0], ("steps", making[1], "say"), f"{word} for eleven counts."
                )
    return None


@fault("into-another-grouping", "set")
def words_that_lead_to_another_size(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda step: step["grouping"] in ("fours", "fives", "sixes"))
    words = "Turn to the nearest person."
    if found is None:
        found = unit.first_step(lambda step: step["grouping"] in ("pairs", "threes"))
        words = "Get into fives."
    return found and unit.set(found[0], ("steps", found[1], "into"), words)


@fault("named-before-made", "set")
def a_later_motif_is_danced_in_the_first_lesson(unit: EditableUnit) -> Place | None:
    for name in unit.top["motifs"]:
        making = unit.making(name)
        if making is not None and making[0] != unit.lesson_files[0]:
            text = f"Half dance the {name.replace('-', ' ')} while half watch. Swap."
            return unit.set(unit.lesson_files[0], ("steps", 2, "task"), text)
    return None


@fault("word-before-taught", "set")
def a_later_word_is_used_in_the_first_lesson(unit: EditableUnit) -> Place | None:
    if any("canon" in word for _, _, step in unit.steps() for word in step.get("teaches", ())):
        return None
    unit.top.get("words", {}).pop("canon", None)
    for _, lesson in unit.lessons():
        lesson.get("words", {}).pop("canon", None)
    later = unit.data[unit.lesson_files[-1]]["steps"][2]
    later["teaches"] = ["canon"]
    text = "Half dance the canon while half watch. Swap."
    return unit.set(unit.lesson_files[0], ("steps", 2, "task"), text)


@fault("lesson-over-two-sides", "set")
def every_step_has_long_lines(unit: EditableUnit) -> Place | None:
    file = max(unit.lesson_files, key=lambda one: len(unit.data[one]["steps"]))
    if len(unit.data[file]["steps"]) < 8:
        return None
    for n, _ in enumerate(unit.data[file]["steps"]):
        for field in ("easier", "harder"):
            unit.set(file, ("steps", n, field), (_LONG * 5)[:390].strip())
    return (file, ("lesson",))
