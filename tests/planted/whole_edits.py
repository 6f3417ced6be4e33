"""Edits that go through a whole unit: one thing is taken out wherever the unit says or shows it."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from typing import Any

from tests.planted.unit_edits import EditableUnit

KINDS = ("gesture", "travel", "jump", "turn", "transfer", "stillness")
ADVICE = ("say", "you", "look_for", "easier", "harder", "into", "ask")
DEEDS = ("explore", "make", "develop", "rehearse", "join")
_SET = {
    "apart",
    "groups_apart",
    "others",
    "roles",
    "says",
    "spot",
    "towards",
    "turn_by",
    "within",
    "as",
    "by",
    "direction",
    "dynamics",
    "facing",
    "follows",
    "formation",
    "level",
    "pathway",
    "device",
    "grouping",
    "kind",
    "kinds",
    "licence",
    "phase",
    "size",
    "years",
    "of",
    "with",
    "body_part",
    "subjects",
    "teaches",
    "title",
    "to",
    "words",
}
"""Fields whose words are names, or come from a list."""
_SENTENCE = re.compile(r"(?<=[.!?])\s+")


def written_actions(unit: EditableUnit) -> Iterator[Any]:
    """Every action of the motifs, and those that developments add or put in place of another."""
    for motif in unit.top.get("motifs", {}).values():
        yield from motif["actions"]
    for development in unit.top.get("developments", {}).values():
        if "replace" in development:
            yield development["replace"]["by"]
        for addition in development.get("add", []):
            yield addition["action"]


def become(action: Any, kind: str) -> None:
    """Let an action be of one kind and no other, for as many counts as before."""
    was = next(k for k in KINDS if k in action)
    action[kind] = action.pop(was)
    action.pop("with", None)


def only_mirrors(unit: EditableUnit, devices: tuple[str, ...]) -> None:
    """Let each development by one of `devices` be a mirror in place of it."""
    for development in unit.top.get("developments", {}).values():
        if development["device"] in devices:
            of = development["of"]
            development.clear()
            development.update({"of": of, "device": "mirror"})


def plain_steps(unit: EditableUnit) -> None:
    """Let every step and the ending ask for dancing and no more, with no advice beside it."""
    unit.top["ending"] = [{"who": "everyone", "does": "Be still for three breaths"}]
    for _, _, step in unit.steps():
        step.update(does="Dance", task="Dance it.")
        for field in ADVICE:
            step.pop(field, None)


def no_improvising(unit: EditableUnit) -> None:
    """Let what was made up on the spot be the first motif, danced by everyone."""
    motif = next(iter(unit.top["motifs"]))
    for section in unit.top["sections"].values():
        if "improvised" in section:
            seconds = section.pop("improvised")
            section["timed"] = {"seconds": seconds["seconds"], "ends_on": "Everyone is still"}
            section["danced"] = [{"what": [motif], "as": "unison", "who": "everyone"}]


def without_sentences(unit: EditableUnit, words: re.Pattern[str]) -> None:
    """Take out of every text of the unit the sentences with any of `words`."""

    def kept(text: str) -> str:
        return " ".join(s for s in _SENTENCE.split(text) if not words.search(s)) or "Dance it on."

    for file in unit.data:
        unit.data[file] = _each_text(unit.data[file], lambda t: kept(t) if words.search(t) else t)
        unit.bodies[file] = kept(unit.bodies[file]) + "\n"


def _each_text(value: Any, change: Callable[[str], str]) -> Any:
    """Every text that an author puts into words of their own; names and set words stay."""
    if isinstance(value, str):
        return change(value) if " " in value else value
    if isinstance(value, list):
        return [_each_text(item, change) for item in value]
    if isinstance(value, dict):
        listed = _SET | ({"who"} if "questions" in value else set())
        return {
            key: item if key in listed or _are_names(key, item) else _each_text(item, change)
            for key, item in value.items()
        }
    return value


def _are_names(key: str, item: object) -> bool:
    return key == "from" or (key == "what" and isinstance(item, list))
