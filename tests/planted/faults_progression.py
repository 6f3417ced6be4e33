"""Faults in the order of finding, making, joining and showing."""

from __future__ import annotations

import copy
from typing import Any

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place, motifs_in
from tests.planted.whole_edits import ADVICE

fault = Registry()


def _forget_end_point(unit: EditableUnit, files: list[str], name: str) -> None:
    for file in files:
        named = unit.data[file]["look_and_talk"].get("end_points", [])
        if name in named:
            named.remove(name)


@fault("end-point-never-looked-for", "drop")
def end_point_never_looked_for(unit: EditableUnit) -> Place | None:
    name = next(iter(unit.top["end_points"]))
    _forget_end_point(unit, unit.lesson_files, name)
    return unit.file, ("end_points", name)


@fault("end-point-looked-for-once", "drop")
def end_point_looked_for_once(unit: EditableUnit) -> Place | None:
    if len(unit.lesson_files) < 4:
        return None
    name = next(iter(unit.top["end_points"]))
    looking = [
        file
        for file in unit.lesson_files
        if name in unit.data[file]["look_and_talk"].get("end_points", [])
    ]
    _forget_end_point(unit, looking[1:], name)
    return unit.file, ("end_points", name)


@fault("form-named-wrongly", "set")
def form_named_wrongly(unit: EditableUnit) -> Place | None:
    form = unit.top["dance"]["form"].split()
    returns = len(set(form)) < len(form)  # pupils may then choose an order that is a rondo
    if (unit.top["dance"].get("order") and returns) or set(form[::2]) == {form[0]}:
        return None
    return unit.set(unit.file, ("summary",), "A rondo, danced from start to end.")


@fault("lesson-numbers-broken", "set")
def lesson_numbers_broken(unit: EditableUnit) -> Place | None:
    return unit.set(unit.lesson_files[1], ("lesson",), 7)


@fault("lesson-numbers-broken", "drop")
def lesson_lost(unit: EditableUnit) -> Place | None:
    files = unit.lesson_files
    del unit.data[files[1]]
    return files[2], ("lesson",)


@fault("making-after-joining", "insert")
def making_after_joining(unit: EditableUnit) -> Place | None:
    made = unit.first_step(
        lambda s: any(name in unit.top["sections"] for name in s.get("makes", []))
    )
    if made is None or len(unit.top["sections"]) < 2 or made[0] == unit.lesson_files[-1]:
        return None
    steps = unit.data[made[0]]["steps"]
    run = {
        "phase": "rehearse",
        "does": "Dance the whole",
        "minutes": 2,
        "grouping": "alone",
        "task": "Dance the whole.",
        "dances": ["whole"],
    }
    steps.insert(1, run)
    step = steps[made[1] + 1]
    before = {
        n for s in steps[: made[1] + 1] for n in (*s.get("makes", []), *s.get("develops", []))
    }
    for field in ("makes", "develops"):
        for n, name in enumerate(step.get(field, [])):
            if name in unit.top["sections"] and name not in before:
                return made[0], ("steps", made[1] + 1, field, n)
    return None


@fault("making-before-finding", "drop")
def making_before_finding(unit: EditableUnit) -> Place | None:
    made = unit.first_step(
        lambda s: any(
            unit.top.get("motifs", {}).get(name, {}).get("from") == "pupils"
            for name in s.get("makes", [])
        )
    )
    if made is None:
        return None
    for file, n, step in list(unit.steps()):
        if (file, n) == made[:2]:
            break
        step["phase"] = "warm-up"
        step["task"] = "Walk and stop."
        step["does"] = "Walk and stop"
        step.pop("dances", None)
        step.pop("say", None)
    made[2].update(phase="make", task="Set it on eight counts.", does="Set it")
    made[2].pop("say", None)
    names = made[2]["makes"]
    motifs = unit.top["motifs"]
    at = next(n for n, m in enumerate(names) if motifs.get(m, {}).get("from") == "pupils")
    return made[0], ("steps", made[1], "makes", at)


@fault("motif-shown-before-made", "insert")
def motif_shown_before_made(unit: EditableUnit) -> Place | None:
    made = unit.first_step(
        lambda s: any(n in unit.top.get("motifs", {}) for n in s.get("makes", []))
    )
    if made is None or any(step.get("shows") for step in _before(unit, made)):
        return None
    name = next(n for n in made[2]["makes"] if n in unit.top.get("motifs", {}))
    first = unit.lesson_files[0]
    if any(name in s.get("dances", []) for s in _before(unit, made)):
        return None
    unit.data[first]["steps"][0]["shows"] = [name]
    return first, ("steps", 0, "shows", 0)


