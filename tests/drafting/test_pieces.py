"""The pieces a draft is made of: minutes shared out, fields written, answers read."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_tools.drafting import answers
from build_tools.drafting.minutes import MinutesWanted, share_out
from build_tools.model.unit import SchoolYears

steps = st.lists(
    st.builds(
        lambda least, share, more: MinutesWanted(least, share, least + more),
        st.integers(1, 6),
        st.integers(1, 9),
        st.integers(0, 20),
    ),
    min_size=1,
    max_size=10,
)


@given(steps, st.integers(0, 60))
def test_minutes_add_up_and_no_step_is_under_its_least(
    wanted: list[MinutesWanted], more: int
) -> None:
    minutes = sum(w.least for w in wanted) + more
    shared = share_out(minutes, wanted)
    assert sum(shared) == minutes
    assert all(s >= w.least for s, w in zip(shared, wanted, strict=True))
    if more <= sum(w.most - w.least for w in wanted):
        assert all(s <= w.most for s, w in zip(shared, wanted, strict=True))


def test_too_few_minutes_are_refused() -> None:
    with pytest.raises(ValueError, match="need 5 minutes, and there are 4"):
        share_out(4, [MinutesWanted(2, 1, 9), MinutesWanted(3, 1, 9)])


@pytest.mark.parametrize(
    ("typed", "read"),
    [
        ("England:3,4", (SchoolYears("England", ("3", "4")),)),
        ("england: r, 1", (SchoolYears("England", ("R", "1")),)),
        (
            "Scotland:P4; Wales:3;Scotland:p5,P4",
            (SchoolYears("Scotland", ("P4", "P5")), SchoolYears("Wales", ("3",))),
        ),
        ("3,4", (SchoolYears("England", ("3", "4")),)),
        ("Years 5-6", (SchoolYears("England", ("5", "6")),)),
        ("Year 5 and Year 6", (SchoolYears("England", ("5", "6")),)),
        ("England 5 and 6", (SchoolYears("England", ("5", "6")),)),
        ("Reception to 2", (SchoolYears("England", ("R", "1", "2")),)),
        ("P6–P7", (SchoolYears("Scotland", ("P6", "P7")),)),
        ("Scotland, Primary 6", (SchoolYears("Scotland", ("P6",)),)),
        (
            "northern ireland Years 5 to 7; Wales Y4",
            (SchoolYears("Northern Ireland", ("5", "6", "7")), SchoolYears("Wales", ("4",))),
        ),
    ],
)
def test_years_as_they_are_typed(typed: str, read: tuple[SchoolYears, ...]) -> None:
    assert answers.years(typed) == read


@pytest.mark.parametrize(
    ("read", "typed", "said"),
    [
        (answers.years, "Englnd:3", "did you mean England?"),
        (answers.years, "England:12", "`12` is no school year in England"),
        (answers.years, "Scotland:4", "write them as in Scotland:P4,P5"),
        (answers.years, "England:", "no school year is named"),
        (answers.lessons, "9", "whole number from 1 to 8"),
        (answers.lessons, "many", "whole number from 1 to 8"),
        (answers.years, "Mars 5", "none of the nations"),
        (answers.years, "", "no school year is named"),
        (answers.minutes, "19", "whole number from 20 to 90"),
        (answers.pattern, "one-them", "did you mean one-theme?"),
        (answers.pattern, "6", "is no pattern"),
        (answers.kinds, "see, smell", "`smell` is no way"),
        (answers.title, "ab", "2 letters and spaces; write 3 to 60"),
        (answers.title, "a\u200bbcd", "hidden character"),
    ],
)
def test_a_refusal_says_what_would_do(read: Any, typed: str, said: str) -> None:
    with pytest.raises(answers.Refused, match=said.replace("?", r"\?")):
        read(typed)


@pytest.mark.parametrize("typed", ["2", "2.", "one-theme", "One theme"])
def test_a_pattern_goes_by_its_number_too(typed: str) -> None:
    assert answers.pattern(typed) == "one-theme"


@pytest.mark.parametrize("typed", ["6", "six", "6 lessons", "Six lessons"])
def test_a_number_as_people_answer(typed: str) -> None:
    assert answers.lessons(typed) == 6
    assert answers.minutes("45 min") == 45


def test_topics_are_found_by_near_words() -> None:
    known = {"coasts": ("harbour", "tides"), "night": ("dark", "stars"), "bees": ()}
    assert answers.topics_for("Harbours and tides in the dark", known) == ("coasts", "night")
    assert answers.topics_for("Harbourmaster", known) == ()


def test_a_word_near_to_several_topics_names_none_alone() -> None:
    """Found in a trial: dough, of flour and water, was put among seas and oceans."""
    known = {"seas": ("sea", "tides", "water"), "rain": ("clouds", "water")}
    assert answers.topics_for("Bread dough: flour and water", known) == ()
    assert answers.topics_for("Tides, and how the water turns", known) == ("seas",)
