"""Everything in a unit that somebody made: what the dance starts from, and pictures of lessons."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from build_tools.model.unit import Unit
from build_tools.model.work import Work
from build_tools.problem import FieldPath


@dataclass(frozen=True, slots=True)
class Written:
    """A work, and where it is written: in which file, at which field."""

    file: str
    path: FieldPath
    work: Work


def works_written(unit: Unit) -> Iterator[Written]:
    """Each work with its place: those of the stimulus, then those of the lessons in their order."""
    for n, work in enumerate(unit.stimulus.items):
        yield Written(unit.file, ("stimulus", "items", n), work)
    for lesson in unit.lessons:
        for n, work in enumerate(lesson.pictures):
            yield Written(lesson.file, ("pictures", n), work)


def works(unit: Unit) -> tuple[Work, ...]:
    """Each work once, though several lessons show it."""
    return tuple(dict.fromkeys(one.work for one in works_written(unit)))
