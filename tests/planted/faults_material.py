"""Faults in motifs and what is made from them: their own fields, and who makes them when."""

from __future__ import annotations

from typing import Any

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place
from tests.planted.whole_edits import KINDS

fault = Registry()


def _first_motif(unit: EditableUnit) -> tuple[str, Any] | None:
    return next(iter(unit.top.get("motifs", {}).items()), None)


def _kind(action: Any) -> str:
    return next(kind for kind in KINDS if kind in action)


def _moving(unit: EditableUnit) -> tuple[str, int, Any] | None:
    """The first action of a motif that is no stillness: the motif, its place, the action."""
    return next(
        (
            (name, n, action)
            for name, motif in unit.top.get("motifs", {}).items()
            for n, action in enumerate(motif["actions"])
            if "stillness" not in action
        ),
        None,
    )


@fault("developed-before-its-source", "move")
def developed_before_its_source(unit: EditableUnit) -> Place | None:
    for name, development in unit.top.get("developments", {}).items():
        source = unit.making(development["of"])
        if source is None or source[:2] == (unit.lesson_files[0], 0):
            continue
        if unit.top["motifs"][development["of"]]["from"] != "pupils":
            unit.top["motifs"][development["of"]]["from"] = "pupils"
        for _, _, step in unit.steps():
            step["develops"] = [x for x in step.get("develops", []) if x != name]
        unit.set(unit.lesson_files[0], ("steps", 0, "develops"), [name])
        return unit.lesson_files[0], ("steps", 0, "develops", 0)
    return None


@fault("moves-never-made", "drop")
def development_never_made(unit: EditableUnit) -> Place | None:
    danced = {
        name
        for section in unit.top["sections"].values()
        for passage in section.get("danced", [])
        for name in passage["what"]
    }
    name = next((n for n in unit.top.get("developments", {}) if n in danced), None)
    if name is None:
        return None
    for _, _, step in unit.steps():
        step["develops"] = [x for x in step.get("develops", []) if x != name]
    return unit.file, ("developments", name)


@fault("moves-never-made", "drop")
def motif_never_made(unit: EditableUnit) -> Place | None:
    found = _first_motif(unit)
    danced = str([s.get("danced") for s in unit.top["sections"].values()])
    if found is None or f"'{found[0]}'" not in danced:
        return None
    found[1]["from"] = "teacher then pupils"
    for action in found[1]["actions"]:
        action.setdefault("as", "go")
    for _, _, step in unit.steps():
        step["makes"] = [x for x in step.get("makes", []) if x != found[0]]
    return unit.file, ("motifs", found[0])


def _add(unit: EditableUnit, development: dict[str, Any]) -> Place:
    unit.top.setdefault("developments", {})["planted"] = development
    return unit.file, ("developments", "planted")


@fault("only-the-word-changes", "insert")
def only_the_word_changes(unit: EditableUnit) -> Place | None:
    found = _moving(unit)
    if found is None:
        return None
    name, n, action = found
    changed = {**action, "as": "otherwise"}
    return _add(
        unit,
        {"of": name, "device": "replacing an action", "replace": {"action": n + 1, "by": changed}},
    )


@fault("stillness-that-moves", "set")
def stillness_that_moves(unit: EditableUnit) -> Place | None:
    for name, motif in unit.top.get("motifs", {}).items():
        for n, action in enumerate(motif["actions"]):
            if "stillness" in action:
                action["level"] = "high to low"
                return unit.file, ("motifs", name, "actions", n)
    return None


@fault("jump-slowed-down", "stretch")
def jump_slowed_down(unit: EditableUnit) -> Place | None:
    for name, motif in unit.top.get("motifs", {}).items():
        kinds = [_kind(action) for action in motif["actions"]]
        if "jump" in kinds:
            counts = [
                2 * action[kind] for action, kind in zip(motif["actions"], kinds, strict=True)
            ]
            _add(unit, {"of": name, "device": "change of speed", "counts": counts})
            return unit.file, ("developments", "planted", "counts", kinds.index("jump"))
    return None


@fault("dynamics-contradict", "insert")
def dynamics_contradict(unit: EditableUnit) -> Place | None:
    found = _moving(unit)
    if found is None:
        return None
    return unit.set(
        unit.file,
        ("motifs", found[0], "actions", found[1], "dynamics"),
        ["float", "strong"],
    )


@fault("one-word-two-moves", "repeat")
def one_word_two_moves(unit: EditableUnit) -> Place | None:
    found = _first_motif(unit)
    if found is None:
        return None
    word = found[1]["actions"][0].setdefault("as", "go")
    other = "turn" if "turn" not in found[1]["actions"][0] else "travel"
    unit.top["motifs"]["planted"] = {
        "from": "pupils",
        "idea": "Another",
        "actions": [{other: 4, "as": word}],
    }
    return unit.file, ("motifs", "planted", "actions", 0)


@fault("developed-twice-alike", "repeat")
def developed_twice_alike(unit: EditableUnit) -> Place | None:
    first = next(iter(unit.top.get("developments", {}).values()), None)
    return None if first is None else _add(unit, dict(first))


@fault("mirror-with-no-sides", "insert")
def mirror_with_no_sides(unit: EditableUnit) -> Place | None:
    for name, motif in unit.top.get("motifs", {}).items():
        for action in motif["actions"]:
            action.pop("side", None)
            action.pop("facing", None)
        return _add(unit, {"of": name, "device": "mirror"})
    return None


@fault("development-says-too-much", "insert")
def development_says_too_much(unit: EditableUnit) -> Place | None:
    for name, development in unit.top.get("developments", {}).items():
        if development["device"] != "change of level":
            return unit.set(unit.file, ("developments", name, "level"), "low")
    return None


@fault("level-does-not-follow", "set")
def level_does_not_follow(unit: EditableUnit) -> Place | None:
    for name, motif in unit.top.get("motifs", {}).items():
        if len(motif["actions"]) < 2:
            continue
        motif["actions"][0] = {"travel": 2, "as": "go", "level": "low"}
        motif["actions"][1] = {"transfer": 2, "as": "sink", "level": "high to low"}
        return unit.file, ("motifs", name, "actions", 1)
    return None


@fault("material-never-used", "insert")
def material_never_used(unit: EditableUnit) -> Place | None:
    unit.top["motifs"]["left-over"] = {
        "from": "pupils",
        "idea": "Left over",
        "actions": [{"turn": 4, "as": "wheel"}],
    }
    return unit.file, ("motifs", "left-over")


@fault("time-quality-against-length", "set")
def time_quality_against_length(unit: EditableUnit) -> Place | None:
    found = _moving(unit)
    if found is None or unit.top["dance"].get("tempo", 100) < 80:
        return None
    found[2][_kind(found[2])] = 1
    found[2]["dynamics"] = ["sustained"]
    return unit.file, ("motifs", found[0], "actions", found[1])


@fault("side-that-is-no-side", "set")
def side_that_is_no_side(unit: EditableUnit) -> Place | None:
    for name, motif in unit.top.get("motifs", {}).items():
        for n, action in enumerate(motif["actions"]):
            if "travel" in action and "turn" not in action.get("with", []):
                action.update(direction="forwards", side="right")
                return unit.file, ("motifs", name, "actions", n)
    return None
