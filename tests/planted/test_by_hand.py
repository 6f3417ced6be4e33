"""Of the faults that advisers planted by reading alone, as many are told at their line as before.

Two people wrote a set each without having read the rules; the third, forty faults that an exacting
adviser found in the units as they were, was planted by the author of the rules for them. The shares
are those reached; a rule may add to them, and none may take from them. Every sixth fault is planted
in the usual run, and all in the long one.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import pytest

from tests.planted.planted_by_hand import Answer, answers, content_of, rate, read_faults

SETS = Path(__file__).parent / "by_hand"
REACHED = {"set_a": (0.96, 0.67), "set_b": (0.68, 0.64), "set_c": (1.0, 1.0)}
"""By set, the least share told at the line of faults in fields, and of those with text."""
OF_A_SIXTH = {"set_a": (1.0, 0.56), "set_b": (0.66, 0.56), "set_c": (1.0, 1.0)}
"""The same of every sixth fault."""


def told(name: str, every: int) -> Sequence[Answer]:
    path = SETS / f"{name}.json"
    return answers(read_faults(path)[::every], content_of(path))


@pytest.mark.parametrize(
    "name", ["set_a", pytest.param("set_b", marks=pytest.mark.thorough), "set_c"]
)
def test_a_sixth_is_told_at_the_line(name: str) -> None:
    given = told(name, 6)
    fields, with_text = OF_A_SIXTH[name]
    assert rate(given, "fields") >= fields
    assert rate(given, "both", "text") >= with_text


@pytest.mark.thorough
@pytest.mark.parametrize("name", sorted(REACHED))
def test_as_many_as_before_are_told_at_the_line(name: str) -> None:
    given = told(name, 1)
    fields, with_text = REACHED[name]
    assert rate(given, "fields") >= fields
    assert rate(given, "both", "text") >= with_text
