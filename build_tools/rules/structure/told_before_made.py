"""What is said to be there, to compare or to have been made is made by then.

The story so far tells of earlier lessons; a question that looks back asks about what that lesson
had; `pupils_make` says what there is at the end. A name in them of something that comes later was
right in an earlier plan.

Bad:
    lesson 3 makes C: story_so_far: The class has the fold and the whirl, and the boat alone.
Good:
    story_so_far: The class has the fold and the whirl.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.progress import StepPlace
from build_tools.views.words.devices_said import first_taught, says
from build_tools.views.words.numbered import lessons_said
from build_tools.views.words.parts_said import first_made, parts_said
from build_tools.views.written.questions import asked

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "lesson-numbers-broken")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each line that names something made only after the lesson it tells of."""
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
