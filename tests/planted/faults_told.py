"""Faults in what lessons tell of the dance: names, numbers and words that a late change left."""

from __future__ import annotations

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place
from tests.planted.whole_edits import KINDS

fault = Registry()


def _add_motif(unit: EditableUnit, name: str, kind: str, counts: int) -> None:
    unit.top["motifs"][name] = {
        "from": "pupils",
        "idea": "Another",
        "actions": [{kind: counts, "as": name}],
    }


def _make_in(unit: EditableUnit, file: str, step: int, name: str) -> None:
    made = unit.data[file]["steps"][step]
    made["makes"] = [*made.get("makes", []), name]


@fault("told-before-made", "insert")
def told_before_made(unit: EditableUnit) -> Place | None:
    _add_motif(unit, "zigzag", "travel", 4)
    _make_in(unit, unit.lesson_files[-1], 1, "zigzag")
    return unit.set(unit.lesson_files[1], ("story_so_far",), "The class has made the zigzag.")


@fault("section-counts-said-otherwise", "set")
def section_counts_said_otherwise(unit: EditableUnit) -> Place | None:
    if "counts" not in unit.top["sections"]["A"]:
        return None
    return unit.set(unit.lesson_files[0], ("steps", 0, "task"), "A has ninety-nine counts.")


@fault("runs-told-otherwise", "set")
def runs_told_otherwise(unit: EditableUnit) -> Place | None:
    text = "The whole dance has been run nine times."
    return unit.set(unit.lesson_files[1], ("story_so_far",), text)


@fault("short-of-time-leaves-the-new", "set")
def short_of_time_leaves_the_new(unit: EditableUnit) -> Place | None:
    _add_motif(unit, "zigzag", "travel", 4)
    file = unit.lesson_files[1]
    _make_in(unit, file, 1, "zigzag")
    return unit.set(file, ("if", "short_of_time"), "Leave out the zigzag.")


