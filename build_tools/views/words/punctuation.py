"""Words as they are set: a capital, a stop, quotation marks, figures kept with their nouns."""

from __future__ import annotations

import re

_NUMBERED = re.compile(
    r"(?<=\d) (?=(?:minute|lesson|count|second)s?\b"
    r"|munud\b|gwers\b|cyfrif\b|eiliad\b|o (?:funudau|wersi|gyfrifau|eiliadau)\b)"
)
"""Between a number and what it counts, in English and in Welsh."""


def capital(words: str) -> str:
    """The same words with a capital at their start."""
    return words[:1].upper() + words[1:]


_SMALL_WORDS = (
    "a an the one two three four how who what when where which whether that this these those "
    "each every all both some any your their our its his her no clear sharp still"
)
_OPENERS = frozenset(_SMALL_WORDS.split())


def small(words: str) -> str:
    """The same words inside a sentence: a small word that began one loses its capital.

    A word that could be a name keeps it.
    """
    first = words.split(maxsplit=1)[0] if words.strip() else ""
    return words[:1].lower() + words[1:] if first.lower() in _OPENERS else words


def stopped(words: str) -> str:
    """The same words with a stop at the end, where they have no mark of their own there."""
    return words if words.endswith((".", "?", "!")) else f"{words}."


def sentence(words: str) -> str:
    """The same words as a sentence: a capital at the start, a stop at the end."""
    text = capital(words.strip())
    return text if text.endswith((".", "?", "!", "”", '"', "’")) else f"{text}."


def quoted(words: str) -> str:
    """The same words between quote marks; what they quote themselves has single ones."""
    if '"' not in words and "“" not in words and "”" not in words:
        return f"“{words.strip()}”"
    closed = re.sub(r'(?<=\S)["”]', "’", words.strip())
    inside = re.sub(r'["“]', "‘", closed)
    return f"“{inside}”"


def kept_together(words: str) -> str:
    """The same words with no line break between a number and what it counts."""
    return _NUMBERED.sub("\N{NO-BREAK SPACE}", words)
