"""Faults of what is heard: cues that cannot happen, holds nobody counts, words nobody wrote."""

from __future__ import annotations

from typing import Any

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()

_DRUM = "dancers follow the sound"


def _first_join(unit: EditableUnit) -> tuple[str, str]:
    first, second = unit.top["dance"]["form"].split()[:2]
    return first, second


def _join(unit: EditableUnit, **fields: Any) -> Place:
    """A join of the first two sections, before all others."""
    first, second = _first_join(unit)
    join = {"from": first, "to": second, "how": "Stay as you are", "cue": "A gong", **fields}
    unit.top.setdefault("transitions", []).insert(0, join)
    return unit.file, ("transitions", 0, "cue")


@fault("cue-cannot-happen", "set")
def drum_stops_after_silence(unit: EditableUnit) -> Place | None:
    first, second = _first_join(unit)
    if first == second:
        return None
    section = unit.top["sections"][first]
    section["sound"] = {"kind": "silence", "what": "No sound", "follows": _DRUM}
    section.pop("heard", None)
    return _join(unit, **{"as": "straight on", "cue": "The drum stops"})


@fault("hold-nobody-counts", "set")
def eight_silent_counts(unit: EditableUnit) -> Place | None:
    first, second = _first_join(unit)
    if first == second:
        return None
    heard = [{"counts": 8, "sound": "silence"}]
    return _join(unit, **{"as": "hold", "counts": 8, "heard": heard})


def _counted(unit: EditableUnit) -> Any:
    letters = unit.top["dance"]["form"].split()
    return next((x for x in letters if "counts" in unit.top["sections"][x]), None)


@fault("words-of-counts-unwritten", "set")
def words_nobody_wrote(unit: EditableUnit) -> Place | None:
    letter = _counted(unit)
    if letter is None:
        return None
    section = unit.top["sections"][letter]
    section["sound"] = {"kind": "voice", "what": "The class whispers the words", "follows": _DRUM}
    section["heard"] = [{"counts": section["counts"], "sound": "voice", "by": "class"}]
    return unit.file, ("sections", letter, "sound", "what")


@fault("sound-is-not-throughout", "set")
def not_throughout(unit: EditableUnit) -> Place | None:
    letter = _counted(unit)
    if letter is None:
        return None
    unit.top["sections"][letter]["heard"] = [
        {"counts": unit.top["sections"][letter]["counts"], "sound": "silence"}
    ]
    return unit.set(unit.file, ("dance", "sound", "what"), "A steady drum beat throughout")


@fault("swap-in-words-only", "set")
def swapped_in_words(unit: EditableUnit) -> Place | None:
    letter, names = _counted(unit), list(unit.top.get("motifs", {}))
    if letter is None or not names:
        return None
    unit.top["sections"][letter]["danced"] = [
        {"what": [names[0], names[0]], "as": "question and answer", "who": "One asks, then swap"}
    ]
    return unit.file, ("sections", letter, "danced", 0, "who")
