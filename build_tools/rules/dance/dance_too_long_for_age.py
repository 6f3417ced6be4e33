"""The whole dance is no longer than pupils of its age can remember and keep up.

A class dance lasts up to about a minute and a half at 5 to 7, two and a half minutes at 7 to 11
and three at 11 to 14. A third more is let pass, up to three and a half minutes.

Bad:
    years: [{nation: England, years: [1, 2]}]
    form: A
    A: {counts: 160, …}
    tempo: 60
Good:
    years: [{nation: England, years: [1, 2]}]
    form: A
    A: {counts: 160, …}
    tempo: 120
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.school_years import ages
from build_tools.model.unit import Unit
from build_tools.movement.whole_length import whole_counts, whole_seconds
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.words.plain_words import counts_in_words, length_in_words

GRADE: Grade = "question"
SOURCE = (
    "GCSE dance as regulated by Ofqual: a group dance lasts 3 to 3.5 minutes at 16; the lengths "
    "for younger pupils are common practice"
)
NEEDS = ("unknown-name",)

_USUAL = ((7, 90), (11, 150), (14, 180))
"""Up to an age, the seconds a class dance usually lasts at most."""
_AT_16 = 210


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding where even the least length of the dance is over what its age allows."""
    span = ages(unit.years)
    if span is None or span[0] >= _USUAL[-1][0]:
        return
    usual = next((most for age, most in _USUAL if span[1] <= age), _USUAL[-1][1])
    most = min(usual + usual // 3, _AT_16)
    length = whole_seconds(unit.dance)
    if length is None or length.least <= most:
        return
    counted = whole_counts(unit.dance).least
    made_of = f" ({counts_in_words(counted)} at {unit.dance.tempo} a minute" if counted else ""
    if made_of:
        made_of += ", and what is not counted)" if length.least != length.most else ")"
    yield Finding(
        unit.file,
        ("dance", "form"),
        f"the dance lasts {length_in_words(length.least)} or more{made_of}; at ages {span[0]} to "
        f"{span[1]} a class dance lasts about {length_in_words(usual)}, and "
        f"{length_in_words(most)} at most",
        "take a section or a repeat out of `form`: it is "
        f"{length_in_words(length.least - most)} over",
    )
