"""One thing that texts may say in many wordings, known by a pattern.

Stems are what makes it quick: a text that holds none of them is not looked at any further.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property

_NOT = re.compile(
    r"\b(?:no|not|never|nobody|none|without|don't|nor|avoid|rather than"
    r"|(?:instead|place) of)\b(?:\W+\w+){0,3}\W*$"
)
_SENTENCE_END = re.compile(r"[.;:!?\n]")


@dataclass(frozen=True)
class Wording:
    """A pattern for texts in small letters, and stems of which each match holds at least one."""

    stems: tuple[str, ...]
    verbose: str

    @cached_property
    def pattern(self) -> re.Pattern[str]:
        """The pattern, made ready when a text first holds a stem; whole words only."""
        return re.compile(rf"\b(?:{self.verbose})\b", re.VERBOSE)

    def in_it(self, lower: str) -> bool:
        """Whether the text says it."""
        return self.might_be_in(lower) and bool(self.pattern.search(lower))

    def might_be_in(self, lower: str) -> bool:
        """Whether the text holds a stem; a plain loop, since it runs for every field there is."""
        for stem in self.stems:  # noqa: SIM110
            if stem in lower:
                return True
        return False

    def in_any(self, lowers: Iterable[str]) -> bool:
        """Whether one of the texts says it."""
        return any(self.in_it(lower) for lower in lowers)

    def asked(self, lower: str) -> str | None:
        """The first words that say it and are not ruled out, as in "nobody crawls"."""
        if not self.might_be_in(lower):
            return None
        for match in self.pattern.finditer(lower):
            before = _SENTENCE_END.split(lower[: match.start()])[-1]
            if not _NOT.search(before):
                return match.group().strip()
        return None


def wording(stems: str, pattern: str) -> Wording:
    """A wording from its stems, with a slash between, and its pattern: whole words, verbose."""
    return Wording(tuple(stems.split("/")), pattern)


def lowered(text: str) -> str:
    """A text as the patterns expect it: small letters, straight apostrophes."""
    return text.lower().replace("’", "'")
