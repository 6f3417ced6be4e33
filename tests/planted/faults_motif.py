"""Faults in motifs and in what is developed from them."""

from __future__ import annotations

from typing import Any

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()


def _first_motif(unit: EditableUnit) -> str | None:
    return next(iter(unit.top.get("motifs", {})), None)


def _develop(unit: EditableUnit, name: str, development: dict[str, Any]) -> Place:
    unit.top.setdefault("developments", {})
    return unit.set(unit.file, ("developments", name), development)


@fault("danced-before-made", "insert")
def danced_before_made(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    made = [
        name
        for _, lesson in list(unit.lessons())[1:]
        for step in lesson["steps"]
        for name in step.get("makes", [])
        if name in unit.top["sections"]
    ]
    early = {
        n for s in unit.data[file]["steps"] for n in (*s.get("makes", []), *s.get("dances", []))
    }
    late = next((name for name in made if name not in early), None)
    if late is None:
        return None
    step = {
        "phase": "rehearse",
        "does": "Dance it",
        "minutes": 3,
        "grouping": "alone",
        "task": "Dance it once.",
        "dances": [late],
    }
    unit.insert(file, ("steps", 1), step)
    return file, ("steps", 1, "dances", 0)


@fault("development-changes-nothing", "insert")
def development_changes_nothing(unit: EditableUnit) -> Place | None:
    motif = _first_motif(unit)
    if motif is None:
        return None
    counts = [next(v for v in a.values() if isinstance(v, int)) for a in _actions(unit, motif)]
    return _develop(
        unit, "same-again", {"of": motif, "device": "change of speed", "counts": counts}
    )


@fault("development-does-not-work", "insert")
def development_does_not_work(unit: EditableUnit) -> Place | None:
    motif = _first_motif(unit)
    if motif is None:
        return None
    _develop(unit, "cut-short", {"of": motif, "device": "fragmentation", "keep": [11, 12]})
    return unit.file, ("developments", "cut-short", "keep")


@fault("device-never-taught", "insert")
def device_never_taught(unit: EditableUnit) -> Place | None:
    motif = _first_motif(unit)
    developed = unit.top.get("developments", {}).values()
    if motif is None or any(d["device"] == "retrograde" for d in developed):
        return None
    _develop(unit, "backwards", {"of": motif, "device": "retrograde"})
    return unit.file, ("developments", "backwards", "device")


@fault("everyday-action-left-as-mime", "set")
def everyday_action_left_as_mime(unit: EditableUnit) -> Place | None:
    for file, n, step in unit.steps():
        for at, name in enumerate(step.get("makes", [])):
            if name in unit.top.get("motifs", {}):
                unit.top["motifs"][name]["idea"] = "Mime washing the dishes"
                gone = _come_from(unit, name)
                for _, _, other in unit.steps():
                    if "develops" in other:
                        other["develops"] = [d for d in other["develops"] if d not in gone]
                return file, ("steps", n, "makes", at)
    return None


def _come_from(unit: EditableUnit, motif: str) -> set[str]:
    """The developments of a motif, and theirs."""
    found = {motif}
    developments = unit.top.get("developments", {}).items()
    for _ in developments:
        found |= {name for name, d in developments if {d["of"], d.get("and")} & found}
    return found - {motif}


@fault("given-motif-not-spelt-out", "drop")
def given_motif_not_spelt_out(unit: EditableUnit) -> Place | None:
    for name, motif in unit.top.get("motifs", {}).items():
        if motif["from"] == "teacher" and motif["actions"]:
            motif["actions"][0].pop("as", None)
            return unit.file, ("motifs", name, "actions", 0)
    return None


@fault("given-motif-not-spelt-out", "set")
def pupils_motif_given_without_words(unit: EditableUnit) -> Place | None:
    motif = _first_motif(unit)
    if motif is None:
        return None
    unit.top["motifs"][motif]["from"] = "teacher"
    _actions(unit, motif)[-1].pop("as", None)
    return unit.file, ("motifs", motif, "actions", len(_actions(unit, motif)) - 1)


@fault("material-neither-kept-nor-dropped", "insert")
def material_neither_kept_nor_dropped(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: bool(s.get("makes")))
    if found is None or not any(s.get("danced") for s in unit.top["sections"].values()):
        return None
    motif = {
        "from": "pupils",
        "idea": "A leaf falls",
        "actions": [{"turn": 2, "as": "spiral", "level": "high to low"}],
    }
    unit.top.setdefault("motifs", {})["leaf-fall"] = motif
    found[2]["makes"].append("leaf-fall")
    return unit.file, ("motifs", "leaf-fall")


@fault("motif-hard-to-remember", "stretch")
def motif_hard_to_remember(unit: EditableUnit) -> Place | None:
    motif = _first_motif(unit)
    if motif is None:
        return None
    kinds = ("gesture", "travel", "jump", "turn", "transfer", "stillness")
    unit.top["motifs"][motif]["actions"] += [
        {kind: 2, "as": f"{kind} {level}", "level": level}
        for kind in kinds
        for level in ("low", "high")
    ][: 12 - len(_actions(unit, motif))]
    return unit.file, ("motifs", motif)


def _actions(unit: EditableUnit, motif: str) -> Any:
    return unit.top["motifs"][motif]["actions"]
