"""Parts that swap in words swap in the score.

"Ones ask and twos answer, then they swap", and the fields let ones ask each time: the chart, the
counts and the voice of the player follow the fields, and half the class never asks. `swap` lets the
same come again with the parts changed over.

Bad:
    whole: {what: [crab, crab-answer], as: question and answer, parts: 2, who: "ones ask, then they swap"}
Good:
    whole: {what: [crab, crab-answer], as: question and answer, parts: 2, who: "ones ask, then they swap", swap: true}
"""  # noqa: E501 - an example stands on one line

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Passage, Section
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import CHANGE_OVER
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name",)
_SWAPS = Saying(
    """
    swap|swaps|swapping !side|place|partner|glance
    @change ~1 over|parts|roles|jobs
    exchange|exchanges|exchanging ~1 parts|roles|jobs|each|every
    take|takes turns
    turn and turn
    the opposite
    every other ~1 time|go
    each|both ~3 both
    each|both ~2 * ~1 once and * ~1 once
    both ~3 to * ~~1 both ~2 to
    =whoever ~4 first ~4 second
    ones ~~4 then ~~3 twos ~~4 then
    other way ~1 round
    then twos|evens|two ~2 ask|asks|lead|leads|begin
    reverse|reversed ~1 roles|parts
    """,
    {"change": "change switch trade"},
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each passage whose words swap the parts and whose fields do not."""
    for letter, section in unit.dance.sections.items():
        if section.counts is None or (section.returns and "danced" not in section.changes):
            continue
        for n, passage in enumerate(section.danced):
            if passage.fit not in CHANGE_OVER or passage.swap:
                continue
            said = _SWAPS.said(passage.who)
            if said is None or _swapped_later(section, n):
                continue
            named = "" if passage.roles else "part "
            each = [f"{named}{part} dances {what}" for what, part in _given(passage)]
            yield Finding(
                unit.file,
                ("sections", letter, "danced", n, "who"),
                f'`who` says "{said.text}", but in the score {listed(each)}'
                f"{_times(passage.times)}, and never the other way",
                "write `swap: true` (it counts twice then), or take the swap out of `who`",
            )


def _times(times: int) -> str:
    return f" all {times} times" if times > 1 else ""


def _swapped_later(section: Section, n: int) -> bool:
    """Whether another passage gives one of the same things to another part."""
    passage = section.danced[n]
    return any(
        what == what_too and part != part_too
        for m, other in enumerate(section.danced)
        if m != n and other.fit == passage.fit
        for what, part in _given(passage)
        for what_too, part_too in _given(other)
    )


def _given(passage: Passage) -> tuple[tuple[str, str], ...]:
    """What each part dances, with the part by its role or its number."""
    parts = passage.roles or tuple(str(n + 1) for n in range(len(passage.what)))
    return tuple(zip(passage.what, parts, strict=False))
