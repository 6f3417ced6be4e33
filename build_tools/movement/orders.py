"""The order of sections that an option puts into words: "A, D, B, C: the thread breaks early"."""

from __future__ import annotations

import re

_ORDER = re.compile(r"\b[A-Z](?:(?:\s*,\s*|\s+|\s*,?\s+(?:then|and)\s+)[A-Z]\b)+")
_LETTER = re.compile(r"\b[A-Z]\b")


def order_in(option: str) -> tuple[str, ...]:
    """The letters of the first row of two or more in `option`; empty where there is none."""
    found = _ORDER.search(option)
    return tuple(_LETTER.findall(found.group())) if found else ()
