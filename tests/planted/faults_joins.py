"""Faults in where dancers stand and face, in sounds, and in the counts between sections."""

from __future__ import annotations

import itertools
from typing import Any

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()


def _between(unit: EditableUnit) -> tuple[int, Any, Any, Any] | None:
    """A transition written for two sections, with its place and both sections."""
    pairs = list(itertools.pairwise(unit.top["dance"]["form"].split()))
    for n, t in enumerate(unit.top.get("transitions", [])):
        if (t["from"], t["to"]) in pairs and t["from"] != t["to"]:
            sections = unit.top["sections"]
            return n, t, sections[t["from"]], sections[t["to"]]
    return None


@fault("facing-nobody-turns-to", "set")
def facing_nobody_turns_to(unit: EditableUnit) -> Place | None:
    found = _between(unit)
    if found is None:
        return None
    n, transition, before, after = found
    before["end"]["facing"], after["start"]["facing"] = "front", "back"
    transition.pop("counts", None)
    transition.update({"as": "straight on", "how": "Stay where you are"})
    return unit.file, ("transitions", n, "how")


@fault("facing-does-not-fit-formation", "set")
def facing_does_not_fit_formation(unit: EditableUnit) -> Place | None:
    letter, section = next(iter(unit.top["sections"].items()))
    section["start"].update(formation="file", facing="partner")
    return unit.file, ("sections", letter, "start", "facing")


@fault("way-too-short", "set")
def way_too_short(unit: EditableUnit) -> Place | None:
    found = _between(unit)
    if found is None:
        return None
    n, transition, before, after = found
    before["end"]["formation"], after["start"]["formation"] = "circle", "line"
    transition["as"] = "move"
    return unit.set(unit.file, ("transitions", n, "counts"), 2)


@fault("transition-longer-than-section", "stretch")
def transition_longer_than_section(unit: EditableUnit) -> Place | None:
    found = _between(unit)
    if found is None or not ("counts" in found[2] or "counts" in found[3]):
        return None
    found[1]["as"] = "hold"
    return unit.set(unit.file, ("transitions", found[0], "counts"), 128)


