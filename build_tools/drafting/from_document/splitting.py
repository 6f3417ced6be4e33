"""Where in a file a lesson begins and ends."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from build_tools.word_files.blocks import Block, Heading, Table

NUMBERED = re.compile(r"lesson\s+(\d{1,3})\b\s*[:.–-]*\s*", re.IGNORECASE)
"""Lesson 2: The flower that shuts."""


@dataclass(slots=True)
class Stretch:
    """A heading and what stands under it; before the first there is none."""

    heading: str
    inside: list[Block] = field(default_factory=list)
    is_lesson: bool = False

    @property
    def tables(self) -> int:
        """How many tables it holds."""
        return sum(isinstance(one, Table) for one in self.inside)


def stretches(blocks: Sequence[Block]) -> tuple[Stretch, ...]:
    """The file from heading to heading of the level that lessons have; lessons are marked."""
    level, numbered = _level(blocks)
    found = list(_parted(blocks, level))
    for one in found:
        one.is_lesson = bool(
            NUMBERED.match(one.heading) if numbered else one.tables and (one.heading or not level)
        )
    return tuple(found)


def _level(blocks: Sequence[Block]) -> tuple[int, bool]:
    """The level of the lessons' headings, 0 where there is none, and whether they are numbered."""
    headings = [one for one in blocks if isinstance(one, Heading)]
    numbered = [one.level for one in headings if NUMBERED.match(one.text)]
    if numbered:
        return min(numbered), True
    found = 0
    for level in sorted({one.level for one in headings}):
        with_tables = [s for s in _parted(blocks, level) if s.heading and s.tables]
        if not with_tables:
            continue
        several = len(with_tables) > 1 and any(s.tables > 1 for s in with_tables)
        if not found or several:
            found = level
        if len(with_tables) > 1:
            break
    return found, False


def _parted(blocks: Sequence[Block], level: int) -> Iterator[Stretch]:
    here = Stretch("")
    for one in blocks:
        if isinstance(one, Heading) and one.level <= level:
            yield here
            here = Stretch(one.text)
        else:
            here.inside.append(one)
    yield here
