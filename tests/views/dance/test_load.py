"""What one pupil keeps in mind. The largest motif for each age is common practice, no source."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from build_tools.model.dance import Action, Motif
from build_tools.model.unit import SchoolYears, Unit
from build_tools.views.dance.load import Load, age_of, load_of, new_by_lesson
from tests.support.sound_bank import real_unit

STEP = Action("travel", Fraction(2), "step")
HOP = Action("jump", Fraction(1), "hop")


def for_years(*years: str) -> Unit:
    return replace(real_unit(), years=(SchoolYears("England", years),))


def test_an_action_danced_again_is_kept_in_mind_once() -> None:
    assert load_of((STEP, HOP, STEP, STEP)) == Load(2, Fraction(3))
    assert load_of((STEP, replace(STEP, word="STEP", direction="backwards"))).actions == 1


def test_actions_without_words_differ_in_what_they_are_and_where_they_go() -> None:
    plain = replace(STEP, word=None)
    assert load_of((plain, replace(plain, direction="backwards"))).actions == 2
    assert load_of((plain, replace(plain, dynamics=("strong",)))).actions == 1


@pytest.mark.parametrize(
    ("years", "actions", "counts"),
    [
        (("R",), 4, 8),
        (("1", "2"), 4, 8),
        (("3", "4"), 6, 12),
        (("2", "3"), 6, 12),
        (("5", "6"), 8, 16),
        (("7", "8"), 10, 32),
    ],
)
def test_the_largest_motif_for_an_age(years: tuple[str, ...], actions: int, counts: int) -> None:
    age = age_of(for_years(*years))
    assert age is not None
    assert age.largest == Load(actions, Fraction(counts))


def test_no_known_year_has_no_age() -> None:
    assert age_of(for_years("P3")) is None


def test_each_lesson_of_the_rock_pool_brings_one_motif() -> None:
    found = {new.lesson: new for new in new_by_lesson(real_unit())}
    assert {number: new.load for number, new in found.items()} == {
        1: Load(4, Fraction(8)),
        2: Load(5, Fraction(12)),  # the motif, 4 of 8 counts; and the drift, of 4
        3: Load(4, Fraction(8)),
    }
    assert found[1].names[0] == "wave"


def test_moves_an_earlier_lesson_has_are_not_new() -> None:
    unit = real_unit()
    crab = Motif("crab", "pupils", "waves again", unit.dance.motifs["wave"].actions)
    dance = replace(unit.dance, motifs={**unit.dance.motifs, "crab": crab})
    assert 3 not in {new.lesson for new in new_by_lesson(replace(unit, dance=dance))}
