"""Faults that a subject leader sees: too many words, one idea only, what is left and not seen."""

from __future__ import annotations

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()

_DEVICES = ["retrograde", "accumulation", "fragmentation", "embellishment"]


@fault("more-than-two-new-words", "set")
def four_words_at_once(unit: EditableUnit) -> Place | None:
    return unit.set(unit.lesson_files[0], ("steps", 0, "teaches"), _DEVICES)


@fault("end-points-say-nothing-of-how", "set")
def order_and_nothing_else(unit: EditableUnit) -> Place | None:
    for point in unit.top["end_points"].values():
        point.update(every_pupil="dances the moves in order", looks_like="The order is right.")
    return unit.file, ("end_points",)


@fault("one-formation-one-facing", "set")
def one_wall_all_through(unit: EditableUnit) -> Place | None:
    unit.top["years"] = [{"nation": "England", "years": [5]}]
    for section in unit.top["sections"].values():
        for end in ("start", "end"):
            if end in section:
                section[end] = {"formation": "line", "facing": "front", "place": "The line"}
    for motif in unit.top.get("motifs", {}).values():
        for action in motif["actions"]:
            action.pop("facing", None)
    if any("facing" in str(one) for one in unit.top.get("developments", {}).values()):
        return None
    return unit.file, ("sections",)


@fault("developed-one-way-only", "set")
def changed_in_order_alone(unit: EditableUnit) -> Place | None:
    motifs = list(unit.top.get("motifs", {}))
    if not motifs or not any("counts" in one for one in unit.top["sections"].values()):
        return None
    unit.top["years"] = [{"nation": "England", "years": [5]}]
    for section in unit.top["sections"].values():
        if "danced" in section:
            section["danced"] = [{"what": [motifs[0]], "as": "unison"}]
    names = list(unit.top.get("developments", {})) or ["undone"]
    unit.top["developments"] = {name: {"of": motifs[0], "device": "retrograde"} for name in names}
    next(unit.steps())[2]["develops"] = [names[0]]
    return unit.file, ("developments",)


@fault("looked-for-and-left", "set")
def zebra_stripes(unit: EditableUnit) -> Place | None:
    first, second = unit.lesson_files[:2]
    if "look_and_talk" not in unit.data[first]:
        return None
    unit.data[first]["look_and_talk"]["looking_for"] = "purple elephants"
    return second, ("focus",)


@fault("stop-signal-unseen", "set")
def taps_alone(unit: EditableUnit) -> Place | None:
    for file in unit.bodies:
        unit.bodies[file] = ""
    for skill in unit.top.get("skills", []):
        skill["catch_up"] = "Walk and stop."
    for _, lesson in unit.lessons():
        lesson["safety"] = ["Check the floor is dry."]
    for _, _, step in unit.steps():
        step["task"] = "Walk on and on."
        for field in ("say", "you"):
            step.pop(field, None)
    return unit.set(unit.lesson_files[0], ("steps", 0, "say"), "Two quick taps mean stop.")


@fault("odd-group-watches-nobody", "set")
def seven_fours(unit: EditableUnit) -> Place | None:
    for file in unit.bodies:
        unit.bodies[file] = ""
    file, n, step = next(unit.steps())
    for field in ("into", "say", "easier"):
        step.pop(field, None)
    step["grouping"] = "fours"
    return unit.set(file, ("steps", n, "task"), "Dance for the next four, then swap.")
