"""Rules on wording read every field in which an author writes words; none is forgotten."""

from __future__ import annotations

import pytest

from build_tools.model.unit import Unit
from build_tools.problem import FieldPath
from build_tools.views.written.unit_text import unit_text
from tests.planted.unit_edits import load
from tests.support.banks import CONTENT
from tests.support.schema_fields import fields_for_words
from tests.support.sound_bank import every_unit

LEFT_OUT = {
    "unit": {
        # names of makers, schools and places, in the words that their owners use
        "publisher",
        "credit",
        "adapted_from.title",
        "adapted_from.publisher",
        "adapted_from.credit",
        "adapted_from.changes",
        "adapted_from.earlier[].title",
        "adapted_from.earlier[].publisher",
        "adapted_from.earlier[].credit",
        "stimulus.items[].by",
        "stimulus.items[].source",
        "subjects[]",
    },
    # names from elsewhere: of subjects, of the unit's own words, and of makers and places
    "lesson": {"steps[].teaches[]", "pictures[].by", "pictures[].source"},
}
"""Fields with words that no rule on wording reads: a new field is read, or stands here with why."""


ADDED: dict[FieldPath, object] = {
    ("read_by",): [
        {
            "role": "dance adviser",
            "edition": "1.0.0",
            "day": "2026-11-20",
            "for": ["truth"],
            "found": "one step was too long",
        }
    ],
    ("space", "who_sits_where"): "along the wall that is not the door's",
    ("tried", "with"): "two classes of Year 4",
    ("tried", "where"): "a school hall",
    ("tried", "changed"): "one step was too long",
    ("safety",): ["The floor is clear."],
    ("allow",): {"half-hall-missing": "the hall is never shared"},
    ("stimulus", "items", 0, "changes"): "cut at the side",
    ("developments", "by-elbow"): {
        "of": "wave", "device": "change of body part", "body_part": "elbow",
    },
    ("developments", "with-nod"): {
        "of": "wave", "device": "embellishment",
        "add": [{"after": 1, "action": {"gesture": 2, "body_part": "head"}}],
    },
    ("sections", "A", "name"): "tide",
    ("sections", "A", "heard"): [{"counts": 8, "sound": "voice", "says": ["rock", "-"]}],
    ("transitions", 0, "heard"): [{"counts": 8, "sound": "voice", "says": ["rock", "-"]}],
}  # fmt: skip
"""Fields that no sound unit fills."""


ADDED_TO_LESSON: dict[FieldPath, object] = {
    ("steps", 0, "place"): "in your own pool",
    ("steps", 0, "facing"): "the sea",
    ("pictures",): [
        {
            "title": "A limpet",
            "by": "The bank",
            "licence": "CC0-1.0",
            "source": "Drawn for it",
            "changes": "cut at the side",
            "file": "media/limpet.svg",
            "text_version": "A shell from above.",
        }
    ],
    ("steps", 0, "you"): "Tap twice as you say freeze.",
}


def full_unit() -> Unit:
    edited = load(CONTENT, "rock-pool")
    for path, value in ADDED.items():
        edited.set(edited.file, path, value)
    for path, value in ADDED_TO_LESSON.items():
        edited.set(f"{edited.file.rpartition('/')[0]}/lesson-1.md", path, value)
    return edited.built(*edited.written())


def alike(path: FieldPath, field: str) -> bool:
    """Whether a place in a unit is one of those that a field of the schema stands for."""
    steps = field.replace("[]", ".[]").split(".")
    return len(steps) == len(path) and all(
        step == "[]" if isinstance(place, int) else step in ("*", place)
        for step, place in zip(steps, path, strict=True)
    )


@pytest.mark.parametrize("kind", ["unit", "lesson"])
def test_every_field_for_words_is_read_or_left_out_by_name(kind: str) -> None:
    read: set[FieldPath] = set()
    for unit in (*every_unit(), full_unit()):
        own, *lessons = unit_text(unit).documents
        for _, texts in [own] if kind == "unit" else lessons:
            read |= {one.path for one in texts}
    fields = fields_for_words(kind)
    assert fields >= LEFT_OUT[kind]
    unread = {field for field in fields if not any(alike(path, field) for path in read)}
    assert unread == LEFT_OUT[kind], (
        "name it in views/written/unit_text.py (a unit's) or views/reading/lesson_text.py "
        "(a lesson's), and write words into it in a sound unit of tests/ or in ADDED"
    )
