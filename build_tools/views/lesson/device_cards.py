"""Cards that each name a device: what it does to a motif, and the unit's own motif so changed.

The words on the cards are the author's; what a device is, the bank's words of dance say.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Any

from build_tools.model.bank import Word
from build_tools.model.dance import Dance, Development
from build_tools.model.unit import Unit
from build_tools.movement.development import actions_of, misfit
from build_tools.views.lesson.asked_to_get import Kind, asked
from build_tools.views.words.punctuation import sentence

EXAMPLE = "example of "
"""How an example is named in the dance that it is added to."""
_ALSO = {
    "looking another way": "change of facing",
    "leaving out": "leaving out",
    "order": "change of order",
    "another part of the body": "change of body part",
}
_CHANGED: Mapping[str, Mapping[str, Any]] = MappingProxyType(
    {
        "retrograde": {},
        "mirror": {},
        "change of level": {"level": "low"},
        "change of size": {"size": "small"},
        "change of facing": {"facing": "back"},
        "change of body part": {"body_part": "elbow"},
        "leaving out": {"left_out": (1,)},
        "fragmentation": {"kept": (1, 2)},
        "change of speed": {},
    }
)
"""What an example changes, for the devices that a drawing can show."""


@dataclass(frozen=True, slots=True)
class DeviceCard:
    """One card."""

    word: str
    """What stands on it, in the author's words."""
    plain: str | None
    """What it is, in a plain sentence; None where the bank has no words for it."""
    drawn: str | None
    """The name, in `with_examples`, of the motif so changed; None where none shows it."""


def device_words(unit: Unit, line: str) -> tuple[str, ...]:
    """The devices that a line asks for: its own, else the unit's list, else those it uses."""
    named = asked(line).names
    kit = (asked(one) for one in unit.kit.collect)
    listed = next((one.names for one in kit if Kind.DEVICES in one.kinds and one.names), ())
    used = dict.fromkeys(one.device for one in unit.dance.developments.values())
    return named or listed or tuple(used)


def device_card(unit: Unit, vocabulary: Mapping[str, Word], word: str) -> DeviceCard:
    """What stands on the card of a device: what it is, and what to say of it in class."""
    device = _device(word, vocabulary)
    own = {name.casefold(): plain for name, plain in unit.words.items()}
    known = vocabulary.get(device)
    told = own.get(device) or own.get(word.casefold()) or (known.plain if known else None)
    plain = " ".join(sentence(one) for one in (told, known.in_class if known else None) if one)
    shown = f"{EXAMPLE}{device}"
    return DeviceCard(
        word, plain or None, shown if shown in _examples(unit.dance, [device]) else None
    )


def with_examples(dance: Dance, words: Iterable[str], vocabulary: Mapping[str, Word]) -> Dance:
    """The dance with its first motif changed by each device, to be drawn."""
    devices = [_device(word, vocabulary) for word in words]
    return replace(dance, developments={**dance.developments, **_examples(dance, devices)})


def _device(word: str, vocabulary: Mapping[str, Word]) -> str:
    """The device that an author's word stands for; the word itself where none is known."""
    said = word.casefold()
    tried = (f"change of {said}", _ALSO.get(said, said), said)
    return next((name for name in tried if name in vocabulary), said)


def _examples(dance: Dance, devices: Iterable[str]) -> dict[str, Development]:
    motif = next(iter(dance.motifs), None)
    if motif is None:
        return {}
    actions = actions_of(dance, motif)
    found = {}
    for device in devices:
        if device not in _CHANGED:
            continue
        made = Development(f"{EXAMPLE}{device}", motif, device, **_CHANGED[device])
        if device == "change of speed":
            made = replace(made, counts=tuple(2 * action.counts for action in actions))
        if misfit(actions, made) is None:
            found[made.name] = made
    return found
