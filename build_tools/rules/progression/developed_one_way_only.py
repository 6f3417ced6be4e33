"""From age 7, motifs are developed in two ways at least, out of time, space and relationship.

A motif that only grows slower is one idea, tried once. Slower and on another level, or mirrored and
then in canon, lets pupils see what each change does. A canon, an answer or a change of who dances
is one of relationship.

Bad:
    years: [{nation: England, years: [4]}]
    developments: {gust-slow: {of: gust, device: change of speed, counts: [4, 4]},
      gust-quick: {of: gust, device: change of speed, counts: [1, 1]}}
Good:
    years: [{nation: England, years: [4]}]
    developments: {gust-slow: {of: gust, device: change of speed, counts: [4, 4]},
      gust-mirrored: {of: gust, device: mirror}}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import how_many, listed

GRADE: Grade = "question"
SOURCE = (
    "Smith-Autard, Dance Composition: a motif is developed in action, in dynamics and time, in "
    "space and in relationship; that two are asked for is common practice, no source"
)
NEEDS = ("unknown-name", "year-unknown-in-nation", "nothing-developed")
_FROM = 7
_TIME = ("change of speed", "change of rhythm", "change of dynamics", "repetition")
_SPACE = (
    "change of size",
    "change of level",
    "change of direction",
    "change of facing",
    "change of pathway",
    "change of formation",
    "mirror",
)
_RELATIONSHIP = ("change of number of dancers", "change of relationship")
_TOGETHER = (
    "canon",
    "canon in turn",
    "canon together",
    "canon to one ending",
    "question and answer",
    "side by side",
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield one finding where developments are of one kind only, or of none of the three.

    A draft may still change.
    """
    known, dance = ages(unit.years), unit.dance
    if known is None or known[0] < _FROM or not dance.developments or unit.draft:
        return
    if all(section.counts is None for section in dance.sections.values()):
        return
    devices = list(dict.fromkeys(one.device for one in dance.developments.values()))
    fits = {p.fit for section in dance.sections.values() for p in section.danced}
    kinds = {kind for device in devices if (kind := _kind(device))}
    if fits.intersection(_TOGETHER):
        kinds.add("relationship")
    if len(kinds) >= 2:
        return
    said = f"only in {next(iter(kinds))}" if kinds else "in none of them"
    yield Finding(
        unit.file,
        ("developments",),
        f"{how_many(len(dance.developments), 'development')} ({listed(devices)}) change motifs "
        f"{said}, where two of time and feel, space and relationship are usual from age {_FROM}",
        "add one of another kind: another speed or feel, another level or way, or a canon",
    )


def _kind(device: str) -> str | None:
    """time and feel, space or relationship; None for a device that changes the moves themselves."""
    if device in _TIME:
        return "time and feel"
    if device in _SPACE:
        return "space"
    return "relationship" if device in _RELATIONSHIP else None
