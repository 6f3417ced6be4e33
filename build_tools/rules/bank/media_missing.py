"""Every picture that a unit names is in its media folder, with its credit in the unit.

A picture that is named and not there leaves a teacher with an empty frame. A picture that is
there and not named travels to other schools with no credit and no licence.

Bad:
    media/boat.svg in the folder
    items: [{title: A paper boat, file: media/boats.svg, …}, …]
Good:
    media/boat.svg in the folder
    items: [{title: A paper boat, file: media/boat.svg, …}, …]
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.schema_check.wording import nearest
from build_tools.views.words.plain_words import listed
from build_tools.views.written.works import works_written

GRADE: Grade = "error"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each file named and not there, and for each there and not named."""
    items = unit.stimulus.items
    for one in works_written(unit):
        item = one.work
        if item.file is None or item.file in unit.media:
            continue
        near = nearest(item.file, unit.media)
        there = listed([f"`{file}`" for file in unit.media]) or "no file"
        yield Finding(
            one.file,
            (*one.path, "file"),
            f"`{item.file}` is not there: the unit's media folder holds {there}",
            f"did you mean `{near}`?" if near else f"put the file into `{item.file}`",
        )
    named = {one.work.file for one in works_written(unit)}
    for path, file in _played(unit):
        if file in named:
            continue
        yield Finding(
            unit.file,
            path,
            f"`{file}` is played, but no item of the stimulus gives its credit and licence",
            f"add an item with `file: {file}`, by whoever made the music and the recording",
        )
    for file in unit.media:
        if file not in named:
            yield Finding(
                unit.file,
                ("stimulus", "items") if items else ("stimulus",),
                f"`{file}` is in the unit's folder, but no item of the stimulus and no picture "
                "of a lesson gives its credit and licence",
                f"add an item with `file: {file}`, or take the file out of the folder",
            )


def _played(unit: Unit) -> Iterator[tuple[tuple[str, ...], str]]:
    """Where each recording that travels with the unit is named, and its file."""
    if unit.dance.sound.file:
        yield ("dance", "sound", "file"), unit.dance.sound.file
    for letter, section in unit.dance.sections.items():
        if section.sound is not unit.dance.sound and section.sound.file:
            yield ("sections", letter, "sound", "file"), section.sound.file