@fault("word-said-a-step-too-soon", "set")
def word_said_a_step_too_soon(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    steps = unit.data[file]["steps"]
    for _, _, step in unit.steps():
        for field in ("say", "task"):
            if "retrograde" in step.get(field, "").lower():
                return None
    steps[2]["teaches"] = ["retrograde"]
    return unit.set(file, ("steps", 1, "say"), "Now make a retrograde.")


@fault("catch-up-in-a-new-step", "set")
def catch_up_in_a_new_step(unit: EditableUnit) -> Place | None:
    for file, n, step in unit.steps():
        if file != unit.lesson_files[0] and step.get("makes"):
            line = f"In step {n + 1}, teach the first part."
            return unit.set(file, ("never_did_last",), line)
    return None


@fault("looks-at-what-is-not-danced", "set")
def looks_at_what_is_not_danced(unit: EditableUnit) -> Place | None:
    _add_motif(unit, "zigzag", "travel", 4)
    _make_in(unit, unit.lesson_files[-1], 1, "zigzag")
    return unit.set(unit.lesson_files[0], ("look_and_talk", "at"), "the zigzag")


@fault("counts-said-otherwise", "set")
def counts_said_otherwise(unit: EditableUnit) -> Place | None:
    for file, n, step in unit.steps():
        if step["phase"] in ("make", "develop") and step.get("makes"):
            if any(
                "counts" not in unit.top["sections"].get(x, {"counts": 1}) for x in step["makes"]
            ):
                continue
            return unit.set(file, ("steps", n, "task"), "Dance it in thirteen counts.")
    return None


@fault("join-counts-said-otherwise", "set")
def join_counts_said_otherwise(unit: EditableUnit) -> Place | None:
    transitions = unit.top.get("transitions", [])
    found = unit.first_step(lambda step: bool(step.get("joins")))
    if found is None or not transitions:
        return None
    for transition in transitions:
        transition.update({"as": "move", "counts": 8})
    found[2].pop("say", None)
    return unit.set(found[0], ("steps", found[1], "task"), "Walk to your place for five.")


@fault("tempo-said-otherwise", "set")
def tempo_said_otherwise(unit: EditableUnit) -> Place | None:
    if "tempo" not in unit.top["dance"]:
        return None
    unit.bodies[unit.lesson_files[0]] = "Tap five beats a second.\n"
    return unit.file, ("dance", "tempo")


@fault("ending-names-a-part", "set")
def ending_names_a_part(unit: EditableUnit) -> Place | None:
    form = unit.top["dance"]["form"].split()
    other = next((x for x in form if x != form[-1]), None)
    if other is None:
        return None
    return unit.set(unit.file, ("ending", 0, "does"), f"Hold the last shape of part {other}")


@fault("mirror-goes-the-same-way", "set")
def mirror_goes_the_same_way(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        motif = next(iter(unit.top.get("motifs", {})), None)
        if motif is None or not section.get("danced"):
            continue
        unit.top.setdefault("developments", {})["planted"] = {"of": motif, "device": "mirror"}
        section["danced"] = [
            {"what": [motif], "as": "unison", "who": "everyone towards the window"},
            {"what": ["planted"], "as": "unison", "who": "everyone towards the window"},
        ]
        return unit.file, ("sections", letter, "danced", 1, "who")
    return None


@fault("cue-counted-otherwise", "set")
def cue_counted_otherwise(unit: EditableUnit) -> Place | None:
    if "order" in unit.top["dance"]:
        return None
    section = unit.top["sections"][unit.top["dance"]["form"].split()[-1]]
    section["sound"] = {
        "kind": "drum",
        "what": "Eight soft taps",
        "follows": "dancers follow the sound",
    }
    for kind in ("improvised", "timed"):
        if kind in section:
            section[kind]["ends_on"] = "Everyone is still"
    return unit.set(unit.file, ("ending", 0, "does"), "Sink on four soft taps")


@fault("moves-said-in-another-order", "swap")
def moves_said_in_another_order(unit: EditableUnit) -> Place | None:
    unit.top["motifs"]["planted"] = {
        "from": "pupils",
        "idea": "Another",
        "actions": [
            {"travel": 2, "as": "zigzag"},
            {"jump": 2, "as": "bounce"},
            {"turn": 2, "as": "whirl"},
        ],
    }
    said = "Zigzag, whirl, bounce."
    return unit.set(unit.lesson_files[-1], ("steps", 1, "say"), said)


@fault("move-told-otherwise", "set")
def move_told_otherwise(unit: EditableUnit) -> Place | None:
    unit.top["motifs"]["planted"] = {
        "from": "pupils",
        "idea": "Another",
        "actions": [{"jump": 2, "as": "zap", "size": "small"}],
    }
    return unit.set(unit.lesson_files[-1], ("safety", 0), "Zap: a huge leap.")


@fault("move-line-half-written", "set")
def move_line_half_written(unit: EditableUnit) -> Place | None:
    unit.top["motifs"]["planted"] = {
        "from": "pupils",
        "idea": "Another",
        "actions": [{"jump": 2, "as": "zap"}],
    }
    file = unit.lesson_files[-1]
    unit.bodies[file] = "Zap: a jump, two feet to two feet.\n"
    return file, ("notes", 0)


@fault("no-jumps-said", "set")
def no_jumps_said(unit: EditableUnit) -> Place | None:
    for file, _, step in unit.steps():
        for name in step.get("makes", []):
            motif = unit.top.get("motifs", {}).get(name)
            if motif is None:
                continue
            action = motif["actions"][0]
            action["jump"] = action.pop(next(kind for kind in KINDS if kind in action))
            action.pop("with", None)
            return unit.set(file, ("safety", 0), "There are no jumps in this lesson.")
    return None


@fault("turns-too-many", "set")
def turns_too_many(unit: EditableUnit) -> Place | None:
    for file, n, step in unit.steps():
        for name in step.get("makes", []):
            motif = unit.top.get("motifs", {}).get(name)
            if motif is not None:
                motif["actions"][0] = {"turn": 2, "as": "wheel"}
                return unit.set(file, ("steps", n, "task"), "Make it with nine turns.")
    return None
