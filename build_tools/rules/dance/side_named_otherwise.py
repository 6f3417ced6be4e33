"""A side of the hall has one name, in words as in the fields.

The unit calls the left wall the sea and a lesson points to the sea on the right: half the class
rushes one way and half the other. A side is known by the words that are its alone: of west bank and
east bank, west and east.

Bad:
    sides: {left: sea, right: beach}
    place: The sea on your right, the beach on your left
Good:
    sides: {left: sea, right: beach}
    place: The sea on your left, the beach on your right
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.reading import read
from build_tools.views.words.sides_named import SIDES
from build_tools.views.written.unit_text import place_of, unit_text

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_WORD = re.compile(r"[a-z]+")
_OTHER = {"left": "right", "right": "left", "front": "back", "back": "front"}
_OTHERWISE = re.compile(
    r"\b(?:back(?:s|wards?)?|turn\w*|as you face|facing (?:them|the class)|behind them|other way|"
    r"your class|mirror\w*)\b",
    re.IGNORECASE,
)
"""Who has turned has left on the other hand."""
_PUT = frozenset({"left", "right", "wall"})
"""Every text that puts a side somewhere has one of these."""
_TELL_TEACHERS = frozenset({"you", "notes"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first line of each document that puts a side where it is not."""
    names = _names(unit.dance.sides)
    if not names:
        return
    text, done = unit_text(unit), set[str]()
    for file, field in text.at(text.holding(names) & text.holding(_PUT)):
        if file in done:
            continue
        for sentence in read(field.text).sentences:
            found = _elsewhere(sentence, names, unit, teachers=field.kind in _TELL_TEACHERS)
            if found is None:
                continue
            said, side, other = found
            done.add(file)
            yield Finding(
                file,
                place_of(field, said),
                f"`{field.kind}` says `{said}`, but `sides` has {unit.dance.sides[side]} at the "
                f"{side}, and not at the {other}",
                "name the side as the unit does, or mend `sides`",
            )
            break


def _names(sides: Mapping[str, str]) -> dict[str, str]:
    """Each word that names one side alone, and that side."""
    words = {side: set(_WORD.findall(sides[side].lower())) - {"the"} for side in sides}
    return {
        word: side
        for side, own in words.items()
        for word in own
        if word not in SIDES and sum(word in others for others in words.values()) == 1
    }


def _elsewhere(
    sentence: str, names: Mapping[str, str], unit: Unit, *, teachers: bool
) -> tuple[str, str, str] | None:
    """What a sentence says of a side, that side, and where it puts it."""
    if _OTHERWISE.search(sentence):
        return None
    for word, side in names.items():
        for said, other in _put(sentence, word, unit, teachers=teachers):
            if other == _OTHER[side]:
                return said, side, other
    return None


def _put(sentence: str, word: str, unit: Unit, *, teachers: bool) -> Iterator[tuple[str, str]]:
    """Where a sentence puts what is called so: the words and the side."""
    whose = "the|their|its" if teachers else "the|their|its|your|our"
    noun = rf"\b(?P<name>{word}(?: (?:wall|bank|side|end))?)"
    for pattern in (
        rf"{noun},? (?:is |are |stands? |lies )?(?:on|to|at) (?:{whose}) (?P<side>left|right)\b",
        rf"{noun},? (?:is )?the wall (?P<side>behind|in front|opposite the watchers)\b",
        rf"{noun},? (?:is )?the (?P<side>front|back|left|right) wall\b",
        rf"{noun},? (?:is )?the (?P<side>watchers['’]) wall\b",
    ):
        for one in re.finditer(pattern, sentence, re.IGNORECASE):
            side = _WALLS.get(one.group("side").lower(), one.group("side").lower())
            if side.startswith("watchers"):
                side = "front" if "watch" in unit.dance.front.lower() else ""
            yield one.group(0), side


_WALLS = {"behind": "back", "in front": "front", "opposite the watchers": "back"}
