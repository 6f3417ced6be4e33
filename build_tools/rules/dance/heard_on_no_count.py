"""Every stroke and every word of what is heard has a count to fall on.

The counts of a piece are numbered from 1. A stroke on count 9 of eight is never struck, a louder
stroke on a count where nothing sounds is not heard, and a ninth word has no count to be said on.

Bad:
    A: {counts: 8, heard: [{counts: 8, sound: claps, on: [1, 3, 9]}], …}
Good:
    A: {counts: 8, heard: [{counts: 8, sound: claps, on: [1, 3, 8]}], …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Heard
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.sounding import STRUCK, places, written_length
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import listed

GRADE: Grade = "error"
SOURCE = "common practice, no source"

_SOUNDLESS = frozenset({"silence", "recording"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each stroke, accent and word that falls on no count of its piece."""
    for path, heard in _heard(unit):
        for n, one in enumerate(heard):
            yield from _piece(unit.file, (*path, n), one)


def _heard(unit: Unit) -> Iterator[tuple[FieldPath, tuple[Heard, ...]]]:
    for letter, section in unit.dance.sections.items():
        yield ("sections", letter, "heard"), section.heard
    for n, join in enumerate(unit.dance.transitions):
        yield ("transitions", n, "heard"), join.heard


def _piece(file: str, path: FieldPath, one: Heard) -> Iterator[Finding]:
    length = written_length(one)
    each = "counts" if one.counts is not None else "seconds"
    if one.sound in _SOUNDLESS and (one.on or one.louder):
        field = "on" if one.on else "louder"
        yield Finding(
            file,
            (*path, field),
            f"`{field}` says on which {each} something is struck, but the piece is {one.sound}",
            f"leave out `{field}`, or write what sounds there",
        )
        return
    for field, listed_places in (("on", one.on), ("louder", one.louder)):
        beyond = [place for place in listed_places if place >= length + 1]
        if beyond:
            yield Finding(
                file,
                (*path, field),
                f"`{field}` names {listed([figures(p) for p in beyond])}, but the piece has "
                f"{figures(length)} {each}",
                f"number the {each} of the piece from 1 to {figures(length)}",
            )
            return
    silent = [place for place in one.louder if one.sound in STRUCK and place not in places(one)]
    if silent:
        yield Finding(
            file,
            (*path, "louder"),
            f"`louder` names {listed([figures(p) for p in silent])}, but the piece sounds on "
            f"{listed([figures(p) for p in places(one)])}",
            "make only those louder that are struck, or add them to `on`",
        )
    if len(one.says) > length:
        yield Finding(
            file,
            (*path, "says"),
            f"`says` has {len(one.says)} words for {figures(length)} {each}",
            f"write one word, or a hyphen, for each of the {figures(length)} {each}",
        )
