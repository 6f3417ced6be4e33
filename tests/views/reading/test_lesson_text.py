"""What is written in a lesson, and what of it is printed."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from build_tools.model.build_lesson import build_lesson
from build_tools.model.lesson import Lesson
from build_tools.source.front_matter import Document
from build_tools.views.reading.ease import words
from build_tools.views.reading.lesson_text import FieldText, lesson_words, text_by_field

FIELDS: dict[str, Any] = {
    "lesson": 2,
    "title": "Wind rises",
    "focus": "Make a gust",
    "pupils_make": "A gust of four moves.",
    "minutes": 40,
    "collect": ["A drum", "Two cards"],
    "classroom_first": ["Read the poem."],
    "story_so_far": "We made leaves.",
    "never_did_last": "Make one leaf first.",
    "steps": [
        {
            "phase": "warm-up",
            "does": "Walk and freeze",
            "minutes": 6,
            "grouping": "alone",
            "task": "Walk, then freeze.",
        },
        {
            "phase": "make",
            "does": "Make a gust",
            "minutes": 20,
            "grouping": "pairs",
            "into": "Find a friend near you.",
            "say": "Soft knees.",
            "task": "Make one gust.",
            "ask": [{"question": "What grew?", "answers": ["The jump", "The turn"]}],
            "look_for": "A clear end.",
            "easier": "Use two moves.",
            "harder": "Add a roll.",
            "makes": ["gust"],
            "teaches": ["canon"],
        },
    ],
    "look_and_talk": {
        "who": "half class",
        "at": "One pair",
        "looking_for": "Still ends",
        "end_points": ["still"],
        "questions": [{"question": "Who froze?"}],
        "next": {"seen": "Go on.", "not_yet": "Try again."},
    },
    "change": {"room": "Use the yard."},
    "if": {"stuck": "Start small.", "loud": "Two taps."},
    "not_dancing": "Drum the counts.",
    "safety": ["Check the floor.", "Land softly."],
    "words": {"gust": "a burst of wind"},
}
BY_PATH: dict[tuple[str | int, ...], tuple[str, str]] = {
    ("title",): ("title", "Wind rises"),
    ("collect", 1): ("collect", "Two cards"),
    ("never_did_last",): ("never_did_last", "Make one leaf first."),
    ("steps", 1, "say"): ("say", "Soft knees."),
    ("steps", 1, "ask", 0, "question"): ("question", "What grew?"),
    ("steps", 1, "ask", 0, "answers", 1): ("answers", "The turn"),
    ("steps", 1, "easier"): ("easier", "Use two moves."),
    ("look_and_talk", "questions", 0, "question"): ("question", "Who froze?"),
    ("look_and_talk", "next", "not_yet"): ("not_yet", "Try again."),
    ("change", "room"): ("room", "Use the yard."),
    ("if", "loud"): ("loud", "Two taps."),
    ("safety", 0): ("safety", "Check the floor."),
    ("words", "gust"): ("words", "gust: a burst of wind"),
}
NAMES_AND_CHOICES = {
    "phase",
    "grouping",
    "who",
    "makes",
    "teaches",
    "end_points",
    "lesson",
    "minutes",
}


def lesson() -> Lesson:
    return build_lesson(Document("lesson-2.md", FIELDS, "Notes below.", "", 2))


def leaves(data: Any, path: tuple[str | int, ...] = ()) -> dict[tuple[str | int, ...], str]:
    """Every text of the written fields that is prose, by its path."""
    pairs: list[tuple[str | int, Any]] = []
    if isinstance(data, dict):
        pairs = [(name, value) for name, value in data.items() if name not in NAMES_AND_CHOICES]
    elif isinstance(data, list):
        pairs = list(enumerate(data))
    else:
        return {path: str(data)}
    return {p: text for key, value in pairs for p, text in leaves(value, (*path, key)).items()}


@pytest.mark.parametrize("path", BY_PATH)
def test_a_field_is_found_at_its_path(path: tuple[str | int, ...]) -> None:
    assert FieldText(path, *BY_PATH[path]) in list(text_by_field(lesson()))


def test_every_field_is_there_once_in_the_order_of_the_file() -> None:
    written = leaves(FIELDS)
    found = list(text_by_field(lesson()))
    assert [one.path for one in found] == list(written)
    assert all(one.text.endswith(written[one.path]) for one in found)


def test_printed_words_leave_out_easier_harder_and_notes() -> None:
    printed = lesson_words(lesson())
    assert "Notes" not in printed.text
    assert "Use two moves." not in printed.text
    assert "Add a roll." not in printed.text
    # counted by hand, line by line, in FIELDS
    assert printed.words == 82
    assert printed.words == len(words(printed.text))


def test_a_longer_field_makes_a_longer_print_but_an_easier_one_does_not() -> None:
    before = lesson()
    first = before.steps[0]
    longer = replace(before, steps=(replace(first, say="Heads up."), *before.steps[1:]))
    easier = replace(before, steps=(replace(first, easier="Walk only."), *before.steps[1:]))
    assert lesson_words(longer).words == lesson_words(before).words + 2
    assert lesson_words(easier) == lesson_words(before)


def test_a_lesson_without_the_optional_fields() -> None:
    bare = replace(
        lesson(), look_and_talk=None, story_so_far=None, never_did_last=None, words={}, change={}
    )
    kinds = [one.kind for one in text_by_field(bare)]
    assert "seen" not in kinds
    assert "story_so_far" not in kinds
    assert "not_dancing" in kinds
