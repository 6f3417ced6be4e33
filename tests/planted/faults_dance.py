"""Faults in the arithmetic of the dance, its sound, its joins and its ending."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from typing import Any

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()

_FOLLOWS = "dancers follow the sound"


def _passages(unit: EditableUnit) -> Iterator[tuple[str, int, Any]]:
    for letter, section in unit.top["sections"].items():
        for n, passage in enumerate(section.get("danced", [])):
            yield letter, n, passage


@fault("canon-not-spelt-out", "drop")
def canon_not_spelt_out(unit: EditableUnit) -> Place | None:
    for letter, n, passage in _passages(unit):
        if passage["as"] == "canon" and "after" in passage:
            del passage["after"]
            return unit.file, ("sections", letter, "danced", n)
    return None


@fault("canon-not-spelt-out", "set")
def canon_without_parts(unit: EditableUnit) -> Place | None:
    for letter, n, passage in _passages(unit):
        if passage["as"] == "unison":
            passage["as"] = "canon"
            return unit.file, ("sections", letter, "danced", n)
    return None


@fault("counts-do-not-fill-section", "stretch")
def counts_do_not_fill_section(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        if "counts" in section and section.get("danced"):
            return unit.stretch(unit.file, ("sections", letter, "counts"), 2)
    return None


@fault("counts-do-not-fill-section", "drop")
def passage_lost(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        danced = section.get("danced", [])
        # a canon with other starts would fill the section too: nobody could tell which was meant
        if "counts" in section and len(danced) > 1 and not any("after" in one for one in danced):
            unit.drop(unit.file, ("sections", letter, "danced", 0))
            return unit.file, ("sections", letter, "counts")
    return None


@fault("cue-nobody-notices", "set")
def cue_nobody_notices(unit: EditableUnit) -> Place | None:
    if not unit.top.get("transitions"):
        return None
    return unit.set(unit.file, ("transitions", 0, "cue"), "When they are ready")


@fault("dance-too-long-for-age", "stretch")
def dance_too_long_for_age(unit: EditableUnit) -> Place | None:
    counted = [
        t["counts"] for t in unit.top.get("transitions", []) if isinstance(t.get("counts"), int)
    ]
    if not counted or "tempo" not in unit.top["dance"]:
        return None
    for n, transition in enumerate(unit.top["transitions"]):
        if isinstance(transition.get("counts"), int):
            unit.set(unit.file, ("transitions", n, "counts"), 512)
    return unit.file, ("dance", "form")


@fault("ending-unsaid", "set")
def ending_unsaid(unit: EditableUnit) -> Place | None:
    unit.top["ending"] = [{"who": "ones", "does": "Sink and hold still"}]
    return unit.file, ("ending",)


@fault("part-does-two-things", "insert")
def part_does_two_things(unit: EditableUnit) -> Place | None:
    names = [*unit.top.get("motifs", {}), *unit.top.get("developments", {})]
    if len(names) < 3:
        return None
    for letter, n, passage in _passages(unit):
        passage.clear()
        passage.update({"what": names[:3], "as": "side by side", "parts": 2})
        return unit.file, ("sections", letter, "danced", n, "parts")
    return None


@fault("parts-do-not-fit", "set")
def parts_do_not_fit(unit: EditableUnit) -> Place | None:
    for letter, n, passage in _passages(unit):
        if passage["as"] == "unison" and "counts" in unit.top["sections"][letter]:
            passage.update({"as": "canon", "parts": 8, "after": 4})
            passage.pop("who", None)
            return unit.file, ("sections", letter, "danced", n, "parts")
    return None


@fault("place-nobody-gets-to", "set")
def place_nobody_gets_to(unit: EditableUnit) -> Place | None:
    form = unit.top["dance"]["form"].split()
    for n, transition in enumerate(unit.top.get("transitions", [])):
        pair = (transition["from"], transition["to"])
        if pair in itertools.pairwise(form):
            unit.top["sections"][pair[0]]["end"]["formation"] = "circle"
            unit.top["sections"][pair[1]]["start"]["formation"] = "line"
            transition["as"] = "hold"
            transition.setdefault("counts", 8)
            return unit.set(unit.file, ("transitions", n, "how"), "Hold still and listen")
    return None


def _sound(unit: EditableUnit, extra: dict[str, Any]) -> None:
    sound = unit.top["dance"]["sound"]
    unit.top["dance"]["sound"] = {
        "kind": "recorded",
        "what": "A slow piece for strings",
        "follows": sound["follows"],
        **extra,
    }


@fault("recording-length-missing", "set")
def recording_length_missing(unit: EditableUnit) -> Place | None:
    if "sound" not in unit.top["dance"]:
        return None
    _sound(unit, {})
    return unit.file, ("dance", "sound")


@fault("recording-shorter-than-dance", "set")
def recording_shorter_than_dance(unit: EditableUnit) -> Place | None:
    if all("sound" in section for section in unit.top["sections"].values()):
        return None
    _sound(unit, {"lasts": 5})
    return unit.file, ("dance", "sound", "lasts")


@fault("tempo-hard-for-age", "stretch")
def tempo_hard_for_age(unit: EditableUnit) -> Place | None:
    if "tempo" not in unit.top["dance"] or unit.top["dance"]["sound"]["follows"] != _FOLLOWS:
        return None
    return unit.set(unit.file, ("dance", "tempo"), 200)


@fault("tempo-missing", "drop")
def tempo_missing(unit: EditableUnit) -> Place | None:
    if "tempo" not in unit.top["dance"] or unit.top["dance"]["sound"]["follows"] != _FOLLOWS:
        return None
    unit.drop(unit.file, ("dance", "tempo"))
    return unit.file, ("dance",)


@fault("transition-missing", "drop")
def transition_missing(unit: EditableUnit) -> Place | None:
    transitions = unit.top.get("transitions", [])
    if len(transitions) < 2 or any("any" in (t["from"], t["to"]) for t in transitions):
        return None
    unit.drop(unit.file, ("transitions", 0))
    return unit.file, ("transitions",)


@fault("transition-never-used", "repeat")
def transition_never_used(unit: EditableUnit) -> Place | None:
    transitions = unit.top.get("transitions", [])
    form = unit.top["dance"]["form"].split()
    backward = next(
        (
            (b, a)
            for a, b in itertools.pairwise(form)
            if a != b and (b, a) not in itertools.pairwise(form)
        ),
        None,
    )
    if (
        not transitions
        or backward is None
        or any("any" in (t["from"], t["to"]) for t in transitions)
    ):
        return None
    unit.repeat(unit.file, ("transitions", 0), 2)
    transitions[1].update({"from": backward[0], "to": backward[1]})
    return unit.file, ("transitions", 1)


@fault("section-out-of-the-form", "drop")
def section_out_of_the_form(unit: EditableUnit) -> Place | None:
    form = unit.top["dance"]["form"].split()
    last = next((one for one in reversed(form) if form.count(one) == 1), None)
    if last is None or last not in unit.top["sections"]:
        return None
    unit.top["dance"]["form"] = " ".join("A" if one == last else one for one in form)
    return unit.file, ("sections", last)
