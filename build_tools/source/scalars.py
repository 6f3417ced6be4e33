"""What an unquoted word of YAML stands for, and how much one text may hold."""

from __future__ import annotations

import re

MOST_DEPTH = 24
MOST_ENTRIES = 500
"""In one list or map: more than any that is meant, so that no file takes long to check."""
MOST_DIGITS = 9

WORDS: dict[str, bool | None] = {"true": True, "false": False, "null": None, "~": None, "": None}

_WHOLE = re.compile(r"[-+]?(0|[1-9][0-9]*)\Z")
_DECIMAL = re.compile(r"[-+]?(0|[1-9][0-9]*)\.[0-9]+\Z")
_MARKED = re.compile(r"[A-Z][’′]?(?: [A-Z][’′]?){0,11}\Z")
NOT_A_NUMBER = re.compile(r"[-+]?\.(nan|inf)\Z", re.IGNORECASE)


def plain_letters(text: str) -> str:
    """Section letters with straight marks: A B A’ from a word processor is A B A'."""
    if ("’" in text or "′" in text) and _MARKED.match(text):
        return text.replace("’", "'").replace("′", "'")
    return text


def number(text: str) -> str | int | float | None:
    """The number that `text` writes; `text` itself where it writes none, None for an odd one."""
    whole = _WHOLE.match(text)
    if not whole and not _DECIMAL.match(text):
        return None if NOT_A_NUMBER.match(text) else text
    if sum(c.isdigit() for c in text) > MOST_DIGITS:
        return None
    return int(text) if whole else float(text)
