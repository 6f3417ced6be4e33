"""Forms read off the letters, against published patterns."""

from __future__ import annotations

import re
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.movement.forms import (
    is_binary,
    is_cumulative,
    is_palindrome,
    is_rondo,
    is_ternary,
    name,
    returns_to_start,
)
from tests.movement.strategies import PUBLISHED

letters = st.text(alphabet="ABCD", min_size=1, max_size=11)


@pytest.mark.parametrize("row", PUBLISHED["forms"]["rows"], ids=lambda row: row["form"])
def test_published_forms(row: dict[str, Any]) -> None:
    form = row["form"]
    assert is_binary(form) == row["binary"]
    assert is_ternary(form) == row["ternary"]
    assert is_rondo(form) == row["rondo"]
    assert returns_to_start(form) == row["returns"]


@pytest.mark.parametrize(
    ("form", "said"),
    [
        ("A", "one section"),
        ("AB", "two contrasting sections (binary)"),
        ("ABA", "there and back (ternary)"),
        ("ABACA", "coming back between every two (rondo)"),
        ("ABCDA", "a chain that comes back to the start"),
        ("ABCD", "one section after another (chain)"),
        ("ABCBA", "the same forwards and backwards (arch)"),
        ("AABABC", "growing by one section each time (cumulative)"),
        ("AABB", "sections that come back in their own order"),
    ],
)
def test_names(form: str, said: str) -> None:
    """Names: NSW HSC dance and Ontario 2010; arch and chain: common practice, no source."""
    assert name(form) == said


def test_accumulation_of_sections() -> None:
    """Marchant, composition tools, Washington University in St Louis: 1, 12, 123, 1234."""
    assert is_cumulative("AABABCABCD")
    assert not is_cumulative("AABABCABC")
    assert not is_cumulative("A")


@given(letters)
def test_a_rondo_comes_back_after_every_episode(form: str) -> None:
    first = form[0]
    pattern = rf"{first}([^{first}]{first}){{2,}}"
    several = len(set(form)) > 2
    assert is_rondo(form) == (bool(re.fullmatch(pattern, form)) and several)


@given(letters)
def test_ternary_and_arch_are_the_same_backwards(form: str) -> None:
    if is_ternary(form) or is_palindrome(form):
        assert form == form[::-1]
    assert not (is_rondo(form) and returns_to_start(form))


@given(letters)
def test_only_the_pattern_of_letters_counts(form: str) -> None:
    renamed = form.translate(str.maketrans("ABCD", "QRST"))
    assert name(renamed) == name(form)
