"""What a rule says can be understood by who wrote the line: numbers, and what is meant by a word.

Common practice, no source: each of these was told in words that misled an adviser in a trial.
"""

from __future__ import annotations

import pytest

from build_tools.sentences.never import kind_of, never
from tests.rules.cases import HERE, read_cases
from tests.rules.contents import findings, laid_over_base, with_needs


def told(family: str, rule: str, case: str) -> str:
    (found,) = [one for one in read_cases(HERE / family / f"{rule}.yml") if one.name == case]
    said = findings(laid_over_base(found), with_needs(rule))
    return "; ".join(one.message for by, one in said if by.name == rule)


def test_no_safety_line_is_not_one_that_says_too_little() -> None:
    case = "no line of safety anywhere"
    assert told("safety", "floor-check-missing", case).startswith("no line under `safety` of this")
    assert told("safety", "deference-missing", case).startswith("no line under `safety`")


def test_words_fewer_than_counts_are_counted() -> None:
    said = told("dance", "words-off-their-counts", "a word a count early")
    assert said.endswith("; there are 4 words for 8 counts"), said


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("Hold wrists and pull against each other.", "pulling one another"),
        ("Dance in your socks.", "socks without shoes"),
        ("Drop on to your knees.", "a drop or a stiff landing on knees, hands or bottom"),
        ("Roll over on to your neck.", "weight on a head, a neck or a back"),
        ("Carry your partner across.", "lifting, carrying or climbing on one another"),
    ],
)
def test_what_is_never_asked_is_named(text: str, kind: str) -> None:
    found = never(text)
    assert found is not None
    assert kind_of(found) == kind
