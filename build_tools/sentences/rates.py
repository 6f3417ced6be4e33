"""Speeds that a text gives by the second: two taps a second, ten beats in six seconds."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from build_tools.sentences.numbers import number_of

_NUMBER = r"(?:\d{1,3}|[a-z]+)"
_STROKE = (
    r"(?:(?:quick|slow|even|steady|soft|light|drum) )?"
    r"(?:taps?|beats?|claps?|counts?|steps?|strokes?|times)"
)
_THAN = (
    r"(?P<than>\b(?:(?:slower|faster|quicker|under|over|less|more) than|under|over|nearly|almost|"
    r"not quite|just under|just over) )?"
)
_SECOND = r"(?:a|each|every|per|to (?:the|a|each|every)|in (?:a|one|each|every)) second\b"
_FORMS = (
    re.compile(
        rf"\b(?:beat|drum|clock|tempo|music|pulse|loom) (?:is|goes|ticks|beats|plays) "
        rf"(?:a little |a bit |just )?{_THAN}\b(?P<n>{_NUMBER}) {_SECOND}",
        re.IGNORECASE,
    ),
    re.compile(rf"{_THAN}\b(?P<n>{_NUMBER}) {_STROKE} {_SECOND}", re.IGNORECASE),
    re.compile(rf"{_THAN}\b(?P<n>once|twice) {_SECOND}", re.IGNORECASE),
    re.compile(
        rf"{_THAN}\b(?P<n>{_NUMBER}) {_STROKE} in (?P<s>{_NUMBER}) seconds\b", re.IGNORECASE
    ),
    re.compile(
        rf"{_THAN}\b(?P<n>once|(?:one|a) {_STROKE}) every (?P<s>{_NUMBER}) seconds\b",
        re.IGNORECASE,
    ),
    re.compile(
        rf"{_THAN}\b(?P<n>one|each|every|a) (?:count|beat|stroke|tap) (?:takes|lasts) "
        rf"(?P<s>{_NUMBER}) seconds\b",
        re.IGNORECASE,
    ),
    re.compile(
        rf"{_THAN}\b(?P<s>{_NUMBER}) seconds (?:from|between) (?P<n>one) {_STROKE} (?:to|and) the "
        r"next\b",
        re.IGNORECASE,
    ),
)
_MAY_SAY_ONE = re.compile(r"\bseconds\b|\b(?:a|each|every|per|the|one) second\b", re.IGNORECASE)
"""Every text with a speed has this; the second step has not."""
_BEFORE, _AFTER = 80, 60
"""Letters around it in which the whole speed is said."""
_DENIED = re.compile(r"(?:\b(?:not|never|no)|n't)\s+(?:\w+\s+){0,2}$", re.IGNORECASE)
_SLOWER = ("slower", "under", "less", "nearly", "almost", "not", "just under")


@dataclass(frozen=True, slots=True)
class Rate:
    """Strokes in a minute; `side` is -1 for a little under it, 1 for a little over, else 0."""

    in_a_minute: Fraction
    side: int
    said: str


def rates(text: str) -> Iterator[Rate]:
    """Every speed that a text gives by the second and means."""
    end = 0
    for second in _MAY_SAY_ONE.finditer(text):
        if second.start() >= end:
            start, end = max(end, second.start() - _BEFORE), second.end() + _AFTER
            yield from _rates(text[start:end])


def _rates(text: str) -> Iterator[Rate]:
    for form in _FORMS:
        for said in form.finditer(text):
            number, per = _number(said["n"]), _seconds(said)
            if not number or not per or _DENIED.search(text[: said.start()]):
                continue
            than = (said["than"] or "").lower().strip()
            side = 0 if not than else -1 if than.startswith(_SLOWER) else 1
            yield Rate(Fraction(60 * number, per), side, " ".join(said.group().split()))


def _seconds(said: re.Match[str]) -> int | None:
    return _number(said["s"]) if "s" in said.re.groupindex else 1


def _number(word: str) -> int | None:
    first = word.lower().split()[0]
    return 1 if first in ("a", "each", "every") else number_of(first)