@fault("partners-drift-apart", "set")
def partners_drift_apart(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        if not section.get("danced"):
            continue
        for end in ("start", "end"):
            section[end].update(formation="pairs", facing="partner")
        name = next(iter(unit.top["motifs"]))
        action = {"travel": 2, "as": "go", "direction": "sideways", "side": "right"}
        unit.top["motifs"][name]["actions"] = [action]
        _only(unit, name)
        section["danced"] = [{"what": [name], "as": "unison", "who": "everyone"}]
        return unit.file, ("sections", letter, "danced")
    return None


@fault("partners-end-at-another-distance", "set")
def partners_end_at_another_distance(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        if not section.get("danced"):
            continue
        place = {"formation": "pairs", "facing": "partner", "place": "Facing, eight steps apart"}
        section.update(start=dict(place), end=dict(place), idea="Two come to know one another")
        name = next(iter(unit.top["motifs"]))
        action = {"travel": 3, "as": "come", "direction": "forwards"}
        unit.top["motifs"][name]["actions"] = [action]
        _only(unit, name)
        section["danced"] = [{"what": [name], "as": "unison", "who": "everyone"}]
        return unit.file, ("sections", letter, "danced")
    return None


def _only(unit: EditableUnit, name: str) -> None:
    """Take out what is made of a motif, and let the motif be danced wherever that was."""
    developments = unit.top.pop("developments", {})
    for section in unit.top["sections"].values():
        for passage in section.get("danced", []):
            passage["what"] = [name if n in developments else n for n in passage["what"]]
    for _, _, step in unit.steps():
        for field in ("dances", "shows"):
            step[field] = [n for n in step.get(field, []) if n not in developments]
        step.pop("develops", None)


@fault("does-not-come-back", "set")
def does_not_come_back(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        if not section.get("danced"):
            continue
        for end in ("start", "end"):
            section[end].update(formation="line", facing="front", place="Your own row")
        name = next(iter(unit.top["motifs"]))
        unit.top["motifs"][name]["actions"] = [{"travel": 2, "as": "go", "direction": "forwards"}]
        _only(unit, name)
        section["danced"] = [{"what": [name], "as": "unison", "who": "everyone"}]
        return unit.file, ("sections", letter, "end", "place")
    return None


def _sound(unit: EditableUnit, sound: dict[str, Any], field: str) -> Place:
    letter = list(unit.top["sections"])[-1]
    unit.set(unit.file, ("sections", letter, "sound"), {"what": "A sound", **sound})
    return unit.file, ("sections", letter, "sound", field)


@fault("parts-named-otherwise", "set")
def parts_named_otherwise(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        for n, passage in enumerate(section.get("danced", [])):
            passage.update({"as": "canon in turn", "parts": 4, "who": "dancers 1, 2 and 3"})
            passage.pop("after", None)
            return unit.file, ("sections", letter, "danced", n, "parts")
    return None


@fault("silence-is-followed", "set")
def silence_is_followed(unit: EditableUnit) -> Place | None:
    return _sound(unit, {"kind": "silence", "follows": "dancers follow the sound"}, "follows")


@fault("recording-follows-dancers", "set")
def recording_follows_dancers(unit: EditableUnit) -> Place | None:
    sound = {"kind": "recorded", "follows": "the sound follows the dancers", "looped": True}
    return _sound(unit, sound, "follows")


@fault("length-of-live-sound", "insert")
def length_of_live_sound(unit: EditableUnit) -> Place | None:
    sound = {"kind": "drum", "follows": "dancers follow the sound", "lasts": 90}
    return _sound(unit, sound, "lasts")


@fault("seconds-run-backwards", "swap")
def seconds_run_backwards(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        for kind in ("timed", "improvised"):
            if kind in section:
                return unit.set(unit.file, ("sections", letter, kind, "seconds"), "40 to 20")
    return None


@fault("move-without-counts", "drop")
def move_without_counts(unit: EditableUnit) -> Place | None:
    if not any("counts" in section for section in unit.top["sections"].values()):
        return None
    for n, transition in enumerate(unit.top.get("transitions", [])):
        transition["as"] = "move"
        transition.pop("counts", None)
        return unit.file, ("transitions", n)
    return None


@fault("counts-where-none-pass", "set")
def counts_where_none_pass(unit: EditableUnit) -> Place | None:
    for n, transition in enumerate(unit.top.get("transitions", [])):
        transition["as"] = "cut"
        return unit.set(unit.file, ("transitions", n, "counts"), 8)
    return None


@fault("transition-hidden", "repeat")
def transition_hidden(unit: EditableUnit) -> Place | None:
    if not unit.top.get("transitions"):
        return None
    unit.repeat(unit.file, ("transitions", 0), 2)
    return unit.file, ("transitions", 1)


@fault("section-breaks-phrase", "set")
def section_breaks_phrase(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        if "counts" in section and section.get("danced"):
            section["sound"] = {
                "kind": "drum",
                "what": "A beat",
                "follows": "dancers follow the sound",
            }
            unit.top["dance"].update(phrase=7, tempo=unit.top["dance"].get("tempo", 100))
            return unit.file, ("sections", letter, "counts")
    return None


@fault("one-way-to-two-places", "set")
def one_way_to_two_places(unit: EditableUnit) -> Place | None:
    letters = list(dict.fromkeys(unit.top["dance"]["form"].split()))
    if len(letters) < 3:
        return None
    unit.top["transitions"] = [
        {
            "from": "any",
            "to": "any",
            "as": "move",
            "counts": 8,
            "how": "Walk to your place",
            "cue": "The drum changes",
        }
    ]
    for letter in letters:
        unit.top["sections"][letter]["start"]["formation"] = "line"
    unit.top["sections"][letters[-1]]["start"]["formation"] = "circle"
    return unit.file, ("sections", letters[-1], "start", "formation")
