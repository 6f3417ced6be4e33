"""Who dances what, when: parts over counts.

Strict canon of n parts, each `after` counts behind the one before, over a phrase of L counts
lasts L + (n - 1) x after. Sources disagree on whether parts must overlap (Ontario Arts Curriculum
2010: they do; NSW Creative Arts K-6: one after the other is enough); both are allowed here.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction

from build_tools.model.dance import Passage
from build_tools.movement.not_danceable import NotDanceable

CHANGE_OVER = ("question and answer", "side by side")
"""Where each part has a thing of its own, and so can change over."""
CANONS = ("canon", "canon in turn", "canon together", "canon to one ending")


@dataclass(frozen=True, slots=True)
class PartSpan:
    """One part dancing one thing from `start` to `end`, in counts; parts count from 1."""

    part: int
    what: str
    start: Fraction
    end: Fraction


def left_unsaid(passage: Passage) -> str | None:
    """What a passage does not say but needs to, in the reader's words, or None."""
    if passage.fit in CANONS and not passage.parts:
        return f"a {passage.fit} needs `parts`: how many parts the dancers are in"
    if passage.fit in ("canon", "canon to one ending") and passage.after is None:
        return f"a {passage.fit} needs `after`: how many counts after the part before each starts"
    if passage.fit in CHANGE_OVER and len(passage.what) < 2:
        return f"{passage.fit} needs two things or more in `what`, one for each part"
    return None


def parts_in(passage: Passage) -> int:
    """How many parts the dancers are in."""
    if passage.fit in CHANGE_OVER:
        return passage.parts or len(passage.what)
    return passage.parts or 1


def passage_counts(passage: Passage, lengths: Mapping[str, Fraction]) -> Fraction:
    """How many counts the passage lasts: its latest finish."""
    return latest(part_spans(passage, lengths))


def latest(spans: Iterable[PartSpan]) -> Fraction:
    """The latest finish of all, in counts."""
    return max((span.end for span in spans), default=Fraction(0))


def part_spans(passage: Passage, lengths: Mapping[str, Fraction]) -> tuple[PartSpan, ...]:
    """Every part's spans, from the start of the passage; `lengths` in counts by name.

    Raises NotDanceable where `left_unsaid` finds something, KeyError for an unknown name.
    """
    if why := left_unsaid(passage):
        raise NotDanceable(why)
    phrase = [(name, lengths[name]) for name in passage.what]
    long = sum((length for _, length in phrase), Fraction(0)) * passage.times
    count = parts_in(passage)
    if passage.fit in CHANGE_OVER:
        return _changing_over(passage, phrase)
    delay = {
        "canon": passage.after or Fraction(0),
        "canon in turn": long,
        "canon to one ending": passage.after or Fraction(0),
    }.get(passage.fit, Fraction(0))
    spans = tuple(
        span
        for n in range(count)
        for span in _one_part(
            n + 1,
            _turned(phrase, n) if passage.fit == "canon together" else phrase,
            passage.times,
            n * delay,
        )
    )
    if passage.fit != "canon to one ending":
        return spans
    return tuple(s for s in (_cut(span, long) for span in spans) if s is not None)


def _changing_over(passage: Passage, phrase: list[tuple[str, Fraction]]) -> tuple[PartSpan, ...]:
    """Each part its own thing, and where they swap, again until each part has danced each."""
    spans: list[PartSpan] = []
    for turn in range(len(phrase) if passage.swap else 1):
        start = latest(spans)
        dancer = [(n + turn) % len(phrase) + 1 for n in range(len(phrase))]
        if passage.fit == "question and answer":
            spans += _in_turn(phrase, dancer, passage.times, start)
            continue
        for part, one in zip(dancer, phrase, strict=True):
            spans += _one_part(part, [one], passage.times, start)
    return tuple(spans)


def _one_part(
    part: int, phrase: list[tuple[str, Fraction]], times: int, start: Fraction
) -> list[PartSpan]:
    spans = []
    for _ in range(times):
        for name, length in phrase:
            spans.append(PartSpan(part, name, start, start + length))
            start += length
    return spans


def _in_turn(
    phrase: list[tuple[str, Fraction]], dancer: list[int], times: int, start: Fraction
) -> list[PartSpan]:
    spans = []
    for _ in range(times):
        for part, (name, length) in zip(dancer, phrase, strict=True):
            spans.append(PartSpan(part, name, start, start + length))
            start += length
    return spans


def _turned(phrase: list[tuple[str, Fraction]], n: int) -> list[tuple[str, Fraction]]:
    """The phrase entered at a later place: 2 3 1 for the second part."""
    n %= len(phrase)
    return phrase[n:] + phrase[:n]


def _cut(span: PartSpan, end: Fraction) -> PartSpan | None:
    """A span cut short at `end`, where all finish together; None where nothing is left."""
    if span.start >= end:
        return None
    return PartSpan(span.part, span.what, span.start, min(span.end, end))
