"""Faults in names, years, stages and pictures, and in the breadth of what pupils meet."""

from __future__ import annotations

from pathlib import Path

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place, load

fault = Registry()


@fault("groups-too-soon", "move")
def groups_too_soon(unit: EditableUnit) -> Place | None:
    for file, n, step in unit.steps():
        for at, name in enumerate(step.get("makes", [])):
            if unit.top.get("motifs", {}).get(name, {}).get("from") == "pupils":
                step.update(grouping="fours", does="Make it", task="Make it on eight counts.")
                for field in ("say", "easier", "harder", "into"):
                    step.pop(field, None)
                for other in unit.data[file]["steps"][:n]:
                    other.update(grouping="fours", phase="warm-up", task="Walk.", does="Walk")
                    other.pop("dances", None)
                return file, ("steps", n, "makes", at)
    return None


@fault("media-missing", "set")
def media_missing(unit: EditableUnit) -> Place | None:
    for n, item in enumerate(unit.top["stimulus"].get("items", [])):
        if "file" in item:
            return unit.set(unit.file, ("stimulus", "items", n, "file"), "media/lost.svg")
    return None


@fault("stop-signal-of-its-own", "set")
def stopped_by_a_bell(unit: EditableUnit) -> Place | None:
    step = unit.data[unit.lesson_files[0]]["steps"][0]
    step["task"] = "Walk on and on."
    step["say"] = "When the bell rings, stop."
    return unit.file, ("title",)


@fault("name-used-twice", "insert")
def name_used_twice(unit: EditableUnit) -> Place | None:
    motif = next(iter(unit.top.get("motifs", {})), None)
    if motif is None:
        return None
    unit.top.setdefault("developments", {})
    return unit.set(unit.file, ("developments", motif), {"of": motif, "device": "mirror"})


@fault("stage-does-not-fit-nation", "set")
def stage_does_not_fit_nation(unit: EditableUnit) -> Place | None:
    unit.top["curriculum"][0]["nation"] = "Scotland"
    return unit.set(unit.file, ("curriculum", 0, "stage"), "key stage 2")


@fault("unknown-name", "set")
def unknown_name(unit: EditableUnit) -> Place | None:
    for file, n, step in unit.steps():
        if step.get("dances"):
            return unit.set(file, ("steps", n, "dances", 0), "nobodys-motif")
    return None


@fault("unknown-name", "set")
def unknown_end_point(unit: EditableUnit) -> Place | None:
    path = ("look_and_talk", "end_points", 0)
    return unit.set(unit.lesson_files[-1], path, "nobodys-end-point")


@fault("year-unknown-in-nation", "set")
def year_unknown_in_nation(unit: EditableUnit) -> Place | None:
    return unit.set(unit.file, ("years", 0), {"nation": "England", "years": ["P3"]}) and (
        unit.file,
        ("years", 0, "years", 0),
    )


@fault("topic-unknown", "set")
def topic_unknown(unit: EditableUnit) -> Place | None:
    return unit.set(unit.file, ("topics", 0), "nobodys-topic")


@fault("earlier-unit-missing", "insert")
def earlier_unit_missing(unit: EditableUnit) -> Place | None:
    unit.top["builds_on"]["units"] = ["nobodys-unit"]
    return unit.file, ("builds_on", "units", 0)


@fault("builds-on-circle", "insert")
def builds_on_circle(unit: EditableUnit) -> Place | None:
    unit.top["builds_on"]["units"] = [unit.slug]
    return unit.file, ("builds_on", "units", 0)


@fault("builds-on-later-unit", "insert")
def builds_on_later_unit(unit: EditableUnit) -> Place | None:
    unit.top["years"] = [{"nation": "England", "years": [1]}]
    later = "paper-boats" if unit.slug == "rock-pool" else "rock-pool"
    unit.top["builds_on"]["units"] = [later]
    return unit.file, ("builds_on", "units", 0)


@fault("title-used-twice", "repeat")
def title_used_twice(unit: EditableUnit) -> Place | None:
    others = Path(__file__).resolve().parents[1] / "unusual_units"
    first = load(others, "improvised-weather")
    if unit.slug <= first.slug:
        return None
    return unit.set(unit.file, ("title",), first.top["title"])


@fault("year-said-otherwise", "set")
def year_said_otherwise(unit: EditableUnit) -> Place | None:
    return unit.set(unit.file, ("summary",), "A dance for Year 9 about the sea.")


@fault("text-in-another-language", "set")
def text_in_another_language(unit: EditableUnit) -> Place | None:
    return unit.set(unit.file, ("language",), "cy")


@fault("acknowledgement-missing", "drop")
def acknowledgement_missing(unit: EditableUnit) -> Place | None:
    unit.bodies = dict.fromkeys(unit.bodies, "Read the words in bold.\n")
    for n, link in enumerate(unit.top["curriculum"]):
        if '"' in link["says"]:
            return unit.file, ("curriculum", n, "says")
    return None
