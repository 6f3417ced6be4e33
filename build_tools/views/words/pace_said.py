"""How fast a beat is, for who finds it by a clock."""

from __future__ import annotations

from build_tools.page_words.words import N_, _

_EASY_PACES = {
    30: N_("once every two seconds"),
    60: N_("once a second"),
    120: N_("twice a second"),
    180: N_("three times a second"),
}
"""Beats a minute that a teacher can find by a clock. Common practice, no source."""
_SAME_PACE, _NEAR_PACE = 0.02, 0.12


def pace_in_words(tempo: int | None) -> str:
    """How fast the beat is: by a clock that shows seconds where that is easy, else by its number.

    Where no easy pace is near, nobody finds the beat by a clock, and the page of the counts plays
    it.
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
    return _("{number} a minute (Counts plays it)", number=tempo)
