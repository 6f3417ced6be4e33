"""What a teacher does when something goes wrong, a line each, the same on the page and the card."""

from __future__ import annotations

from build_tools.model.lesson import Lesson
from build_tools.pages.pieces.labelled import Labelled
from build_tools.views.lesson.lesson_wording import trouble_in_words


def trouble_lines(lesson: Lesson) -> tuple[Labelled, ...]:
    """One line for each thing that can go wrong."""
    return tuple(Labelled(label, words) for label, words in trouble_in_words(lesson))
