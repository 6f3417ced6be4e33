"""What only a person can judge, and what is said of who read a unit for it.

What an adviser reads a unit for is common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace

from build_tools.model.unit import Reading, Unit
from build_tools.shapes.schemas import schema
from build_tools.views.words.signing import ASPECTS, NOBODY, not_read_for, readings_in_words
from tests.support.sound_bank import real_unit

FIRST = Reading("dance adviser of a county service", "1.0.0", "2026-09-01", ("truth",), None)


def read(*readings: Reading, edition: str = "1.0.0") -> Unit:
    return replace(real_unit(), edition=edition, read_by=readings)


def test_the_list_is_the_one_that_units_may_name() -> None:
    one = schema("unit")["properties"]["read_by"]["items"]["properties"]["for"]["items"]
    assert one["enum"] == [aspect.name for aspect in ASPECTS]


def test_who_read_it_for_what_and_when() -> None:
    assert readings_in_words(read(FIRST)) == (
        "Dance adviser of a county service, on 1 September 2026, for truth to the stimulus. Read "
        "at this edition.",
    )


def test_a_reading_of_another_edition_says_so() -> None:
    (said,) = readings_in_words(read(FIRST, edition="3.0.0"))
    assert said.endswith("Read at 1.0.0; this is 3.0.0.")


def test_the_last_reading_is_said_first_with_what_was_found() -> None:
    later = Reading(
        "class teacher", "1.0.0", "2026-10-02", ("clarity", "safety"), "Lesson 2 is full"
    )
    first, second = readings_in_words(read(FIRST, later))
    assert first == (
        "Class teacher, on 2 October 2026, for words for who has never taught dance and safety. "
        "Read at this edition. What they found: Lesson 2 is full."
    )
    assert second.startswith("Dance adviser of a county service, ")


def test_where_nobody_read_it_that_is_said() -> None:
    assert readings_in_words(read()) == (NOBODY,)
    assert len(not_read_for(read())) == len(ASPECTS)


def test_what_was_read_at_another_edition_is_to_be_read_again() -> None:
    assert "truth to the stimulus" not in not_read_for(read(FIRST))
    assert "truth to the stimulus" in not_read_for(read(FIRST, edition="1.0.1"))
