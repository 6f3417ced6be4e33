"""A unit of format 1 in format 2: what is certain is rewritten, and nothing else is touched."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.upgrading.parts_in_words import SaidParts, counted_out, said_parts
from build_tools.upgrading.upgrade import upgraded

CRABS = """---
# a unit of ours
format: 1   # the first
sections:
  B:
    start: {{formation: pairs, facing: partner}}
    danced:{danced}
motifs: {{}}   # none yet
---
Notes: format: 1 stays here.
"""
ONE = (
    "{what: [ask, answer], as: question and answer, parts: 2, "
    "who: partner one asks and partner two answers}"
)
TWO = ONE.replace("one asks and partner two", "two asks and partner one")
SWAPPED = SaidParts(("twos", "ones"), partners=False, swaps=True)
ROWS = SaidParts(("odds", "evens"), partners=False, swaps=False)
THREE = "{what: [ask], as: unison}"


def crabs(*lines: str, after: str = "") -> str:
    return CRABS.format(danced="".join(f"\n      - {line}{after}" for line in lines))


def test_two_lines_with_their_parts_swapped_become_one() -> None:
    made = upgraded(crabs(f"{ONE}  # slowly", TWO, f"{THREE}   # as in lesson 2"))
    merged = ONE.replace("answer, parts", "answer, roles: [ones, twos], swap: true, parts")
    expected = crabs(f"{merged}  # slowly", f"{THREE}   # as in lesson 2")
    groups = "groups: {size: 2, roles: {ones: [1], twos: [2]}}\n    danced:"
    expected = expected.replace("format: 1   #", "format: 2   #").replace("danced:", groups)
    assert made.text == expected
    assert made.left == []


def test_blocks_and_their_comments_are_kept() -> None:
    old = crabs(
        "what: [ask, answer]\n        as: side by side  # at once\n        parts: 2",
        "what: [answer, ask]\n        as: side by side\n        parts: 2",
    )
    made = upgraded(old)
    assert "as: side by side  # at once\n        swap: true\n        parts: 2\nmotifs" in made.text


def test_a_comment_between_is_never_lost() -> None:
    made = upgraded(crabs(ONE, TWO, after="  # slowly"))
    assert made.text.count("# slowly") == 2
    assert "swap" not in made.text
    assert any("a comment stands there" in line for line in made.left)


@pytest.mark.parametrize(
    ("second", "why"),
    [
        (TWO.replace("[ask, answer]", "[answer, ask]"), "both turned is the same again"),
        (TWO.replace("parts: 2", "parts: 2, times: 2"), "another number of times"),
        (ONE, "the same parts"),
        (TWO.replace("partner two asks and partner one answers", "whoever likes"), "any words"),
    ],
)
def test_lines_that_are_no_swap_stay_two(second: str, why: str) -> None:
    made = upgraded(crabs(ONE, second))
    assert "swap: true" not in made.text, why
    assert made.text.count("- {what") == 2


def test_words_that_may_mean_several_things_are_left_to_their_author() -> None:
    made = upgraded(crabs("{what: [ask], as: canon, parts: 3, after: 4, who: three rows}"))
    assert made.text.count("format: 2") == 1
    assert "groups" not in made.text
    assert made.left == [
        "section B, line 1 of `danced`, says who dances its 3 parts in words (`three rows`): "
        "write `roles`"
    ]


def test_how_many_dance_together_is_never_guessed() -> None:
    odds = ONE.replace("partner one", "odd numbers").replace("partner two", "even numbers")
    made = upgraded(crabs(odds))
    assert "groups" not in made.text
    assert "`roles: [odds, evens]`" in made.left[0]
    row = "{what: [ask], as: canon, parts: 4, after: 2, who: 'numbers 1, 2, 3 and 4 along the row'}"
    made = upgraded(crabs(odds, row))
    assert "groups: {size: 4, roles: {odds: [1, 3], evens: [2, 4]}}" in made.text
    assert made.left == []


def test_a_swap_that_words_speak_of_is_left_to_their_author() -> None:
    made = upgraded(crabs(ONE.replace("answers}", "answers; then they swap}")))
    assert "roles: [ones, twos]" in made.text
    assert any("write `swap: true` if it is danced again so" in line for line in made.left)


@given(st.sampled_from(["\n", "\r\n"]), st.lists(st.sampled_from([ONE, TWO, THREE]), min_size=1))
def test_a_second_time_changes_nothing_and_lines_keep_their_breaks(
    newline: str, lines: list[str]
) -> None:
    made = upgraded(crabs(*lines).replace("\n", newline))
    assert upgraded(made.text).text == made.text
    assert made.text.count("\n") == made.text.count(newline)
    # nothing is lost but the second lines of pairs that swap
    assert made.text.count("- {what") == len(lines) - made.text.count("swap: true")


@pytest.mark.parametrize(
    ("who", "said"),
    [
        ("partner one asks and partner two answers", SaidParts(("ones", "twos"), True, False)),
        ("twos are water and ones hold on, then they swap", SWAPPED),
        ("odd numbers in order, even numbers rewinding", ROWS),
        ("ones, then twos, then ones", None),
        ("ones and evens", None),
        ("ones dance, all others and twos watch", None),
        ("everyone", None),
        (None, None),
    ],
)  # fmt: skip
def test_roles_are_read_only_where_there_is_no_doubt(
    who: str | None, said: SaidParts | None
) -> None:
    assert said_parts(who) == said


@pytest.mark.parametrize(
    ("who", "many"),
    [
        ("dancers 1, 2, 3 and 4, one after another", 4),
        ("numbers 1, 2 and 3", 3),
        ("one, two, three, four: each begins when the one before is still", 4),
        ("four, three, two, one", None),
        ("one by one", None),
        ("everyone", None),
        (None, None),
    ],
)
def test_who_is_counted_out_from_one(who: str | None, many: int | None) -> None:
    assert counted_out(who) == many
