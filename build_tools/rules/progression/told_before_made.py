"""What is said to be there, to compare or to have been made is made by then.

The story so far tells of earlier lessons; a question that looks back asks about what that lesson
had; `pupils_make` says what there is at the end, and the unit's notes what each lesson makes. A
name in them of something that comes later was right in an earlier plan, and so is a device in a
question to pupils who learn it later.

Bad:
    lesson 2: story_so_far: The class has made part A and part C.
Good:
    lesson 2: story_so_far: The class has made part A.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import StepPlace
from build_tools.views.reading.lesson_text import FieldText
from build_tools.views.words.devices_said import first_taught, says
from build_tools.views.words.numbered import lessons_said
from build_tools.views.words.parts_said import first_made, parts_said
from build_tools.views.written.questions import asked
from build_tools.views.written.unit_text import place_of

GRADE: Grade = "question"
SOURCE = "common practice, no source"
_OF_A_LESSON = re.compile(r"\bLesson [^.!?\n]*")
NEEDS = ("unknown-name", "name-used-twice", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that names something made only after the lesson it tells of."""
    yield from _in_lessons(unit)
    yield from _asked_too_soon(unit)
    yield from _in_notes(unit)


def _in_lessons(unit: Unit) -> Iterator[Finding]:
    for lesson in unit.lessons:
        for path, text, by in _told(lesson):
            for said, place in _named(unit, text):
                if place.lesson <= by:
                    continue
                yield Finding(
                    lesson.file,
                    path,
                    f"`{said}` is named as there by the end of lesson {by}, but it first comes in "
                    f"{place}",
                    "name what there is by then, or look at which lesson the line belongs to",
                )
                break


def _asked_too_soon(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each question with a device that a later lesson teaches."""
    taught = first_taught(unit)
    for lesson in unit.lessons:
        for one in asked(lesson):
            for device, place in taught.items():
                looks_back = one.question.looks_back_to or lessons_said(one.text)
                if looks_back or place.lesson <= lesson.number:
                    continue
                if says(device, one.question.question):
                    yield Finding(
                        lesson.file,
                        one.path,
                        f"the question uses `{device}`, which pupils first learn in {place}",
                        "say it in plain words, or ask it once it has been taught",
                    )


def _in_notes(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each sentence of the unit's notes that puts something too early."""
    for sentence in _OF_A_LESSON.findall(unit.notes):
        lessons = lessons_said(sentence)
        if len(lessons) != 1:
            continue
        for said, place in _named(unit, sentence):
            if place.lesson > lessons[0]:
                yield Finding(
                    unit.file,
                    place_of(FieldText((), "notes", unit.notes), sentence),
                    f"the notes put `{said}` in lesson {lessons[0]}, but it first comes in {place}",
                    "name the lesson in which it is made",
                )
                break


def _told(lesson: Lesson) -> Iterator[tuple[FieldPath, str, int]]:
    """Each line that tells of what is there, and the lesson by whose end it is."""
    if lesson.story_so_far:
        yield ("story_so_far",), lesson.story_so_far, lesson.number - 1
    yield ("pupils_make",), lesson.pupils_make, lesson.number
    for one in asked(lesson):
        back = one.question.looks_back_to
        if back is None:
            back = min(lessons_said(one.text), default=None)
        if back is not None:
            yield one.path, one.question.question, back


def _named(unit: Unit, text: str) -> Iterator[tuple[str, StepPlace]]:
    """The parts and the devices that a text names, and where each is made or taught."""
    for one in parts_said(unit, text):
        if made := first_made(unit, one.parts):
            yield one.said, made
    for device, place in first_taught(unit).items():
        if says(device, text):
            yield device, place
