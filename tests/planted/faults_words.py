"""Faults of words against the score: who goes which way, holds, waits, and for which cue."""

from __future__ import annotations

from typing import Any

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()


def _danced(unit: EditableUnit, actions: list[Any], **passage: Any) -> str | None:
    """A motif `quill` of these actions, danced alone in the first counted section; its letter."""
    letters = unit.top["dance"]["form"].split()
    letter = next((x for x in letters if "counts" in unit.top["sections"][x]), None)
    if letter is None:
        return None
    unit.top.setdefault("motifs", {})["quill"] = {
        "from": "teacher", "idea": "A quill", "actions": actions,
    }  # fmt: skip
    unit.top["sections"][letter]["danced"] = [{"what": ["quill"], "as": "unison", **passage}]
    return str(letter)


@fault("place-half-told", "set")
def nobody_says_how_far(unit: EditableUnit) -> Place | None:
    letters = list(dict.fromkeys(unit.top["dance"]["form"].split()))
    first, second = unit.top["sections"][letters[0]], unit.top["sections"][letters[1]]
    first["start"] = {
        "formation": "scattered", "facing": "front", "apart": 2, "place": "Your own space",
    }  # fmt: skip
    second["groups"] = {"size": 4}
    second["start"] = {
        "formation": "small groups", "facing": "centre", "within": "square", "spot": "new place",
        "place": "In fours",
    }  # fmt: skip
    return unit.file, ("sections", letters[1], "start")


@fault("answer-goes-another-way-long", "set")
def bigger_all_over(unit: EditableUnit) -> Place | None:
    go = {"travel": 4, "direction": "sideways", "side": "right", "steps": 4}
    passage = {"what": ["quill", "big-quill"], "as": "question and answer"}
    if _danced(unit, [go], **passage) is None:
        return None
    sized = {"of": "quill", "device": "change of size", "size": "big"}
    unit.top.setdefault("developments", {})["big-quill"] = sized
    return unit.file, ("developments", "big-quill")


@fault("way-said-otherwise", "set")
def forwards_in_words(unit: EditableUnit) -> Place | None:
    go = {"travel": 4, "direction": "backwards"}
    letter = _danced(unit, [go], who="everyone, going forwards")
    return None if letter is None else (unit.file, ("sections", letter, "danced", 0, "who"))


@fault("no-gap-where-there-is-one", "set")
def a_gap_in_the_score(unit: EditableUnit) -> Place | None:
    actions = [{"gesture": 2}, {"stillness": 2}]
    letter = _danced(unit, actions, parts=2, **{"as": "canon in turn"})
    if letter is None:
        return None
    for file, n, step in unit.steps():
        if letter in step.get("makes", []):
            return unit.set(file, ("steps", n, "look_for"), "It runs along with no gap.")
    return None


@fault("holds-and-moves-at-once", "set")
def twos_hold_and_turn(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        if "improvised" not in section or not unit.top.get("motifs"):
            continue
        name = next(iter(unit.top["motifs"]))
        section["groups"] = {"size": 2, "roles": {"ones": [1], "twos": [2]}}
        section["danced"] = [{
            "what": [name, name], "as": "side by side", "roles": ["ones", "twos"],
            "who": "ones go and twos hold on",
        }]  # fmt: skip
        section["improvised"]["rules"] = ["Twos turn on the spot"]
        return unit.file, ("sections", letter, "improvised", "rules", 0)
    return None


@fault("cue-names-another-part", "set")
def a_quill_that_is_not_there(unit: EditableUnit) -> Place | None:
    first, second = unit.top["dance"]["form"].split()[:2]
    if first == second:
        return None
    unit.top.setdefault("motifs", {})["quill"] = {
        "from": "teacher", "idea": "A quill", "actions": [{"gesture": 4}, {"stillness": 4}],
    }  # fmt: skip
    join = {"from": first, "to": second, "as": "straight on", "how": "Go on where you are"}
    unit.top.setdefault("transitions", []).insert(0, {**join, "cue": "The last quill is over"})
    return unit.file, ("transitions", 0, "cue")


@fault("somebody-left-low", "set")
def sunk_for_good(unit: EditableUnit) -> Place | None:
    for letter, section in unit.top["sections"].items():
        if "improvised" in section:
            section["improvised"]["rules"] = ["The first to move sinks slowly and holds"]
            section["end"]["place"] = "Where you are"
            section["improvised"]["ends_on"] = "The gong"
            return unit.file, ("sections", letter, "improvised", "ends_on")
    return None


@fault("looks-for-all-at-once", "set")
def both_at_once(unit: EditableUnit) -> Place | None:
    letter = _danced(
        unit, [{"gesture": 4}], what=["quill", "quill"], **{"as": "question and answer"}
    )
    if letter is None:
        return None
    for file, n, step in unit.steps():
        if letter in step.get("makes", []):
            for field in ("dances", "develops", "joins", "shows"):
                step.pop(field, None)
            step["makes"] = [letter]
            text = "Both partners move together all the time."
            return unit.set(file, ("steps", n, "look_for"), text)
    return None
