"""Faults in what pupils choose: from what, who does, and in which step."""

from __future__ import annotations

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()


@fault("choice-made-by-others", "set")
def the_class_votes_on_what_is_each_pupils(unit: EditableUnit) -> Place | None:
    for file, n, step in unit.steps():
        settled = step.get("settles", ())
        if len(settled) == 1 and settled[0] in unit.top.get("choices", {}):
            unit.top["choices"][settled[0]]["by"] = "each pupil"
            unit.set(file, ("steps", n, "say"), "Try both.")
            return unit.set(file, ("steps", n, "task"), "Try both, and vote for one as a class.")
    return None


@fault("choice-never-settled", "drop")
def choice_never_settled(unit: EditableUnit) -> Place | None:
    name = next(iter(unit.top.get("choices", {})), None)
    if name is None:
        return None
    for _, _, step in unit.steps():
        if name in step.get("settles", []):
            step["settles"].remove(name)
    return unit.file, ("choices", name)


@fault("choice-settled-after-needed", "move")
def choice_settled_after_needed(unit: EditableUnit) -> Place | None:
    developments = unit.top.get("developments", {})
    made = {n: file for file, _, s in unit.steps() for n in s.get("develops", [])}
    last = unit.lesson_files[-1]
    name = next((n for n in developments if made.get(n, last) != last), None)
    choice = next(iter(unit.top.get("choices", {})), None)
    if name is None or choice is None:
        return None
    developments[name]["choice"] = choice
    for _, _, step in unit.steps():
        step["settles"] = [x for x in step.get("settles", []) if x != choice]
    unit.set(last, ("steps", 1, "settles"), [choice])
    return last, ("steps", 1, "settles", 0)


@fault("choice-settled-too-late", "move")
def choice_settled_too_late(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: bool(s.get("settles")))
    last = unit.lesson_files[-1]
    steps = unit.data[last]["steps"]
    shown = next((n for n, s in enumerate(steps) if "whole" in s.get("shows", [])), None)
    if found is None or shown is None:
        return None
    name = found[2]["settles"][0]
    for _, _, step in unit.steps():
        if name in step.get("settles", []):
            step["settles"].remove(name)
    return last, (*unit.set(last, ("steps", shown, "settles"), [name])[1], 0)


@fault("choice-settled-too-soon", "move")
def choice_settled_too_soon(unit: EditableUnit) -> Place | None:
    first = unit.lesson_files[0]
    made = {n: file for file, _, s in unit.steps() for n in s.get("makes", [])}
    choice = next(iter(unit.top.get("choices", {})), None)
    for development in unit.top.get("developments", {}).values():
        if choice is None or made.get(development["of"], first) == first:
            continue
        for other in unit.top["developments"].values():
            if other.get("choice") == choice:
                other["choice"] = list(unit.top["choices"])[-1]
        development["choice"] = choice
        for _, _, step in unit.steps():
            step["settles"] = [x for x in step.get("settles", []) if x != choice]
        unit.set(first, ("steps", 0, "settles"), [choice])
        return first, ("steps", 0, "settles", 0)
    name, motif = next(iter(unit.top.get("motifs", {}).items()), (None, None))
    if choice is None or motif is None or name is None:
        return None
    found = unit.first_step(lambda s: name in s.get("makes", []))
    if found is None or found[1] == 0:
        return None
    unit.top.setdefault("developments", {})["changed"] = {
        "of": name,
        "device": "change of size",
        "choice": choice,
    }
    for _, _, step in unit.steps():
        step["settles"] = [x for x in step.get("settles", []) if x != choice]
        if step is not found[2] and step["phase"] in ("warm-up", "explore"):
            step.pop("dances", None)
    unit.set(first, ("steps", 0, "settles"), [choice])
    return first, ("steps", 0, "settles", 0)


@fault("choice-settled-twice", "repeat")
def choice_settled_twice(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: bool(s.get("settles")))
    if found is None or found[:2] == (unit.lesson_files[-1], 1):
        return None
    unit.set(unit.lesson_files[-1], ("steps", 1, "settles"), found[2]["settles"][:1])
    return unit.lesson_files[-1], ("steps", 1, "settles", 0)


@fault("choice-with-nobody-to-ask", "move")
def choice_with_nobody_to_ask(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: bool(s.get("settles")))
    if found is None:
        return None
    unit.set(unit.file, ("choices", found[2]["settles"][0], "by"), "pairs")
    found[2]["grouping"] = "alone"
    return found[0], ("steps", found[1], "settles", 0)


@fault("if-not-is-no-option", "set")
def if_not_is_no_option(unit: EditableUnit) -> Place | None:
    name = next(iter(unit.top.get("choices", {})), None)
    if name is None:
        return None
    unit.set(unit.file, ("choices", name, "from"), ["bigger", "smaller"])
    return unit.set(unit.file, ("choices", name, "if_not"), "Backwards.")


@fault("option-cut-at-a-comma", "set")
def option_cut_at_a_comma(unit: EditableUnit) -> Place | None:
    name = next(iter(unit.top.get("choices", {})), None)
    if name is None:
        return None
    options = ["wide", "like a puddle on the path", "round", "like a drop on a leaf"]
    unit.set(unit.file, ("choices", name, "from"), options)
    return unit.file, ("choices", name, "from", 1)


@fault("options-alike", "repeat")
def options_alike(unit: EditableUnit) -> Place | None:
    name = next(iter(unit.top.get("choices", {})), None)
    if name is None:
        return None
    options = unit.top["choices"][name]["from"]
    options[-1] = options[0]
    return unit.file, ("choices", name, "from", len(options) - 1)


@fault("order-is-no-order", "set")
def order_is_no_order(unit: EditableUnit) -> Place | None:
    choice = next(
        (
            name
            for name, one in unit.top.get("choices", {}).items()
            if not any("A, B" in option or "B, A" in option for option in one["from"])
        ),
        None,
    )
    if choice is None:
        return None
    return unit.set(unit.file, ("dance", "order"), choice)
