"""Faults in a step's groups, counts and phase, and in the fields about the unit as a whole."""

from __future__ import annotations

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()


@fault("parts-more-than-dancers", "set")
def parts_more_than_dancers(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        for passage in section.get("danced", []):
            passage.update({"as": "canon in turn", "parts": 4, "who": "dancers one to four"})
            passage.pop("after", None)
            break
        else:
            continue
        for file, n, step in unit.steps():
            if letter in step.get("makes", []) and step["phase"] == "make":
                return unit.set(file, ("steps", n, "grouping"), "pairs")
        return None
    return None


@fault("into-with-nobody", "insert")
def into_with_nobody(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: s["grouping"] == "alone")
    if found is None:
        return None
    found[2]["into"] = "Turn to the nearest person. One over makes a three."
    return found[0], ("steps", found[1], "grouping")


@fault("step-counts-do-not-fit", "set")
def step_counts_do_not_fit(unit: EditableUnit) -> Place | None:
    for file, n, step in unit.steps():
        for letter in step.get("dances", []):
            if "counts" in unit.top["sections"].get(letter, {}) and step["phase"] != "warm-up":
                return unit.set(file, ("steps", n, "counts"), 37)
    return None


@fault("cool-down-works-hard", "set")
def cool_down_works_hard(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: s["phase"] == "cool-down")
    if found is None:
        return None
    found[2]["intensity"] = "steady"
    return found[0], ("steps", found[1])


@fault("gentle-with-jumps", "set")
def gentle_with_jumps(unit: EditableUnit) -> Place | None:
    motif = next(iter(unit.top.get("motifs", {})), None)
    if motif is None:
        return None
    unit.top["motifs"][motif]["actions"][0] = {"jump": 2, "as": "spring"}
    found = unit.first_step(lambda s: motif in s.get("makes", []) and s["phase"] != "look and talk")
    if found is None:
        return None
    return unit.set(found[0], ("steps", found[1], "intensity"), "gentle")


@fault("warm-up-too-short", "set")
def warm_up_too_short(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: s["phase"] == "warm-up")
    if found is None:
        return None
    return unit.set(found[0], ("steps", found[1], "minutes"), 1)


@fault("step-that-makes-can-wait", "set")
def step_that_makes_can_wait(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: bool(s.get("makes")))
    if found is None:
        return None
    return unit.set(found[0], ("steps", found[1], "can_wait"), True)


@fault("phase-names-nothing", "drop")
def phase_names_nothing(unit: EditableUnit) -> Place | None:
    for file, n, step in unit.steps():
        field = {"join": "joins", "show": "shows"}.get(step["phase"])
        if field:
            step.pop(field, None)
            return file, ("steps", n)
    return None


@fault("phase-goes-over-but-makes", "set")
def phase_goes_over_but_makes(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: bool(s.get("makes")))
    if found is None:
        return None
    found[2]["phase"] = "recall"
    return found[0], ("steps", found[1], "makes")


@fault("lesson-of-another-length", "stretch")
def lesson_of_another_length(unit: EditableUnit) -> Place | None:
    return unit.set(unit.lesson_files[1], ("minutes",), 75)


@fault("lookers-do-not-fit-grouping", "set")
def lookers_do_not_fit_grouping(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    for step in unit.data[file]["steps"]:
        if step["grouping"] in ("half class", "pairs", "threes"):
            step["grouping"] = "whole class"
    return unit.set(file, ("look_and_talk", "who"), "partner")


@fault("looks-back-to-what-was-not-there", "set")
def looks_back_to_what_was_not_there(unit: EditableUnit) -> Place | None:
    first, second = unit.lesson_files[:2]
    then = str([step.get("dances") for step in unit.data[first]["steps"]])
    motif = {"from": "teacher", "idea": "New", "actions": [{"turn": 4, "as": "wheel"}]}
    unit.top["motifs"]["planted"] = motif
    if "whole" in then:
        return None
    step = unit.data[second]["steps"][1]
    for field in ("makes", "develops", "joins", "shows"):
        step.pop(field, None)
    step["dances"] = ["planted"]
    step["ask"] = [{"question": "What is clearer than before?", "looks_back_to": 1}]
    return second, ("steps", 1, "ask", 0, "looks_back_to")


@fault("looks-back-to-another-lesson", "set")
def looks_back_to_another_lesson(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[2]
    question = {"question": "What is clearer than in lesson 1?", "looks_back_to": 2}
    unit.data[file]["look_and_talk"]["questions"][0] = question
    return file, ("look_and_talk", "questions", 0, "looks_back_to")


@fault("issued-after-bank", "set")
def issued_after_bank(unit: EditableUnit) -> Place | None:
    return unit.set(unit.file, ("issued",), "2099-01-31")


@fault("day-not-in-calendar", "set")
def day_not_in_calendar(unit: EditableUnit) -> Place | None:
    return unit.set(unit.file, ("issued",), "2026-06-31")


@fault("read-at-a-later-edition", "set")
def read_at_a_later_edition(unit: EditableUnit) -> Place | None:
    unit.top["read_by"] = [_reading("dance adviser", "99.0.0")]
    return unit.file, ("read_by", 0, "edition")


@fault("reader-is-named", "set")
def reader_is_named(unit: EditableUnit) -> Place | None:
    unit.top["read_by"] = [_reading("Morwenna Trevail, dance adviser", unit.top["edition"])]
    return unit.file, ("read_by", 0, "role")


def _reading(role: str, edition: str) -> dict[str, object]:
    return {"role": role, "edition": edition, "day": "2026-11-20", "for": ["truth"]}


@fault("curriculum-of-another-nation", "set")
def curriculum_of_another_nation(unit: EditableUnit) -> Place | None:
    link = unit.top["curriculum"][0]
    link.update(nation="Wales", stage="progression step 3", says="Creating")
    return unit.file, ("curriculum", 0, "nation")


@fault("years-far-apart", "set")
def years_far_apart(unit: EditableUnit) -> Place | None:
    unit.top["years"] = [{"nation": "England", "years": [1, 6]}]
    return unit.file, ("years", 0, "years")


@fault("subject-unknown", "set")
def subject_with_a_slip(unit: EditableUnit) -> Place | None:
    return unit.set(unit.file, ("subjects", 0), "Goegraphy")


@fault("tried-though-not-taught", "set")
def tried_though_not_taught(unit: EditableUnit) -> Place | None:
    unit.top["tried"] = {"taught": False, "changed": "The second part is shorter now."}
    return unit.file, ("tried", "changed")
