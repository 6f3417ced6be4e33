"""For whom words in a lesson's notes are: everybody, who sits on a chair, who uses a wheelchair.

It stands before a colon, "Seated:" or "On wheels:", in the words as they come; behind the word in
bold, "**Rise**, sitting:" or "**Rise** (on wheels)"; or in a heading over a list of moves.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Literal

Whom = Literal["seated", "wheels"]

_SEATED = "seated|sitting|sitting down|on a chair|in a chair|chair"
_WHEELS = "on wheels|in a wheelchair|wheels|wheelchair"
_ONE = f"(?:{_SEATED}|{_WHEELS})"
_ANY = rf"{_ONE}(?:(?:,| or|, or| and) {_ONE})?"
_DASHED = rf"(?=[A-Z])(?i:{_ANY})(?=\s+[-–—]\s)"
_NAMED = re.compile(
    rf"(?:\A|(?<=[.;!?])|\b(?=[A-Z]))\s*(?P<whom>(?i:{_ANY})):(?=\s)"
    rf"|(?:\A|(?<=[.;!?]))\s*(?P<dashed>{_DASHED})\s+[-–—](?=\s)",
)
"""With a capital wherever it stands, without one where a sentence or a piece of one begins.

Where a sentence begins with it a dash does for the colon: "Seated - fold over".
"""
_BEHIND_WORD = re.compile(
    rf"\s*(?:,|\N{{EN DASH}}|\N{{EM DASH}}|-)?\s*(?:\((?P<put>{_ANY})\)|(?P<said>{_ANY})(?=\s*:))",
    re.IGNORECASE,
)
_IN_BOLD = re.compile(
    rf"(?P<word>.+?)(?:\s*,\s*|\s+)(?:\((?P<put>{_ANY})\)|(?P<said>{_ANY}))", re.IGNORECASE
)
_FEET = re.compile(r"\b(?:feet|foot|heels?|toes?|soles?|legs?)\b", re.IGNORECASE)
_OF_A_WHEELCHAIR = re.compile(r"\b(?:footrest|footplate|wheel|brake|push-rim)", re.IGNORECASE)
_HEADING = re.compile(rf"#+\s*(?P<whom>{_ANY})\s*[.:]?", re.IGNORECASE)


def ways_said(text: str) -> tuple[str, dict[Whom, str]]:
    """What a text says for everybody, and what it says after each name, for each of the two.

    "The same" on wheels is what a chair does.
    """
    text = text.strip()
    found = list(_NAMED.finditer(text))
    if not found:
        return text, {}
    told = " ".join(text[: found[0].start()].split()).removesuffix(";")
    ends = [*(one.start() for one in found[1:]), len(text)]
    said: dict[Whom, str] = {}
    for one, end in zip(found, ends, strict=True):
        way = " ".join(text[one.end() : end].split()).removesuffix(";")
        for whom in _whom(one["whom"] or one["dashed"]):
            said[whom] = f"{said[whom]} {way}" if whom in said else way
    if said.get("wheels", "").casefold().rstrip(".") == "the same" and "seated" in said:
        said["wheels"] = said["seated"]
    return told, said


def ways_with_a_dash(line: str) -> tuple[str, ...]:
    """The names of ways in a line of the notes that have a dash for their colon."""
    return tuple(one["dashed"] for one in _NAMED.finditer(line) if one["dashed"])


def of_a_chair_alone(way: str | None) -> bool:
    """Whether a way sitting is one for feet on the floor, as a wheelchair has none."""
    return way is not None and bool(_FEET.search(way)) and not _OF_A_WHEELCHAIR.search(way)


def for_whom_in_head(word: str, text: str) -> tuple[str, tuple[Whom, ...], str]:
    """The word in bold, for whom it is said to be, and the text behind both."""
    if inside := _IN_BOLD.fullmatch(word):
        return inside["word"], _whom(inside["put"] or inside["said"]), text
    if behind := _BEHIND_WORD.match(text):
        return word, _whom(behind["put"] or behind["said"]), text[behind.end() :]
    return word, (), text


def for_whom_heading(piece: str) -> tuple[Whom, ...]:
    """For whom a heading says that all under it is; nothing where it says something else."""
    found = _HEADING.fullmatch(piece.strip())
    return _whom(found["whom"]) if found else ()


def said_of_whom(whom: tuple[Whom, ...], text: str, said: Mapping[Whom, str]) -> dict[Whom, str]:
    """The ways of a line that is for `whom` only, with what it says of one of them by name."""
    return {
        one: " ".join(part for part in (text, said.get(one, "")) if part)
        for one in ("seated", "wheels")
        if (one in whom and text) or one in said
    }


def _whom(named: str) -> tuple[Whom, ...]:
    said = named.casefold()
    seated, wheels = (re.search(rf"\b(?:{one})\b", said) is not None for one in (_SEATED, _WHEELS))
    return (*(("seated",) if seated else ()), *(("wheels",) if wheels else ()))
