"""What a unit covers in words an adviser reads: headings, and the schemas' words where unclear."""

from __future__ import annotations

from collections.abc import Mapping

HEADINGS_SAID: Mapping[str, tuple[str, str]] = {
    "actions": ("Actions", "How many units have each kind of action, by pupils doing it."),
    "space": ("Space", "Levels, directions, pathways, sizes and formations, by pupils doing them."),
    "dynamics": ("Dynamics", "How moves are danced, where a unit asks for it."),
    "relationships": (
        "Relationships",
        "How pupils are grouped where they make and dance, and how dancers fit together.",
    ),
    "devices": ("Devices", "The ways in which pupils change a motif in a lesson."),
    "forms": ("Forms", "The shape of the whole dance, and whether the class chooses its order."),
    "sound": ("Kinds of sound", "What the class dances to."),
    "stimulus": ("Kinds of stimulus", "How pupils meet what the dance starts from."),
}
"""For each heading, what it is called and what is counted under it."""
_SAID: Mapping[tuple[str, str], str] = {
    ("actions", "transfer"): "transfer of weight",
    ("space", "low"): "low level",
    ("space", "middle"): "middle level",
    ("space", "high"): "high level",
    ("space", "straight"): "straight pathway",
    ("space", "curved"): "curved pathway",
    ("space", "zigzag"): "zigzag pathway",
    ("space", "small"): "small size",
    ("space", "big"): "big size",
    ("space", "V"): "V shape",
    ("dynamics", "free"): "free flow",
    ("dynamics", "bound"): "bound flow",
    ("sound", "recorded"): "recorded music",
    ("sound", "drum"): "a drum",
    ("sound", "voice"): "voices",
    ("sound", "pupils live"): "pupils play it",
    ("stimulus", "see"): "something to see",
    ("stimulus", "hear"): "something to hear",
    ("stimulus", "touch"): "something to touch",
    ("stimulus", "do"): "something to do",
    ("stimulus", "think about"): "something to think about",
}


def word_said(heading: str, word: str) -> str:
    """A word as it is read under its heading."""
    if heading == "forms":
        return f"{word[:1].lower()}{word[1:]}"
    return _SAID.get((heading, word), word)
