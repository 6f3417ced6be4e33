"""An author's answers, read from what was typed. Each refusal says what would do instead."""

from __future__ import annotations

import re
from collections.abc import Mapping

from build_tools.drafting.asked import KINDS, LESSONS, MINUTES, PATTERNS
from build_tools.model.school_years import youngest
from build_tools.model.unit import SchoolYears
from build_tools.schema_check.wording import nearest
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
    """School years with their nations, such as England:3,4 or England:3,4; Scotland:P4."""
    found: dict[str, list[str]] = {}
    for part in filter(None, (p.strip() for p in typed.split(";"))):
        nation_typed, _, numbers = part.partition(":")
        nation = _nation(nation_typed)
        for year in (y.upper() for y in _parts(numbers)):
            if youngest(nation, year) is None:
                raise Refused(f"`{year}` is no school year in {nation}; {_such_as(nation)}")
            if year not in found.setdefault(nation, []):
                found[nation].append(year)
    if not found:
        raise Refused("no school year is named; write the nation and its years, as in England:3,4")
    if any(len(numbers) > _MOST_YEARS for numbers in found.values()):
        raise Refused(f"more than {_MOST_YEARS} school years of one nation; name fewer")
    return tuple(SchoolYears(nation, tuple(numbers)) for nation, numbers in found.items())


def _nation(typed: str) -> str:
    name = " ".join(typed.split())
    for nation in NATIONS:
        if nation.casefold() == name.casefold():
            return nation
    near = nearest(name, NATIONS)
    hint = f"did you mean {near}?" if near else f"use {listed(NATIONS, 'or')}"
    raise Refused(f"`{name}` is none of the nations; {hint}")


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
    text = typed.strip()
    if not re.fullmatch(r"[0-9]{1,3}", text) or int(text) not in wanted:
        raise Refused(f"`{text}` {what}: write a whole number from {wanted[0]} to {wanted[-1]}")
    return int(text)


def pattern(typed: str) -> str:
    """The name of a pattern, or its number in the list."""
    text = typed.strip()
    names = list(PATTERNS)
    if text.isdecimal() and 1 <= int(text) <= len(names):
        return names[int(text) - 1]
    if text in PATTERNS:
        return text
    near = nearest(text, names)
    hint = f"did you mean {near}?" if near else f"use {listed(names, 'or')}"
    raise Refused(f"`{text}` is no pattern; {hint}")


def topics_for(words: str, known: Mapping[str, tuple[str, ...]]) -> tuple[str, ...]:
    """The topics of the bank that `words` name, by themselves or by a near word; best first."""
    text = _plain(words)
    scores: dict[str, int] = {}
    for name, also in known.items():
        hits = sum(f" {_plain(one).strip()} " in text for one in (name.replace("-", " "), *also))
        if hits:
            scores[name] = hits
    return tuple(sorted(scores, key=lambda name: (-scores[name], name))[:_MOST_TOPICS])


def _plain(words: str) -> str:
    """Words in small letters without their endings in s, with spaces around."""
    found = re.findall(r"[a-z0-9]+", words.lower())
    return f" {' '.join(w.removesuffix('s') if len(w) > 3 else w for w in found)} "


def _parts(typed: str) -> tuple[str, ...]:
    return tuple(dict.fromkeys(" ".join(p.split()) for p in typed.split(",") if p.strip()))
