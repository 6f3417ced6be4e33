"""An author's answers, read from what was typed. Each refusal says what would do instead."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Mapping

from build_tools.drafting.asked import KINDS, LESSONS, MINUTES, PATTERNS
from build_tools.model.school_years import youngest
from build_tools.model.unit import SchoolYears
from build_tools.schema_check.wording import nearest
from build_tools.shapes.shape import Shape
from build_tools.source.typed.values import meant
from build_tools.views.words.plain_words import listed

NATIONS = ("England", "Northern Ireland", "Scotland", "Wales")
USUAL_KINDS = ("think about",)
"""Whatever a stimulus is, pupils think about it."""
_MOST_YEARS = 6
_MOST_TOPICS = 3
_TITLE = range(3, 61)
_STIMULUS = range(3, 401)


class Refused(ValueError):  # noqa: N818 - it says what happened
    """An answer that cannot be used; the text says what would do instead."""


def title(typed: str) -> str:
    """The title of the unit."""
    return _line(typed, "the title", _TITLE)


def stimulus(typed: str) -> str:
    """What the stimulus is."""
    return _line(typed, "the stimulus", _STIMULUS)


def _line(typed: str, what: str, lengths: range) -> str:
    text = " ".join(typed.split())
    if len(text) not in lengths:
        raise Refused(
            f"{what} has {len(text)} letters and spaces; write {lengths[0]} to {lengths[-1]}"
        )
    if not text.isprintable():
        raise Refused(f"{what} holds a hidden character; type it again")
    return text


def kinds(typed: str) -> tuple[str, ...]:
    """How pupils meet the stimulus: see, hear, touch, do or think about, with commas between."""
    found = _parts(typed)
    for kind in found:
        if kind not in KINDS:
            raise Refused(f"`{kind}` is no way to meet a stimulus; use {listed(KINDS, 'or')}")
    return found or USUAL_KINDS


def years(typed: str) -> tuple[SchoolYears, ...]:
    """School years with their nations, as people say them.

    England:3,4 and Scotland:P4 are read, and so are "Years 5-6", which is taken for England, and
    "England 5 and 6; Wales Year 5".
    """
    found: dict[str, list[str]] = {}
    for nation, numbers in _by_nation(typed):
        for year in _each_year(numbers):
            if youngest(nation, year) is None:
                raise Refused(f"`{year}` is no school year in {nation}; {_such_as(nation)}")
            if year not in found.setdefault(nation, []):
                found[nation].append(year)
    if not found:
        raise Refused("no school year is named; write the nation and its years, as in England:3,4")
    if any(len(numbers) > _MOST_YEARS for numbers in found.values()):
        raise Refused(f"more than {_MOST_YEARS} school years of one nation; name fewer")
    return tuple(SchoolYears(nation, tuple(numbers)) for nation, numbers in found.items())


def _by_nation(typed: str) -> Iterator[tuple[str, str]]:
    """Each nation and what is said of it; England, or Scotland, where none is named."""
    parts = re.split(rf"({'|'.join(NATIONS)})", typed, flags=re.IGNORECASE)
    before, named = parts[0], parts[1:]
    if not named:
        unknown, colon, _ = before.partition(":")
        first = re.match(
            r"\s*(?!year|yr|reception|primary|key|and\b)[A-Za-z]{4,}", before, re.IGNORECASE
        )
        if (colon and unknown.strip()) or first:
            raise _no_nation(first.group() if first and not colon else unknown)
        if before.strip():
            of_scotland = re.search(r"\b(?:[PS]\d|primary)", before, re.IGNORECASE)
            yield ("Scotland" if of_scotland else "England"), before
        return
    if before.strip(" ;,"):
        raise _no_nation(before)
    for nation, numbers in zip(named[::2], named[1::2], strict=True):
        yield next(n for n in NATIONS if n.casefold() == nation.casefold()), numbers


def _each_year(numbers: str) -> Iterator[str]:
    words = re.sub(r"\b(?:key stage|years?|yrs?)\b|\by(?=\d)", " ", numbers, flags=re.IGNORECASE)
    words = re.sub(r"\bprimary\s*(?=\d)", "P", words, flags=re.IGNORECASE)
    words = re.sub(r"\breception\b", "R", words, flags=re.IGNORECASE)
    words = re.sub(r"\s*(?:[-–—]|\bto\b)\s*", "-", words, flags=re.IGNORECASE)
    for part in re.split(r"[\s,;:&+/()]+|\band\b", words):
        span = re.fullmatch(r"([PS]?)(\d{1,2})-([PS]?)(\d{1,2})", part.upper())
        if (
            span
            and span.group(3) in ("", span.group(1))
            and int(span.group(2)) < int(span.group(4))
        ):
            for number in range(int(span.group(2)), int(span.group(4)) + 1):
                yield f"{span.group(1)}{number}"
        elif part.upper() == "R-1" or (part.upper().startswith("R-") and part[2:].isdecimal()):
            yield "R"
            yield from (str(number) for number in range(1, int(part[2:]) + 1))
        elif part:
            yield part.upper()


def _no_nation(typed: str) -> Refused:
    name = " ".join(typed.split()).strip(" ;,:")
    near = nearest(name, NATIONS)
    hint = f"did you mean {near}?" if near else f"use {listed(NATIONS, 'or')}"
    return Refused(f"`{name}` is none of the nations; {hint}")


def _such_as(nation: str) -> str:
    examples = {"Scotland": "Scotland:P4,P5", "Northern Ireland": "Northern Ireland:5,6"}
    return f"write them as in {examples.get(nation, f'{nation}:3,4')}"


def lessons(typed: str) -> int:
    """How many lessons."""
    return _number(typed, "lessons", LESSONS)


def minutes(typed: str) -> int:
    """How long each lesson is, in minutes."""
    return _number(typed, "minutes", MINUTES)


def _number(typed: str, what: str, wanted: range) -> int:
    text = re.sub(rf"\s*{what.removesuffix('s')}s?\Z", "", typed.strip().casefold())
    value = meant(text, Shape("number"), what)
    if not isinstance(value, int) or value not in wanted:
        raise Refused(
            f"`{typed.strip()}` {what}: write a whole number from {wanted[0]} to {wanted[-1]}"
        )
    return value


def pattern(typed: str) -> str:
    """The name of a pattern, or its number in the list."""
    text = typed.strip().rstrip(".)")
    names = list(PATTERNS)
    if text.isdecimal() and 1 <= int(text) <= len(names):
        return names[int(text) - 1]
    if text in PATTERNS:
        return text
    near = nearest(text.replace(" ", "-"), names)
    if near and near == text.casefold().replace(" ", "-"):
        return near
    of_each = [f"{number} ({name})" for number, name in enumerate(names, start=1)]
    hint = f"did you mean {near}?" if near else f"type a number: {listed(of_each, 'or')}"
    raise Refused(f"`{text}` is no pattern; {hint}")


def topics_for(words: str, known: Mapping[str, tuple[str, ...]]) -> tuple[str, ...]:
    """The topics of the bank that `words` name, by themselves or by a near word; best first.

    A word that is near to several topics, as water is, names none of them alone.
    """
    text = _plain(words)
    near = Counter(_plain(one) for also in known.values() for one in also)
    scores: dict[str, int] = {}
    for name, also in known.items():
        hits = sum(f" {_plain(one).strip()} " in text for one in (name.replace("-", " "), *also))
        own = (name.replace("-", " "), *(one for one in also if near[_plain(one)] == 1))
        if hits and any(f" {_plain(one).strip()} " in text for one in own):
            scores[name] = hits
    return tuple(sorted(scores, key=lambda name: (-scores[name], name))[:_MOST_TOPICS])


def _plain(words: str) -> str:
    """Words in small letters without their endings in s, with spaces around."""
    found = re.findall(r"[a-z0-9]+", words.lower())
    return f" {' '.join(w.removesuffix('s') if len(w) > 3 else w for w in found)} "


def _parts(typed: str) -> tuple[str, ...]:
    return tuple(dict.fromkeys(" ".join(p.split()) for p in typed.split(",") if p.strip()))
