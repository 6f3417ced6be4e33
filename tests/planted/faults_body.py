"""Faults of bodies: levels that do not join, drops, turns too fast, arms that do two things."""

from __future__ import annotations

from typing import Any

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()


def _danced_first(unit: EditableUnit, actions: list[Any], what: list[str]) -> str | None:
    """A motif `lane` of these actions and one `after`, danced in the first counted section."""
    letters = unit.top["dance"]["form"].split()
    letter = next((x for x in letters if "counts" in unit.top["sections"][x]), None)
    if letter is None:
        return None
    motifs = unit.top.setdefault("motifs", {})
    motifs["lane"] = {"from": "teacher", "idea": "A lane through the hall", "actions": actions}
    motifs["after"] = {
        "from": "teacher",
        "idea": "What comes after",
        "actions": [{"gesture": 1, "level": "high"}, {"stillness": 3, "level": "high"}],
    }
    section = unit.top["sections"][letter]
    section["danced"] = [{"what": [name], "as": "unison"} for name in what]
    section["counts"] = 4 * len(what)
    return str(letter)


def _lane(unit: EditableUnit, n: int) -> Place:
    return unit.file, ("motifs", "lane", "actions", n)


@fault("next-move-starts-at-another-level", "set")
def no_way_up(unit: EditableUnit) -> Place | None:
    sink = [{"transfer": 4, "level": "high to low"}]
    letter = _danced_first(unit, sink, ["after", "lane", "after"])
    return None if letter is None else (unit.file, ("sections", letter, "danced", 2))


@fault("drops-to-the-floor", "set")
def dropped_after_a_jump(unit: EditableUnit) -> Place | None:
    drop = {"transfer": 2, "as": "plunge", "level": "high to low", "dynamics": ["strong", "sudden"]}
    if _danced_first(unit, [{"jump": 2, "level": "high"}, drop], ["lane"]) is None:
        return None
    return _lane(unit, 1)


@fault("slow-turn-is-fast", "set")
def slow_in_a_second(unit: EditableUnit) -> Place | None:
    if "tempo" not in unit.top["dance"]:
        return None
    turn = {"turn": 2, "as": "wheel", "turn_by": "whole", "dynamics": ["sustained"]}
    if _danced_first(unit, [turn, {"stillness": 2}], ["lane"]) is None:
        return None
    return _lane(unit, 0)


@fault("on-one-leg-too-young", "set")
def foot_in_the_air(unit: EditableUnit) -> Place | None:
    unit.top["years"] = [{"nation": "England", "years": [1]}]
    reach = {"gesture": 4, "as": "heron", "level": "middle to high", "body_part": "one foot"}
    if _danced_first(unit, [reach], ["lane"]) is None:
        return None
    return _lane(unit, 0)


@fault("arms-do-two-things", "set")
def claps_as_arms_open(unit: EditableUnit) -> Place | None:
    burst = {"gesture": 4, "as": "wide", "size": "small to big", "body_part": "arms"}
    letter = _danced_first(unit, [burst], ["lane"])
    if letter is None:
        return None
    section = unit.top["sections"][letter]
    section["sound"] = {
        "kind": "pupils live", "what": "Claps", "follows": "dancers follow the sound",
    }  # fmt: skip
    section["heard"] = [{"counts": 4, "sound": "claps", "by": "dancers", "on": [1]}]
    return unit.file, ("sections", letter, "heard", 0)
