"""The groups that a part's words speak of are the groups that dance it.

"Each six makes its diamond", and the fields have fours: pupils go and look for two more, or a four
makes a shape with nobody inside. It is asked of the words of the part itself: where it starts and
ends, its idea and its rules.

Bad:
    A: {groups: {size: 4}, start: {place: "Each six in its own ring", …}, …}
Good:
    A: {groups: {size: 6}, start: {place: "Each six in its own ring", …}, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Section
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.group_sizes import group_sizes
from build_tools.views.words.plain_words import how_many

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each section whose words speak of groups of another size alone."""
    for letter, section in unit.dance.sections.items():
        if section.groups is None or section.returns:
            continue
        said = {one for text in _texts(section) for one in group_sizes(text)}
        sizes = {size for _, size in said}
        if len(sizes) != 1 or section.groups.size in sizes or section.groups.size == 1:
            continue
        if any(len(places) in sizes for places in section.groups.roles.values()):
            continue
        words = min(words for words, _ in said)
        yield Finding(
            unit.file,
            ("sections", letter, "groups", "size"),
            f"section {letter} is danced in groups of {section.groups.size}, but its words say "
            f"`{words}`",
            f"write `size: {next(iter(sizes))}`, or speak of groups of "
            f"{how_many(section.groups.size, 'dancer')}",
        )


def _texts(section: Section) -> Iterator[str]:
    """The words of the part: where it starts and ends, how it starts, its rules and its idea."""
    yield section.idea
    yield from (section.start.place, section.end.place)
    yield from (section.improvised_from or "", *section.improvised_rules)
    yield from (passage.who or "" for passage in section.danced)
