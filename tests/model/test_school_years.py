"""Ages in school years.

Northern Ireland: The Education (Northern Ireland) Order 2006 and CCEA, NI Curriculum Primary, 2007
(Years 1 and 2 are ages 4 to 6). England: the National Curriculum framework, 2014, section 3 (key
stage 1 is ages 5 to 7, Years 1 and 2; key stage 2 is 7 to 11, Years 3 to 6). Scotland and Wales:
from memory.
"""

from __future__ import annotations

import pytest

from build_tools.model.school_years import ages, in_words, youngest
from build_tools.model.unit import SchoolYears


@pytest.mark.parametrize(
    ("nation", "year", "age"),
    [
        ("England", "R", 4),
        ("England", "1", 5),
        ("England", "3", 7),
        ("England", "6", 10),
        ("Wales", "R", 4),
        ("Wales", "2", 6),
        ("Northern Ireland", "1", 4),
        ("Northern Ireland", "2", 5),
        ("Northern Ireland", "7", 10),
        ("Northern Ireland", "R", None),
        ("Scotland", "P1", 5),
        ("Scotland", "P7", 11),
        ("Scotland", "S1", 12),
        ("Scotland", "3", None),
        ("Scotland", "R", None),
        ("England", "P4", None),
        ("England", "10", None),
    ],
)
def test_the_youngest_age(nation: str, year: str, age: int | None) -> None:
    assert youngest(nation, year) == age


def test_ages_of_several_years() -> None:
    assert ages([SchoolYears("England", ("3", "4"))]) == (7, 9)
    assert ages([SchoolYears("England", ("4",)), SchoolYears("Scotland", ("P4", "P5"))]) == (8, 10)
    assert ages([]) is None
    assert ages([SchoolYears("Scotland", ("3",))]) is None


@pytest.mark.parametrize(
    ("years", "words"),
    [
        (SchoolYears("England", ("3", "4")), "Years 3 and 4 (England)"),
        (SchoolYears("England", ("3",)), "Year 3 (England)"),
        (SchoolYears("Wales", ("3", "4", "5")), "Years 3, 4 and 5 (Wales)"),
        (SchoolYears("England", ("R", "1")), "Reception and Year 1 (England)"),
        (SchoolYears("Scotland", ("P4", "P5")), "P4 and P5 (Scotland)"),
        (SchoolYears("Scotland", ("P4",)), "P4 (Scotland)"),
    ],
)
def test_years_in_words(years: SchoolYears, words: str) -> None:
    assert in_words(years) == words
