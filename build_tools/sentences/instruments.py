"""The things that sound and have to be brought: a drum, a bell, a music player."""

from __future__ import annotations

import re

_KINDS = {
    "drum": "drums?(?! on\\b)|drumbeats?|djembes?|bongos?|tambours?",
    "shaker": "shakers?|maracas?|rattles?",
    "bell": "bells?|keys",
    "tambourine": "tambourines?",
    "triangle": "triangles?",
    "cymbal": "cymbals?",
    "gong": "gongs?",
    "whistle": "whistles?",
    "woodblock": "wood-?blocks?|claves?",
    "chime": "chimes?|chime bars?",
    "flute": "flutes?|recorders?",
    "guitar": "guitars?",
    "piano": "pianos?|keyboards?",
    "horn": "horns?|trumpets?",
}
_KNOWN = {
    kind: re.compile(rf"\b(?:{words})\b(?! (?:card|shape|move|name))", re.IGNORECASE)
    for kind, words in _KINDS.items()
}
_IMAGINED = re.compile(r"\b(?:like|as if|imagin\w*|pretend)\b[^,.;:]*", re.IGNORECASE)


def instruments_in(text: str) -> frozenset[str]:
    """The instruments that a text names and does not only liken something to."""
    told = _IMAGINED.sub("", text)
    return frozenset(kind for kind, words in _KNOWN.items() if words.search(told))
