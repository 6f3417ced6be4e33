"""What is heard lasts exactly as long as what is danced to it.

The pieces of `heard` are played one after another. Where they are too short, the drum stops under
the dancers; where they are too long, it runs into the next section. In a section without counts
they last between its least and its most seconds.

Bad:
    A: {counts: 32, heard: [{counts: 16, sound: beat}, {counts: 8, sound: claps}], …}
Good:
    A: {counts: 32, heard: [{counts: 16, sound: beat}, {counts: 16, sound: claps}], …}
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Dance, Heard, Seconds
from build_tools.model.unit import Unit
from build_tools.movement.counts import figures
from build_tools.movement.sounding import length_of, written_length
from build_tools.movement.whole import transition_counts
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import seconds_in_words

GRADE: Grade = "error"
NEEDS = ("unknown-name",)
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section and join that `heard` does not fill."""
    dance = unit.dance
    for letter, section in dance.sections.items():
        path: FieldPath = ("sections", letter, "heard")
        if section.heard and section.counts is not None:
            yield from _counted(unit, path, f"section {letter}", section.counts, section.heard)
        elif section.heard and section.seconds is not None:
            yield from _timed(unit, path, f"section {letter}", section.seconds, section.heard)
    for n, join in enumerate(dance.transitions):
        if join.heard:
            path, what = ("transitions", n, "heard"), f"the change from {join.start} to {join.end}"
            counts = max(transition_counts(join), Fraction(0))
            yield from _counted(unit, path, what, counts, join.heard, kind=join.kind)


def _counted(
    unit: Unit,
    path: FieldPath,
    what: str,
    counts: Fraction,
    heard: tuple[Heard, ...],
    kind: str = "",
) -> Iterator[Finding]:
    lasts = _length(unit.dance, heard, counted=True)
    if lasts is None:
        yield _no_tempo(unit, path, what)
    elif not counts:
        yield Finding(
            unit.file,
            path,
            f"{what} is `{kind}`, which takes no counts, but what is heard in it takes "
            f"{figures(lasts)}",
            "leave out `heard` here: the section after says what sounds from there on",
        )
    elif lasts != counts:
        yield Finding(
            unit.file,
            path,
            f"{what} has {figures(counts)} counts, but what is heard in it takes "
            f"{figures(lasts)}: {_added(heard)}",
            f"make the pieces of `heard` add up to {figures(counts)}",
        )


def _timed(
    unit: Unit, path: FieldPath, what: str, span: Seconds, heard: tuple[Heard, ...]
) -> Iterator[Finding]:
    lasts = _length(unit.dance, heard, counted=False)
    if lasts is None:
        yield _no_tempo(unit, path, what)
    elif not span.least <= lasts <= span.most:
        yield Finding(
            unit.file,
            path,
            f"{what} lasts {seconds_in_words(span)}, but what is heard in it takes "
            f"{float(lasts):.4g} seconds: {_added(heard)}",
            "make the pieces of `heard` add up to a length between the two, or mend `seconds`",
        )


def _no_tempo(unit: Unit, path: FieldPath, what: str) -> Finding:
    return Finding(
        unit.file,
        path,
        f"what is heard in {what} is written in counts and in seconds, and no tempo says how long "
        "a count is",
        "write `tempo` under `dance`, or all pieces in the one or the other",
    )


def _length(dance: Dance, heard: tuple[Heard, ...], *, counted: bool) -> Fraction | None:
    return length_of(heard, counted=counted, tempo=dance.tempo)


def _added(heard: tuple[Heard, ...]) -> str:
    """The sum as it stands: 16 (beat) + 8 seconds (roll)."""
    return " + ".join(
        f"{figures(written_length(one))}{' seconds' if one.counts is None else ''} ({one.sound})"
        for one in heard
    )
