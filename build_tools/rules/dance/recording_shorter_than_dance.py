"""A recording that is played once lasts as long as what is danced to it.

If the music stops before the dance does, the class stops with it, in front of the watchers.

Bad:
    sound: {kind: recorded, lasts: 60, …}, and a dance of 1 minute 55 seconds
Good:
    sound: {kind: recorded, lasts: 130, …}
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from build_tools.model.dance import Dance, Sound
from build_tools.model.unit import Unit
from build_tools.movement.counts import seconds
from build_tools.movement.whole import Stretch, stretches
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import length_in_words

GRADE: Grade = "error"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "tempo-missing")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each recording that runs out before what is danced to it."""
    dance = unit.dance
    if _runs_out(dance.sound):
        yield from _too_short(
            unit, ("dance", "sound", "lasts"), dance.sound, "the dance", _all(dance)
        )
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


def _all(dance: Dance) -> Fraction | None:
    """The least seconds danced to the dance's own sound: its sections, and the joins between."""
    laid = stretches(dance)
    found = Fraction(0)
    for n, stretch in enumerate(laid):
        if not _under(dance, laid, n, stretch):
            continue
        if stretch.seconds is None:
            return None
        found += stretch.seconds.least
    return found


def _under(dance: Dance, laid: tuple[Stretch, ...], n: int, stretch: Stretch) -> bool:
    beside = (stretch,) if stretch.section else (laid[n - 1], laid[n + 1])
    return all(s.section is not None and s.section.sound == dance.sound for s in beside)


def _too_short(
    unit: Unit, path: FieldPath, sound: Sound, what: str, least: Fraction | None
) -> Iterator[Finding]:
    if least is None or sound.lasts is None or least <= sound.lasts:
        return
    yield Finding(
        unit.file,
        path,
        f"the recording lasts {length_in_words(sound.lasts)}, but {what} takes "
        f"{length_in_words(least)}: the sound stops {length_in_words(least - sound.lasts)} early",
        "write `looped: true` if it is played round and round, or choose a longer recording",
    )
