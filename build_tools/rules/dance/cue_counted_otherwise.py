"""The taps, beats or claps that end a section are as many wherever they are counted.

Pupils count the taps they have learned. Eight soft taps in the section and four in the ending leave
half of them moving when the rest are still.

Bad:
    ends_on: Two slow beats
    ending: [{who: everyone, does: Sink on the three slow beats.}]
Good:
    ends_on: Two slow beats
    ending: [{who: everyone, does: Sink on the two slow beats.}]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.strokes_counted import strokes_counted

GRADE: Grade = "question"
READS = "en"
NEEDS = ("unknown-name",)
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that counts a cue otherwise than an earlier one does."""
    for letter in dict.fromkeys(unit.dance.form):
        seen: dict[tuple[str, str], int] = {}
        for path, text in _lines(unit, letter):
            for cue in strokes_counted(text):
                number, how, what = cue.number, cue.how, cue.what
                known = [(k, n) for k, n in seen.items() if k[1] == what and k[0] in how]
                if known and all(n != number for _, n in known):
                    yield Finding(
                        unit.file,
                        path,
                        f"`{cue.said}` is counted here, but "
                        f"{known[0][1]} {known[0][0][0]} {what}s in section {letter}",
                        f"count {known[0][1]} in both places, or say which other {what}s these are",
                    )
                    return
                seen |= {(one, what): number for one in how if (one, what) not in seen}


def _lines(unit: Unit, letter: str) -> Iterator[tuple[FieldPath, str]]:
    """The lines on how a section sounds and ends, and on the ending if it is the last."""
    dance, section = unit.dance, unit.dance.sections[letter]
    path: FieldPath = ("sections", letter)
    if section.sound is not dance.sound:
        yield (*path, "sound", "what"), section.sound.what
    for n, rule in enumerate(section.improvised_rules):
        yield (*path, "improvised", "rules", n), rule
    if section.ends_on:
        yield (*path, section.kind, "ends_on"), section.ends_on
    if letter == dance.form[-1] and not dance.order_choice:
        for n, part in enumerate(dance.ending):
            yield ("ending", n, "does"), part.does
