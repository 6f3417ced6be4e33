"""Turning an old and a new value into a sentence."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

MOST_WORDS = 14
_MANY = re.compile(
    r"the (least |school |end )?(actions|counts|minutes|points|questions|subjects|topics|words"
    r"|years)\b"
)


def as_words(value: Any) -> str:
    """A value in a sentence: texts in quote marks and cut short, lists joined by commas."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, str):
        return f"“{cut(value)}”"
    if isinstance(value, Mapping):
        return ", ".join(f"{name.replace('_', ' ')} {plain(v)}" for name, v in value.items())
    return plain(value)


def plain(value: Any) -> str:
    """A value without quote marks."""
    if isinstance(value, list):
        joint = "; " if any(isinstance(one, Mapping) for one in value) else ", "
        return joint.join(plain(one).strip("()") for one in value) or "nothing"
    if isinstance(value, Mapping):
        return f"({as_words(value)})"
    return (
        cut(value)
        if isinstance(value, str)
        else as_words(value)
        if isinstance(value, bool)
        else str(value)
    )


def cut(text: str) -> str:
    """A text cut after some words."""
    words = text.split()
    return " ".join(words[:MOST_WORDS]) + (" …" if len(words) > MOST_WORDS else "")


def changed(where: str, label: str, old: Any, new: Any) -> str:
    """What happened to a field: it came, it went, it grew, it was reworded or is another now."""
    are, were = ("are", "were") if _MANY.match(label) else ("is", "was")
    if old is None:
        return f"{where}: {label} {were} added: {as_words(new)}"
    if new is None:
        return f"{where}: {label} {were} taken out"
    if isinstance(old, str) and isinstance(new, str):
        if " " in old.strip() and " " in new.strip():
            return f"{where}: {label} {were} reworded: {as_words(new)}"
        return f"{where}: {label} {are} now {as_words(new)}, not {as_words(old)}"
    if is_number(old) and is_number(new):
        return f"{where}: {label} went from {old} to {new}"
    return f"{where}: {label} {are} now {as_words(new)}"


def minutes(where: str, old: int, new: int) -> str:
    """A length in minutes that changed."""
    by = abs(new - old)
    more = "longer" if new > old else "shorter"
    return f"{where} is {by} minute{'' if by == 1 else 's'} {more} ({old} to {new})"


def is_number(value: Any) -> bool:
    """Whether a value is a number, and not yes or no."""
    return isinstance(value, int | float) and not isinstance(value, bool)
