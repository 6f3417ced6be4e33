"""Faults in the order of making, joining, choosing and running, as late changes leave them."""

from __future__ import annotations

import itertools

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()


def _pairs(unit: EditableUnit) -> list[tuple[str, str]]:
    form = unit.top["dance"]["form"].split()
    return [(a, b) for a, b in dict.fromkeys(itertools.pairwise(form)) if a != b]


def _transition(unit: EditableUnit, pair: tuple[str, str]) -> int | None:
    """The transition from one section to the next, if one is written for them alone."""
    return next(
        (n for n, t in enumerate(unit.top.get("transitions", [])) if (t["from"], t["to"]) == pair),
        None,
    )


@fault("join-never-practised", "drop")
def join_never_practised(unit: EditableUnit) -> Place | None:
    pairs = _pairs(unit)
    if "order" in unit.top["dance"] or not pairs or (n := _transition(unit, pairs[0])) is None:
        return None
    if pairs[0] in itertools.pairwise(unit.top["dance"]["form"].split()[1:]):
        return None
    rest = list(dict.fromkeys(letter for pair in pairs[1:] for letter in pair))
    for _, _, step in unit.steps():
        step.pop("joins", None)
    form = unit.top["dance"]["form"].split()[1:]
    if len(rest) > 1:
        unit.data[unit.lesson_files[-1]]["steps"][1]["joins"] = form
    return unit.file, ("transitions", n)


@fault("whole-run-before-joins", "move")
def whole_run_before_joins(unit: EditableUnit) -> Place | None:
    if "order" in unit.top["dance"] or not _pairs(unit):
        return None
    first, second = unit.lesson_files[0], unit.lesson_files[-1]
    if not any("joins" in step for _, _, step in unit.steps()):
        return None
    for file, _, step in unit.steps():
        if file != second:
            step.pop("joins", None)
        step.pop("shows", None)
        step["dances"] = [name for name in step.get("dances", []) if name != "whole"]
    unit.data[second]["steps"][1]["joins"] = unit.top["dance"]["form"].split()
    return unit.set(first, ("steps", 1, "dances"), ["whole"]) and (first, ("steps", 1, "dances", 0))


@fault("section-made-before-its-moves", "move")
def section_made_before_its_moves(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        inside = dict.fromkeys(n for passage in section.get("danced", []) for n in passage["what"])
        for file, n, step in unit.steps():
            if letter not in step.get("makes", []):
                continue
            changed = [name for name in inside if name in unit.top.get("developments", {})]
            if not changed:
                break
            for _, _, other in unit.steps():
                other["develops"] = [x for x in other.get("develops", []) if x != changed[0]]
            unit.data[unit.lesson_files[-1]]["steps"][1]["develops"] = [changed[0]]
            if file == unit.lesson_files[-1]:
                break
            return file, ("steps", n, "makes", step["makes"].index(letter))
    return None


@fault("made-twice", "repeat")
def made_twice(unit: EditableUnit) -> Place | None:
    first = unit.first_step(lambda s: bool(s.get("makes")) and s["makes"][0].islower())
    if first is None:
        return None
    return unit.set(unit.lesson_files[-1], ("steps", 1, "makes"), first[2]["makes"][:1]) and (
        unit.lesson_files[-1],
        ("steps", 1, "makes", 0),
    )


@fault("taught-where-not-used", "set")
def taught_where_not_used(unit: EditableUnit) -> Place | None:
    written = str(unit.top.get("developments", {})) + str(unit.top["sections"])
    device = next(d for d in ("accumulation", "retrograde", "repetition") if d not in written)
    found = unit.first_step(
        lambda s: any(unit.top["sections"].get(n, {}).get("danced") for n in s.get("makes", []))
    )
    if found is None:
        return None
    unit.set(found[0], ("steps", found[1], "teaches"), [device])
    return found[0], ("steps", found[1], "teaches", 0)


@fault("same-line-in-two-lessons", "repeat")
def same_line_in_two_lessons(unit: EditableUnit) -> Place | None:
    first, second = unit.lesson_files[:2]
    return unit.set(second, ("pupils_make",), unit.data[first]["pupils_make"])


@fault("story-before-first-lesson", "move")
def story_before_first_lesson(unit: EditableUnit) -> Place | None:
    return unit.set(unit.lesson_files[0], ("story_so_far",), "Pupils made the first part.")


@fault("number-said-is-not-there", "set")
def number_said_is_not_there(unit: EditableUnit) -> Place | None:
    line = f"Leave the join for lesson {len(unit.lesson_files) + 1}."
    return unit.set(unit.lesson_files[0], ("if", "short_of_time"), line)


@fault("number-said-is-not-there", "set")
def step_said_is_not_there(unit: EditableUnit) -> Place | None:
    return unit.set(unit.lesson_files[1], ("never_did_last",), "In step 11, teach the first part.")


@fault("lesson-is-a-copy", "repeat")
def lesson_is_a_copy(unit: EditableUnit) -> Place | None:
    first, last = unit.lesson_files[-2:]
    unit.data[last]["steps"] = unit.data[first]["steps"]
    return last, ("title",)


@fault("join-names-another-part", "set")
def join_names_another_part(unit: EditableUnit) -> Place | None:
    pairs = _pairs(unit)
    if "order" in unit.top["dance"] or len(set(unit.top["sections"])) < 3 or not pairs:
        return None
    n = _transition(unit, pairs[0])
    third = next((x for x in unit.top["sections"] if x not in pairs[0]), None)
    if n is None or third is None:
        return None
    return unit.set(unit.file, ("transitions", n, "cue"), f"The teacher shows the letter {third}")
