"""A unit in another language than English is left alone by rules that read sentences."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import fields, is_dataclass, replace
from typing import Any

import pytest

from build_tools.model.unit import Unit
from build_tools.rules.catalogue import all_rules
from build_tools.rules.engine import Outcome, run_rules
from tests.page_words.written_by_authors import listed_words
from tests.rules.contents import base
from tests.support.sound_bank import every_unit

RULE = "no-part-for-not-dancing"


def outcome(language: str, allow: dict[str, str] | None = None) -> Outcome:
    unit = base().units()[0]
    lessons = tuple(replace(one, not_dancing="Yn cadw curiad.") for one in unit.lessons)
    return run_rules(
        replace(unit, language=language, lessons=lessons, allow=allow or {}), all_rules()
    )


def test_sentences_in_english_are_read() -> None:
    assert RULE in {rule.name for rule, _ in outcome("en-GB").found}


def test_sentences_in_welsh_are_not() -> None:
    found = {rule.name for rule, _ in outcome("cy").found}
    assert found == {"text-in-another-language"}
    assert outcome("cy").skipped == 0


def test_what_is_allowed_of_them_is_not_stale() -> None:
    assert outcome("cy", {RULE: "The class speaks Welsh."}).stale == []


def _in_other_words(part: Any, fixed: frozenset[str]) -> Any:
    """The same unit with every word that its author chose in no language; figures stay."""
    if isinstance(part, str):
        return part if part in fixed or not _SENTENCE.search(part) else _moved_on(part)
    if isinstance(part, tuple):
        return tuple(_in_other_words(one, fixed) for one in part)
    if isinstance(part, Mapping):
        return {name: _in_other_words(one, fixed) for name, one in part.items()}
    if is_dataclass(part) and not isinstance(part, type):
        kept = {one.name: getattr(part, one.name) for one in fields(part) if one.init}
        return replace(
            part,
            **{
                name: one if name in _NO_WORDS else _in_other_words(one, fixed)
                for name, one in kept.items()
            },
        )
    return part


_NO_WORDS = frozenset(
    {"file", "language", "licence", "slug", "title", "publisher", "subjects", "topics"}
)
_SENTENCE = re.compile(r"[^\W\d_]{2,} |[.?!]$")
_NO_FAULT_OF_THEIRS = {
    "text-in-another-language": "it is the note that says so",
    "acknowledgement-missing": "it knows the licence's name in English and in Welsh alone",
    "looks-like-personal-data": "what looks like a name does so in any language",
    "lesson-over-two-sides": "other letters are wider",
}


_NEXT = str.maketrans(
    {
        one: letters[(n + 2) % len(letters)]
        for letters in ("aeiou", "AEIOU", "bcdfghjklmnpqrstvwxz", "BCDFGHJKLMNPQRSTVWXZ")
        for n, one in enumerate(letters)
    }
)


def _moved_on(text: str) -> str:
    """Each letter is the next but one of its kind, so that no word of English is left.

    A letter alone names a section.
    """
    return re.sub(r"[^\W\d_]{2,}", lambda word: word[0].translate(_NEXT), text)


@pytest.mark.parametrize("unit", every_unit(), ids=lambda unit: str(unit.slug))
def test_no_rule_accuses_words_that_it_cannot_read(unit: Unit) -> None:
    """So each rule that reads English says so (`READS`), and is not asked elsewhere."""
    fixed = frozenset(listed_words())
    strange = replace(_in_other_words(unit, fixed), language="cy")
    found = {rule.name for rule, _ in run_rules(unit, all_rules()).found}
    of_strange = {rule.name for rule, _ in run_rules(strange, all_rules()).found}
    assert of_strange - found <= {*_NO_FAULT_OF_THEIRS}
