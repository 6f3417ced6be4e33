"""How fast a beat is, for who finds it by a clock."""

from __future__ import annotations

from fractions import Fraction

from build_tools.movement.counts import figures
from build_tools.page_words.words import N_, _
from build_tools.views.words.phrases_counted import number_word

HEAR_IT = N_("Counts for the hall")
"""What the page is called that plays the counts."""

_EASY_PACES = {
    30: N_("once every two seconds"),
    60: N_("once a second"),
    120: N_("twice a second"),
    180: N_("three times a second"),
}
"""Beats a minute that a teacher can find by a clock. Common practice, no source."""
_SAME_PACE, _NEAR_PACE = 0.02, 0.12


_WALKS = ((96, 110, N_("a brisk walk")), (70, 95, N_("an easy walk")))
"""Steps a minute, from and to, and how a grown-up walks then: a hundred are a brisk walk
(Tudor-Locke and others on cadence, 2018; from memory)."""


def pace_in_words(tempo: int | None, phrase: int = 8, *, timed: bool = False) -> str:
    """How fast the beat is: by a clock that shows seconds where that is easy, else by a walk.

    So many taps in so many seconds are told too, unless they are told beside it already: `timed`.
    The page of the counts plays what nobody finds by a clock.
    """
    if not tempo:
        return ""
    near = min(_EASY_PACES, key=lambda easy: abs(tempo / easy - 1))
    off = tempo / near - 1
    if abs(off) <= _SAME_PACE:
        return _(_EASY_PACES[near])
    if abs(off) <= _NEAR_PACE:
        pace = _(_EASY_PACES[near])
        if off > 0:
            return _("a little faster than {pace}", pace=pace)
        return _("a little slower than {pace}", pace=pace)
    walk = next((_(said) for least, most, said in _WALKS if least <= tempo <= most), "")
    halves = round(Fraction(120 * phrase, tempo))
    taps = _(
        "{number} taps in about {seconds} seconds",
        number=number_word(phrase),
        seconds=figures(Fraction(halves, 2)),
    )
    told = ": ".join(filter(None, (walk, "" if timed and walk else taps)))
    return _("{pace} (hear it: {counts})", pace=told, counts=_(HEAR_IT))
