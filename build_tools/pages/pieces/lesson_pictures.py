"""The pictures of one lesson as its pages show them."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.lesson import Lesson
from build_tools.views.words.unit_in_words import item_credit


@dataclass(frozen=True, slots=True)
class LessonPicture:
    """One picture."""

    title: str
    """What it is called."""
    src: str
    """Its file, relative to the page."""
    shows: str
    """What it shows, in words."""
    credit: str
    """Who made it, where it comes from, and its licence."""


def lesson_pictures(lesson: Lesson) -> tuple[LessonPicture, ...]:
    """Every picture of the lesson, in order."""
    return tuple(
        LessonPicture(
            title=one.title,
            src=one.file or "",
            shows=" ".join((one.text_version or one.title).split()),
            credit=item_credit(one),
        )
        for one in lesson.pictures
    )
