"""Faults of where dancers stand, who they are and what they hear, told as the score has it not."""

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


@fault("group-size-said-otherwise", "set")
def sixes_in_words_and_fours_in_the_score(unit: EditableUnit) -> Place | None:
    letter = _first(unit)
    section = unit.top["sections"][letter]
    section["idea"] = "A beginning"
    section["end"]["place"] = "Where it began"
    section["danced"] = [{"what": one["what"], "as": "unison"} for one in section.get("danced", ())]
    if "counts" not in section:
        return None
    section["groups"] = {"size": 4}
    unit.set(unit.file, ("sections", letter, "start", "place"), "Each six on its own island")
    return unit.file, ("sections", letter, "groups", "size")


@fault("sound-nobody-brings", "set")
def a_whistle_for_a_sign(unit: EditableUnit) -> Place | None:
    if not unit.top.get("transitions"):
        return None
    return unit.set(unit.file, ("transitions", 0, "cue"), "The teacher blows a whistle twice")


@fault("sounds-counted-otherwise", "set")
def three_rolls_in_words_and_one_in_the_score(unit: EditableUnit) -> Place | None:
    section = unit.top["sections"][_first(unit)]
    counts = section.get("counts")
    if counts is None:
        return None
    section["heard"] = [{"counts": counts, "sound": "roll", "by": "teacher"}]
    section["sound"] = {
        "kind": "drum", "what": "Three rolls", "follows": "dancers follow the sound",
    }  # fmt: skip
    return unit.file, ("sections", _first(unit), "sound", "what")


@fault("steps-too-fast", "set")
def sixteen_steps_in_two_counts(unit: EditableUnit) -> Place | None:
    if "tempo" not in unit.top["dance"]:
        return None
    unit.top.setdefault("motifs", {})["dash"] = {
        "from": "teacher", "idea": "A dash", "actions": [
            {"travel": 2, "as": "dash", "step": "run", "steps": 16}, {"stillness": 6, "as": "stop"},
        ],
    }  # fmt: skip
    return unit.file, ("motifs", "dash", "actions", 0, "steps")
