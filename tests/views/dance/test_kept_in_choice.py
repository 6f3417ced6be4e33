"""What a choice keeps of the moves that pupils vary is told as kept, not as changed."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from build_tools.pages.pieces.motif_drawn import motif_drawn
from build_tools.views.dance.kept_in_choice import kept_in_choice
from tests.support.sound_bank import unit_named


@pytest.mark.parametrize(
    ("what", "kept"),
    [
        ("The device; still two steps on 1 and 2, and a quarter turn right on 7 and 8",
         {(0, 2): "two steps", (6, 8): "a quarter turn right"}),
        ("Two steps on 1 and 2; a gesture and a stillness, either way round, on 3 to 6",
         {(0, 2): "two steps"}),
        ("The order. A clap on count 4", {(3, 4): "a clap"}),
        ("How each pupil goes on from lesson 2", {}),
        ("Any four verbs", {}),
    ],
)  # fmt: skip
def test_what_a_choice_keeps_is_read_with_its_counts(
    what: str, kept: dict[tuple[int, int], str]
) -> None:
    dance = unit_named("leaving").dance
    choices = {**dance.choices, "verb-order": replace(dance.choices["verb-order"], what=what)}
    found = kept_in_choice(replace(dance, choices=choices), "our-phrase")
    assert found == {(Fraction(a), Fraction(b)): said for (a, b), said in kept.items()}


def test_steps_that_no_choice_changes_are_not_changed_as_pupils_choose() -> None:
    """An adviser read "Leave, changed as pupils choose" of two steps that safety hangs on."""
    dance = unit_named("leaving").dance
    for name in ("our-phrase", "first-change", "second-change"):
        first, second, _, last = motif_drawn(dance, name).picture.words
        assert first == "Counts 1 to 2: Leave: two steps, in the way chosen."
        assert second == "Counts 3 to 4: Mark, changed as pupils choose."
        assert last == "Counts 7 to 8: Take: a quarter turn right, in the way chosen."
