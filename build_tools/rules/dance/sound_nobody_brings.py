"""What is danced to is among what the teacher collects, or is made by those who dance.

The dance goes to a drum and the list has a music player; the score plays a recording and there is
none; a join waits for a whistle that nobody has. The teacher finds out in the hall. Clapping,
voices and taps on a book are there anyway.

Bad:
    sound: {kind: drum, what: A hand drum, …}
    collect: [A music player]
    without_props: Sit in a ring.
Good:
    sound: {kind: drum, what: A hand drum, …}
    collect: [A hand drum]
    without_props: Sit in a ring.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.dance import Dance, Heard
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.instruments import instruments_in

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"

_PLAYER = re.compile(
    r"\b(?:players?|speakers?|recordings?|music|tracks?|songs?|laptop|tablet|play)\b", re.IGNORECASE
)
"""What plays a recording."""


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each sound that nobody brings: of the dance, of a piece, of a sign."""
    kit = unit.kit
    lists = (*kit.collect, *(line for lesson in unit.lessons for line in lesson.collect))
    brought = instruments_in("; ".join((*lists, kit.without_props)))
    named = instruments_in(unit.dance.sound.what)
    if named and not named & instruments_in("; ".join(kit.collect)):
        yield Finding(
            unit.file,
            ("dance", "sound", "what"),
            f"the dance goes to `{unit.dance.sound.what}`, but nothing under `collect` is that",
            "write what sounds under `collect`, and how to do without under `without_props`",
        )
    yield from _no_recording(unit)
    known = brought.union(*(instruments_in(text) for text in _told(unit.dance)))
    for n, join in enumerate(unit.dance.transitions):
        missing = instruments_in(join.cue) - known
        if missing:
            yield Finding(
                unit.file,
                ("transitions", n, "cue"),
                f"the sign has `{min(missing)}`, which is neither under `collect` nor in what "
                "the dance goes to",
                "give the sign by what is there, or write it under `collect`",
            )


def _no_recording(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each part that plays a recording where none is named."""
    dance = unit.dance
    if any(one.sound.kind == "recorded" for one in dance.sections.values()):
        return
    if dance.sound.kind == "recorded" or any(_PLAYER.search(one) for one in unit.kit.collect):
        return
    for path, pieces in _heard(dance):
        n = next((n for n, one in enumerate(pieces) if one.sound == "recording"), None)
        if n is not None:
            yield Finding(
                unit.file,
                (*path, n),
                "a recording is to be heard here, but no `sound` is recorded, and `collect` has no "
                "player",
                "write what is heard here, or the recording under `sound` and a player under "
                "`collect`",
            )


def _heard(dance: Dance) -> Iterator[tuple[FieldPath, tuple[Heard, ...]]]:
    for letter, section in dance.sections.items():
        if not section.returns or "heard" in section.changes:
            yield ("sections", letter, "heard"), section.heard
    for n, join in enumerate(dance.transitions):
        yield ("transitions", n, "heard"), join.heard


def _told(dance: Dance) -> Iterator[str]:
    """All that the dance goes to, in words."""
    yield dance.sound.what
    for section in dance.sections.values():
        yield from (section.sound.what, section.ends_on or "")
    for _, pieces in _heard(dance):
        yield from (one.sound for one in pieces)
