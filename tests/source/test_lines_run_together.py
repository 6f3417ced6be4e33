"""A line of a list that seems to have lost its hyphen is asked about, and never written as one."""

from __future__ import annotations

import pytest

from build_tools.source.front_matter import Document, read_markdown
from build_tools.source.lines_run_together import lines_run_together
from build_tools.source.tidy import NotTidied, Tidied, tidied
from tests.source.said_once.units import LESSON

FILE = "units/boats/lesson-1.md"


def lesson(lines: str) -> bytes:
    assert LESSON.count("collect: [A drum]\n") == 1
    return LESSON.replace("collect: [A drum]\n", f"collect:\n{lines}\n").encode()


def asked(raw: bytes) -> list[int]:
    document = read_markdown(FILE, raw)
    assert isinstance(document, Document), document
    return [one.line for one in lines_run_together(document)]


@pytest.mark.parametrize(
    ("lines", "where"),
    [
        ("  - A drum\n    The poem", [9]),
        ("  - A drum\n    The poem\n    Word cards: rise, fall", [9, 10]),
        ("  - A drum\n  - Word cards: rise\n    The poem", [10]),
    ],
)
def test_two_things_in_one_are_asked_about_and_left_as_they_are(
    lines: str, where: list[int]
) -> None:
    assert asked(lesson(lines)) == where
    made = tidied(FILE, lesson(lines))
    assert isinstance(made, NotTidied)
    assert [one.line for one in made.problems] == where


@pytest.mark.parametrize(
    "lines",
    [
        "  - A drum\n  - The poem",
        "  - A drum that can be heard from the back of the hall, such as the one of\n    Ann",
        "  - The poem of the river and the\n    Sea",
        "  - A drum, or\n    Anything that sounds as dull",
        "  - A drum\n    that is not too loud",
        '  - "A drum\n    The poem"',
        "  - >-\n    A drum\n    The poem",
    ],
)
def test_a_text_that_goes_on_is_let_be(lines: str) -> None:
    assert asked(lesson(lines)) == []
    assert isinstance(tidied(FILE, lesson(lines)), Tidied)
