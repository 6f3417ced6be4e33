"""A task for a wall: whole sentences, as many together as are read at one look.

A screen ends only at a full stop, a question or an exclamation mark, so that nobody meets half of
an instruction; how large it is written is the page's.
"""

from __future__ import annotations

TOGETHER = 12
"""Words up to which a sentence joins the one before it; common practice, no source."""
_ENDS = (".", "?", "!")
_CLOSING = "\"'”’)"


def wall_lines(text: str) -> tuple[str, ...]:
    """`text` screen by screen; joined with spaces the screens are the text again."""
    screens: list[list[str]] = []
    for sentence in _sentences(text.split()):
        if screens and len(screens[-1]) + len(sentence) <= TOGETHER:
            screens[-1] += sentence
        else:
            screens.append(list(sentence))
    return tuple(" ".join(words) for words in screens)


def _sentences(words: list[str]) -> list[list[str]]:
    found: list[list[str]] = [[]]
    for word in words:
        found[-1].append(word)
        if word.rstrip(_CLOSING).endswith(_ENDS):
            found.append([])
    return [one for one in found if one]
