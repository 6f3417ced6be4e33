"""What a file says of whose it is: the lines that the page writes of edition and licence."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from build_tools.views.words.licences import (
    LICENCES,
    licence_in_words,
    licence_name,
    may_be_changed,
)
from build_tools.word_files.blocks import Block, Paragraph

_EDITION = re.compile(
    r"Edition (?P<edition>(?:0|[1-9]\d{0,3})(?:\.(?:0|[1-9]\d{0,3})){2}), issued by "
    r"(?P<publisher>.{1,400}) on \d{1,2} [A-Z][a-z]+ \d{4}\.(?: Written by (?P<credit>.{1,400})\.)?"
)
_FREE = re.compile(r"Free to share(?: and change|, unchanged,) under (?P<licence>.+)\.")


@dataclass(frozen=True, slots=True)
class RightsFound:
    """Whose unit a file was made from, which edition, and its licence."""

    edition: str
    publisher: str
    credit: str | None
    licence: str

    @property
    def may_be_changed(self) -> bool:
        """Whether its licence lets a changed copy be shared."""
        return may_be_changed(self.licence)

    @property
    def called(self) -> str:
        """The licence as people say it."""
        return licence_name(self.licence)


def rights_found(blocks: Iterable[Block]) -> RightsFound | None:
    """The rights that the file's own lines say; None where it says none, as most files."""
    edition: re.Match[str] | None = None
    licence: str | None = None
    for one in blocks:
        if isinstance(one, Paragraph):
            edition = edition or _EDITION.fullmatch(one.text)
            licence = licence or _licence(one.text)
    if edition is None or licence is None:
        return None
    return RightsFound(edition["edition"], edition["publisher"], edition["credit"], licence)


def _licence(text: str) -> str | None:
    found = _FREE.fullmatch(text)
    return next(
        (one for one in LICENCES if found and licence_in_words(one) == found["licence"]), None
    )