def _before(unit: EditableUnit, end: tuple[str, int, Any]) -> list[Any]:
    found = []
    for file, n, step in unit.steps():
        if (file, n) == end[:2]:
            break
        found.append(step)
    return found


@fault("new-in-last-lesson", "move")
def new_in_last_lesson(unit: EditableUnit) -> Place | None:
    motif = next(iter(unit.top.get("motifs", {})), None)
    if motif is None:
        return None
    unit.top.setdefault("developments", {})["late-one"] = {"of": motif, "device": "mirror"}
    last = unit.lesson_files[-1]
    unit.data[last]["steps"][1]["develops"] = ["late-one"]
    return last, ("steps", 1, "develops", 0)


@fault("recall-missing", "drop")
def recall_missing(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[1]
    steps = unit.data[file]["steps"]
    plain = {
        "phase": "explore",
        "does": "Walk and stop",
        "minutes": 3,
        "grouping": "alone",
        "task": "Walk and stop.",
    }
    steps[1:3] = [copy.deepcopy(plain), copy.deepcopy(plain)]
    steps[0] = {**plain, "phase": "warm-up"}
    return file, ("steps",)


@fault("return-never-settled", "drop")
def return_never_settled(unit: EditableUnit) -> Place | None:
    form = unit.top["dance"]["form"].split()
    back = next((x for x in form if form.count(x) > 1 and not _is_handed_on(unit, x)), None)
    if back is None:
        return None
    for choice in unit.top.get("choices", {}).values():
        choice["what"] = "The shape"
    for transition in unit.top.get("transitions", []):
        transition.update(how="Walk on", cue="One drum beat")
    unit.bodies[unit.file] = "Notes.\n"
    unit.top["summary"] = "A dance of boats."
    for passage in unit.top["sections"][back]["danced"]:
        passage.pop("who", None)
    unit.top["ending"] = [{"who": "everyone", "does": "Sink"}]
    for _, _, step in unit.steps():
        step.update(does="Dance", task="Dance it.")
        for field in ADVICE:
            step.pop(field, None)
    return unit.set(unit.file, ("sections", back, "idea"), "Water")


def _is_handed_on(unit: EditableUnit, letter: str) -> bool:
    """Whether a section is improvised or all the teacher's: it comes back as it was taught."""
    section = unit.top["sections"][letter]
    brought = {unit.top["motifs"][name]["from"] for name in motifs_in(unit, letter)} == {"teacher"}
    return "improvised" in section or brought


def _section_made(unit: EditableUnit) -> tuple[str, int, str] | None:
    for file, n, step in unit.steps():
        for name in step.get("makes", []):
            if name in unit.top["sections"]:
                return file, n, name
    return None


@fault("section-joined-before-made", "insert")
def section_joined_before_made(unit: EditableUnit) -> Place | None:
    form = unit.top["dance"]["form"].split()
    made = [
        (file, n, name)
        for file, n, s in unit.steps()
        for name in s.get("makes", [])
        if name in unit.top["sections"]
    ]
    if len(made) < 2 or len(form) < 2:
        return None
    letter = made[-1][2]
    first = unit.lesson_files[0]
    if [m[2] for m in made].count(letter) > 1 or made[-1][0] == first:
        return None
    unit.data[first]["steps"][0]["joins"] = [letter, form[0] if form[0] != letter else form[1]]
    return first, ("steps", 0, "joins", 0)


@fault("section-made-in-too-little-time", "stretch")
def section_made_in_too_little_time(unit: EditableUnit) -> Place | None:
    made = _section_made(unit)
    if made is None:
        return None
    for _, _, step in unit.steps():
        step["minutes"] = 1
        step.pop("least", None)
        if "joins" in step and made[2] in step["joins"]:
            step.pop("joins")
    return unit.file, ("sections", made[2])


@fault("section-never-made", "drop")
def section_never_made(unit: EditableUnit) -> Place | None:
    letter = next((x for x in unit.top["sections"] if _is_made_of_pupils_own(unit, x)), None)
    if letter is None:
        return None
    for _, _, step in unit.steps():
        if letter in step.get("makes", []):
            step["makes"].remove(letter)
    return unit.file, ("sections", letter)


def _is_made_of_pupils_own(unit: EditableUnit, letter: str) -> bool:
    """Whether a section is of motifs that pupils make: dancing it is not yet making it."""
    if "improvised" in unit.top["sections"][letter]:
        return False
    names = motifs_in(unit, letter)
    return any(unit.top["motifs"][name]["from"] == "pupils" for name in names) or not names


@fault("section-never-danced", "drop")
def section_never_danced(unit: EditableUnit) -> Place | None:
    made = _section_made(unit)
    if made is None:
        return None
    for _, _, step in unit.steps():
        for field in ("dances", "shows"):
            if field in step:
                step[field] = [n for n in step[field] if n not in (made[2], "whole")]
        if made[2] in step.get("joins", []):
            step.pop("joins")
    return unit.file, ("sections", made[2])


@fault("strand-missing", "drop")
def strand_missing(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[1]
    unit.data[file].pop("look_and_talk")
    for step in unit.data[file]["steps"]:
        step.clear()
        step.update(
            phase="warm-up", does="Walk", minutes=5, grouping="alone", task="Walk and stop."
        )
    return file, ("steps",)


@fault("too-few-whole-runs", "drop")
def too_few_whole_runs(unit: EditableUnit) -> Place | None:
    shown = None
    for file, n, step in unit.steps():
        if "whole" in step.get("dances", []):
            step["dances"].remove("whole")
        if "whole" in step.get("shows", []):
            shown = file, n
    if shown is None or shown[0] != unit.lesson_files[-1]:
        return None
    return shown[0], ("steps", shown[1], "shows")


@fault("too-many-lessons", "repeat")
def too_many_lessons(unit: EditableUnit) -> Place | None:
    last = unit.lesson_files[-1]
    number = unit.data[last]["lesson"]
    for extra in range(number + 1, 10):
        file = f"units/{unit.slug}/lesson-{extra}.md"
        unit.data[file] = copy.deepcopy(unit.data[last])
        unit.data[file]["lesson"] = extra
        unit.bodies[file] = unit.bodies[last]
    return f"units/{unit.slug}/lesson-9.md", ("lesson",)


@fault("too-much-new-at-once", "stretch")
def too_much_new_at_once(unit: EditableUnit) -> Place | None:
    made = unit.first_step(
        lambda s: any(n in unit.top.get("motifs", {}) for n in s.get("makes", []))
    )
    if made is None:
        return None
    kinds = ("gesture", "travel", "jump", "turn", "transfer", "stillness")
    actions: list[dict[str, Any]] = [
        {kind: 2, "as": f"{kind} {level}", "level": level}
        for kind in kinds
        for level in ("low", "high")
    ]
    long = {"from": "pupils", "idea": "Rain on a roof", "actions": actions}
    ready = {n for n, m in unit.top["motifs"].items() if m["from"] != "pupils"}
    unit.top["motifs"]["long-one"] = long
    made[2]["makes"].append("long-one")
    for n, step in enumerate(unit.data[made[0]]["steps"]):  # the lesson's first new motif
        if n == made[1] or ready.intersection(step.get("dances", [])):
            return made[0], ("steps", n)
    return None


@fault("no-choice-by-pupils", "drop")
def no_choice_by_pupils(unit: EditableUnit) -> Place | None:
    improvised = any("improvised" in section for section in unit.top["sections"].values())
    if improvised or not unit.top.get("motifs") or "choice" in str(unit.top["dance"]["form"]):
        return None
    unit.top.pop("choices", None)
    for development in unit.top.get("developments", {}).values():
        development.pop("choice", None)
    for motif in unit.top["motifs"].values():
        motif["from"] = "teacher"
    for _, _, step in unit.steps():
        step.pop("settles", None)
        step.update(does="Dance", task="Dance it.")
        for field in ADVICE:
            step.pop(field, None)
    _tell_of_no_handing_on(unit)
    return unit.file, ("motifs",)


def _tell_of_no_handing_on(unit: EditableUnit) -> None:
    """Let nothing say that the dance is learned as it is handed on."""
    unit.bodies[unit.file] = "Notes.\n"
    unit.top.update(title="Round and round", summary="A dance in a ring.")
    unit.top["stimulus"]["what"] = "A drawing"
    for motif in unit.top["motifs"].values():
        motif["idea"] = "Steps"


@fault("nothing-developed", "drop")
def nothing_developed(unit: EditableUnit) -> Place | None:
    if not unit.top.get("motifs") or not unit.top.get("developments"):
        return None
    for _, _, step in unit.steps():
        step.pop("develops", None)
    return unit.file, ("developments",)
