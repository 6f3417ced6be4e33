"""A unit in another language than English is left alone by rules that read sentences."""

from __future__ import annotations

from dataclasses import replace

from build_tools.rules.catalogue import all_rules
from build_tools.rules.engine import Outcome, run_rules
from tests.rules.contents import base

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
