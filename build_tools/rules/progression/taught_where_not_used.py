"""A device is taught in a lesson that uses it.

A word for a way of dancing is learned by dancing that way. Taught in a lesson that has nothing of
it, it is a word for nothing, and where it is used nobody has it.

Bad:
    sections: {B: {danced: [{what: [gust], as: canon, parts: 4, after: 4}], …}}
    a lesson that makes B: teaches: [question and answer]
Good:
    sections: {B: {danced: [{what: [gust], as: canon, parts: 4, after: 4}], …}}
    a lesson that makes B: teaches: [canon]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance
from build_tools.model.lesson import Lesson
from build_tools.model.unit import Unit
from build_tools.movement.canon_and_unison import CANONS
from build_tools.movement.devices import DEVICES
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.views.dance.when_made import held, names_in
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
SOURCE = "common practice, no source"
NEEDS = ("unknown-name", "name-used-twice", "development-does-not-work")

_FITS = ("unison", *CANONS, "question and answer", "side by side")


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each device taught in a lesson that makes and dances nothing by it."""
    for lesson in unit.lessons:
        used = _used(unit.dance, lesson)
        if not used:
            continue  # a lesson that names nothing gives nothing to go by
        for n, step in enumerate(lesson.steps):
            for at, word in enumerate(step.teaches):
                device = word.casefold()
                if device not in (*DEVICES, *_FITS) or device in used:
                    continue
                yield Finding(
                    lesson.file,
                    ("steps", n, "teaches", at),
                    f"lesson {lesson.number} teaches {word}, but nothing in it is made or danced "
                    f"that way: it has {listed(sorted(used))}",
                    f"teach {word} where it is used, or write the device that this step uses",
                )


def _used(dance: Dance, lesson: Lesson) -> set[str]:
    """The devices and ways of fitting together in what a lesson makes, joins, dances and shows."""
    names = {name for step in lesson.steps for name in names_in(step)}
    inside = held(dance, tuple(names))
    found = {dance.developments[name].device for name in inside if name in dance.developments}
    found |= {r for n in inside if n in dance.developments and (r := _related(dance, n))}
    for section in dance.sections.values():
        for passage in section.danced:
            if section.letter in inside or not inside.isdisjoint(passage.what):
                found.add(passage.fit)
                found |= {"canon"} if passage.fit in CANONS else set()
    return found


def _related(dance: Dance, name: str) -> str | None:
    return dance.developments[name].relationship
