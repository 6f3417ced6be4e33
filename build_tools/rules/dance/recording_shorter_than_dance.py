"""A recording that is played once lasts as long as what is danced to it.

If the music stops before the dance does, the class stops with it, in front of the watchers. It goes
on playing through a section with another sound, unless somebody is told to stop it.

Bad:
    sound: {kind: recorded, lasts: 30, …}
Good:
    sound: {kind: recorded, lasts: 600, …}
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Dance, Sound
from build_tools.model.unit import Unit
from build_tools.movement.counts import seconds
from build_tools.movement.whole import Stretch, stretches
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import length_in_words, listed

GRADE: Grade = "error"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "tempo-missing")

_STOPS = re.compile(
    r"\b(?:music|recording|track|song|tune|sound|piece|it)\b[^.;]{0,24}"
    r"\b(?:stop|paus|fade|cut|end|turned off|switched off|is off)\w*|"
    r"\b(?:stop|pause|fade|cut|turn off|switch off|turn down)\b[^.;]{0,24}"
    r"\b(?:music|recording|track|song|tune|sound|piece)\b|\bno (?:music|recording|sound)\b",
    re.IGNORECASE,
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each recording that runs out before what is danced to it."""
    dance = unit.dance
    if _runs_out(dance.sound):
        what, least = _heard(dance)
        yield from _too_short(unit, ("dance", "sound", "lasts"), dance.sound, what, least)
    for letter, section in dance.sections.items():
        if section.sound == dance.sound or not _runs_out(section.sound):
            continue
        length = section.seconds.least if section.seconds else None
        if section.counts is not None and dance.tempo is not None:
            length = seconds(section.counts, dance.tempo)
        yield from _too_short(
            unit,
            ("sections", letter, "sound", "lasts"),
            section.sound,
            f"section {letter}",
            length,
        )


def _runs_out(sound: Sound) -> bool:
    return sound.kind == "recorded" and sound.lasts is not None and not sound.looped


def _heard(dance: Dance) -> tuple[str, Fraction | None]:
    """What the dance's recording plays under, and its least seconds; None where they are not known.

    It plays from the first section to the last that is danced to it. A section between with a
    sound of its own counts too, unless that is silence, another recording, or somebody stops this
    one.
    """
    laid = stretches(dance)
    own = [n for n, one in enumerate(laid) if one.section and one.section.sound == dance.sound]
    if not own:
        return "", Fraction(0)
    stopped = {n for n, one in enumerate(laid) if one.section and _is_stopped(dance, laid, n)}
    plays = [
        n
        for n in range(own[0], own[-1] + 1)
        if n not in stopped and not (laid[n].section is None and {n - 1, n + 1} & stopped)
    ]
    letters = [section.letter for n in plays if (section := laid[n].section)]
    what = "the dance" if len(letters) == len(dance.form) else f"section {listed(letters)}"
    lengths = [laid[n].seconds for n in plays]
    known = [length.least for length in lengths if length is not None]
    return what, sum(known, Fraction(0)) if len(known) == len(lengths) else None


def _is_stopped(dance: Dance, laid: tuple[Stretch, ...], n: int) -> bool:
    """Whether the dance's recording is stopped for a section with a sound of its own."""
    section = laid[n].section
    if section is None or section.sound == dance.sound:
        return False
    if section.sound.kind in ("recorded", "silence"):
        return True
    before = laid[n - 1].transition if n else None
    told = [section.sound.what, section.improvised_from or ""]
    told += [before.how, before.cue] if before else []
    return any(_STOPS.search(text) for text in told)


def _early(length: Fraction) -> str:
    """How much too early, never none at all."""
    return length_in_words(length) if length >= 1 else "under a second"


def _too_short(
    unit: Unit, path: FieldPath, sound: Sound, what: str, least: Fraction | None
) -> Iterator[Finding]:
    if least is None or sound.lasts is None or least <= sound.lasts:
        return
    yield Finding(
        unit.file,
        path,
        f"the recording lasts {length_in_words(sound.lasts)}, but {what} takes "
        f"{length_in_words(least)}: the sound stops {_early(least - sound.lasts)} early",
        "write `looped: true` if it is played round and round, or choose a longer recording",
    )
