"""A word, a number or a code as it is meant: "Explore" is explore, "6 min" is 6.

Nothing is made of what could mean two things; it is given back as it was typed, and the schema
says what is wanted there.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from build_tools.shapes.shape import Shape
from build_tools.source.file_names import plain_picture_name
from build_tools.source.scalars import WORDS, number, plain_letters
from build_tools.source.typed.said_plainly import name_said, number_said, word_said

_NUMBERS = [
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
    "twenty",
]
_UNITS = {
    "minutes": r"m|min|mins|minute|minutes",
    "least": r"m|min|mins|minute|minutes",
    "counts": r"count|counts|beat|beats",
    "seconds": r"s|sec|secs|second|seconds",
    "tempo": r"bpm|beats a minute|beats per minute",
    "steps": r"step|steps",
    **dict.fromkeys(
        ("apart", "groups_apart", "in_all", "front", "back", "left", "right"),
        r"step|steps",
    ),
    "parts": r"part|parts",
    "times": r"times",
}
"""What people write behind a number, by the name of its field; elsewhere nothing is taken off."""
_BEFORE = {
    "lesson": r"lesson",
    "looks_back_to": r"lesson",
    "years": r"years?|y|yr|primary",
    "edition": r"edition|v",
}
_MONTHS = [
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
]
_YES, _NO = {"yes", "true", "y"}, {"no", "false", "n"}
_PERHAPS_OTHER = 12
"""A day up to this could be a month as well, in another country's order."""


def meant(typed: str, shape: Shape, field: str, *, quoted: bool = False) -> Any:
    """What `typed` stands for in the place of `shape`; `field` is the name of its field."""
    if shape.takes == "text":
        return plain_letters(typed)
    if shape.takes == "word":
        return _word(typed, shape)
    if shape.takes == "number":
        return _number(typed, shape, field)
    if shape.takes == "yes or no":
        low = typed.casefold()
        return True if low in _YES else False if low in _NO else as_written(typed, quoted=quoted)
    if shape.takes == "code":
        return name_said(typed, field) or _code(typed, shape.pattern)
    return as_written(typed, quoted=quoted)


def as_written(typed: str, *, quoted: bool) -> Any:
    """What YAML makes of a bare word; a number that is none stays the words that were typed."""
    if quoted:
        return plain_letters(typed)
    if typed in WORDS:
        return WORDS[typed]
    value = number(typed)
    if value is None:
        return typed
    return plain_letters(value) if isinstance(value, str) else value


def _word(typed: str, shape: Shape) -> Any:
    if typed in shape.words:
        return typed
    value = as_written(typed, quoted=False)
    if value in shape.words:
        return value
    plain = _plain(typed)
    near = [word for word in shape.words if isinstance(word, str) and _plain(word) == plain]
    if len(near) == 1:
        return near[0]
    return value if isinstance(value, int) else word_said(typed, shape.words) or typed


def _plain(word: str) -> str:
    parts = re.split(r"[\s_–—-]+", word.casefold().replace("&", " and ").strip(" .,;"))
    return "".join(parts)


def _number(typed: str, shape: Shape, field: str) -> Any:
    value = as_written(typed, quoted=False)
    if not isinstance(value, str):
        return value
    if shape.pattern and re.search(shape.pattern, value):
        return value
    bare = _bare(number_said(value, field) or value, field)
    if bare.isdecimal() and bare.isascii() and len(bare) <= 3 and not bare.startswith("0"):
        return int(bare)
    if bare in _NUMBERS:
        return _NUMBERS.index(bare) + 1
    for candidate in (_range(bare), bare.upper(), "R" if bare == "reception" else ""):
        if candidate and shape.pattern and re.search(shape.pattern, candidate):
            return candidate
    return value


def _bare(typed: str, field: str) -> str:
    """The number without the words round it that only say what is counted."""
    low = " ".join(typed.casefold().split()).rstrip(".")
    if field == "years" and re.match(r"(primary|p) ?\d\Z", low):
        return f"p{low[-1]}"
    if field in _BEFORE:
        low = re.sub(rf"^(?:{_BEFORE[field]})(?:\s+|(?=\d))", "", low)
    if field in _UNITS:
        low = re.sub(rf"(?<=[\w/])\s*\b(?:{_UNITS[field]})\Z|(?<=\d)(?:{_UNITS[field]})\Z", "", low)
    return low


def _range(bare: str) -> str:
    return re.sub(r"\s*(?:[–—-]|to)\s*", " to ", bare)


def _code(typed: str, pattern: str) -> Any:
    straight = plain_letters(typed)
    if re.search(pattern, straight):
        return straight
    for candidate in _candidates(typed):
        if re.search(pattern, candidate):
            return candidate
    return straight


def _candidates(typed: str) -> Iterator[str]:
    """What a name, letters in order, an edition, a day or a language tag may be meant as."""
    words = " ".join(typed.split()).strip(" .,;")
    if re.fullmatch(r"[A-Z][’'′]?(?:[\s,;>–—-]*[A-Z][’'′]?)*", words):
        yield " ".join(f"{a}'" if b else a for a, b in re.findall(r"([A-Z])([’'′]?)", words))
    if found := re.fullmatch(r"(?:edition |v\.? ?)?(\d+)(?:\.(\d+))?(?:\.(\d+))?", words.lower()):
        yield ".".join(part or "0" for part in found.groups())
    if day := _day(words.lower()):
        yield day
    if tag := re.fullmatch(r"([A-Za-z]{2,3})[-_]([A-Za-z]{2})", words):
        yield f"{tag.group(1).lower()}-{tag.group(2).upper()}"
    if "." in words and (picture := plain_picture_name(re.split(r"[/\\]", words)[-1])):
        yield f"media/{picture}"
    if re.fullmatch(r"[\w -]+", words, re.ASCII):
        yield re.sub(r"[\s_-]+", "-", words.lower()).strip("-")


def _day(words: str) -> str:
    if found := re.fullmatch(r"(\d{4})[/. ](\d{1,2})[/. ](\d{1,2})", words):
        year, month, day = map(int, found.groups())
        return f"{year}-{month:02}-{day:02}"
    if found := re.fullmatch(r"(\d{1,2})[/. -](\d{1,2})[/. -](\d{4})", words):
        day, month, year = map(int, found.groups())
        return f"{year}-{month:02}-{day:02}" if day > _PERHAPS_OTHER else ""
    found = re.fullmatch(r"(\d{1,2})(?:st|nd|rd|th)? ([a-z]{3,9})\.?,? (\d{4})", words)
    months = [m for m in _MONTHS if found and m.startswith(found.group(2))]
    if found and len(months) == 1:
        return f"{found.group(3)}-{_MONTHS.index(months[0]) + 1:02}-{int(found.group(1)):02}"
    return ""
