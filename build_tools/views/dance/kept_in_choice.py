"""What a choice says is kept of the moves that pupils vary: two steps on 1 and 2, whatever else.

A variation of pupils' own is a blank over its counts; yet who stands near counts on what the choice
keeps, and a page that calls those moves changed as pupils choose undoes it.
"""

from __future__ import annotations

import re
from fractions import Fraction
from functools import lru_cache

from build_tools.model.dance import Dance

_KEPT = re.compile(
    r"(?:^|[.;:] |,? and )(?:still )?(?P<what>(?:[^\W\d]|[ -])+?) on (?:counts? )?(?P<first>\d+)"
    r"(?: (?:and|to) (?P<last>\d+))?(?=[.;,]|$| and )",
    re.IGNORECASE,
)
"""A thing and the counts it has: still two steps on 1 and 2."""

CountsKept = tuple[Fraction, Fraction]
"""The count before the first and the last count of what is kept."""


@lru_cache(maxsize=64)
def kept_in_choice(dance: Dance, name: str) -> dict[CountsKept, str]:
    """What the choice of a development keeps over which of its counts, in the author's words."""
    development = dance.developments.get(name)
    choice = dance.choices.get(development.choice or "") if development else None
    found = _KEPT.finditer(choice.what) if choice else ()
    return {
        (Fraction(one["first"]) - 1, Fraction(one["last"] or one["first"])): one["what"].lower()
        for one in found
    }
