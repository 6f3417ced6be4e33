"""The order of sections that an option puts into words: "A, D, B, C: the thread breaks early"."""

from __future__ import annotations

import re

from build_tools.movement.letters import straight

_ORDER = re.compile(r"[A-Z]['’′]?(?:(?:,? (?:then |and )?|,)[A-Z]['’′]?)+")
_LETTER = re.compile(r"[A-Z]['’′]?")


def order_in(option: str) -> tuple[str, ...]:
    """The letters that an option puts in order, before any colon; empty where it does not."""
    said = option.partition(":")[0].strip()
    return tuple(map(straight, _LETTER.findall(said))) if _ORDER.fullmatch(said) else ()
