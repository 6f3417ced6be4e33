"""Faults in what is heard: its lengths, its counts, its words and the cues that speak of it."""

from __future__ import annotations

from typing import Any

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()

_LIVE = {
    "kind": "pupils live",
    "what": "Knees are patted",
    "follows": "dancers follow the sound",
}


def _counted(unit: EditableUnit) -> tuple[str, Any] | None:
    """The first section with a whole number of counts."""
    for letter, section in unit.top["sections"].items():
        if isinstance(section.get("counts"), int):
            return letter, section
    return None


def _joined(unit: EditableUnit) -> tuple[int, Any] | None:
    """The first join that takes counts."""
    for n, join in enumerate(unit.top.get("transitions", [])):
        if isinstance(join.get("counts"), int) and join["as"] in ("move", "hold"):
            return n, join
    return None


@fault("heard-does-not-fill", "set")
def eight_counts_too_many(unit: EditableUnit) -> Place | None:
    found = _counted(unit)
    if found is None:
        return None
    letter, section = found
    path = ("sections", letter, "heard")
    return unit.set(unit.file, path, [{"counts": section["counts"] + 8, "sound": "beat"}])


@fault("heard-does-not-fill", "insert")
def a_join_too_short(unit: EditableUnit) -> Place | None:
    found = _joined(unit)
    if found is None or found[1]["counts"] < 2:
        return None
    n, join = found
    heard = [{"counts": join["counts"] - 1, "sound": "silence"}]
    return unit.set(unit.file, ("transitions", n, "heard"), heard)


@fault("heard-does-not-fill", "stretch")
def a_span_too_long(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        if "counts" not in section:
            heard = [{"seconds": 600, "sound": "silence"}]
            return unit.set(unit.file, ("sections", letter, "heard"), heard)
    return None


@fault("heard-on-no-count", "set")
def a_count_that_is_not_there(unit: EditableUnit) -> Place | None:
    found = _joined(unit)
    if found is None:
        return None
    n, join = found
    piece = {"counts": join["counts"], "sound": "claps", "on": [1, join["counts"] + 1]}
    unit.set(unit.file, ("transitions", n, "heard"), [piece])
    return unit.file, ("transitions", n, "heard", 0, "on")


@fault("heard-on-no-count", "insert")
def a_word_too_many(unit: EditableUnit) -> Place | None:
    found = _joined(unit)
    if found is None:
        return None
    n, join = found
    says = ["and"] * (join["counts"] + 1)
    piece = {"counts": join["counts"], "sound": "voice", "says": says}
    unit.set(unit.file, ("transitions", n, "heard"), [piece])
    return unit.file, ("transitions", n, "heard", 0, "says")


@fault("sound-unsaid", "set")
def a_live_sound_that_nobody_says(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        section.pop("heard", None)
        section["sound"] = _LIVE
        unit.top["format"] = 2
        return unit.file, ("sections", letter)
    return None


@fault("sound-unsaid", "drop")
def a_change_of_sound_that_nobody_says(unit: EditableUnit) -> Place | None:
    found, top = _joined(unit), unit.top
    if found is None or "order" in top["dance"]:
        return None
    n, join = found
    before, after = (top["sections"].get(join[end]) for end in ("from", "to"))
    if before is None or after is None or join["from"] == join["to"]:
        return None
    for section, sound in ((before, "beat"), (after, "voice")):
        if not isinstance(section.get("counts"), int):
            return None
        section["heard"] = [{"counts": section["counts"], "sound": sound}]
    for other in top["sections"].values():
        if "heard" not in other:
            return None
    join.pop("heard", None)
    top["format"] = 2
    return unit.file, ("transitions", n)


@fault("cue-against-sound", "set")
def a_drum_that_stops_and_beats_on(unit: EditableUnit) -> Place | None:
    found = _joined(unit)
    if found is None:
        return None
    n, join = found
    join["heard"] = [{"counts": join["counts"], "sound": "beat"}]
    return unit.set(unit.file, ("transitions", n, "cue"), "The drum stops")


@fault("cue-against-sound", "insert")
def a_shaker_that_nobody_shakes(unit: EditableUnit) -> Place | None:
    found = _joined(unit)
    if found is None:
        return None
    n, join = found
    join["heard"] = [{"counts": join["counts"], "sound": "beat"}]
    for section in unit.top["sections"].values():
        if isinstance(section.get("counts"), int):
            section["heard"] = [{"counts": section["counts"], "sound": "beat"}]
        elif "returns" not in section:
            section["heard"] = [{"seconds": _least(section), "sound": "silence"}]
    return unit.set(unit.file, ("transitions", n, "cue"), "The shaker starts")


def _least(section: Any) -> int:
    """The least seconds of a section without counts."""
    span = section.get("timed") or section.get("improvised")
    return int(str(span["seconds"]).split(" ")[0])


@fault("words-off-their-counts", "move")
def a_word_a_count_early(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        danced = section.get("danced", [])
        if not isinstance(section.get("counts"), int) or not danced:
            continue
        first = danced[0]
        motif = unit.top["motifs"].get(first["what"][0])
        if first["as"] != "unison" or motif is None or len(first["what"]) > 1:
            continue
        found = _early(motif["actions"])
        if found is None:
            continue
        says, place = found
        piece = {"counts": len(says), "sound": "voice", "says": says}
        left = section["counts"] - len(says)
        section["heard"] = [piece] + ([{"counts": left, "sound": "beat"}] if left else [])
        return unit.file, ("sections", letter, "heard", 0, "says", place)
    return None


def _early(actions: list[Any]) -> tuple[list[str], int] | None:
    """What is said over a motif with its second word a count early, and where that is."""
    kinds = ("travel", "turn", "jump", "gesture", "stillness", "transfer")
    long = [next(one[kind] for kind in kinds if kind in one) for one in actions]
    words = [str(one.get("as", "")).split(" ")[0] for one in actions]
    if not all(isinstance(one, int) for one in long) or not all(words[:2]) or long[0] < 2:
        return None
    if str(actions[1]["as"]) != words[1] or words[0][:2] == words[1][:2]:
        return None
    says = ["-"] * sum(long)
    says[0], says[long[0] - 1] = words[0], words[1]
    return says, long[0] - 1
