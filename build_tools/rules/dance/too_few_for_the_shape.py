"""A group has as many dancers as its shape takes.

Two make no diamond and five no square: whoever draws the plan, or stands a class in it, has to
make something up. A square takes four, one in each corner; a diamond four, with others inside it
or along its sides; a circle, a half circle and a V three; and partners who face, or stand back to
back, are an even number. A class has odd groups besides: `groups: {odd: …}` says who dances what.

Bad:
    A: {groups: {size: 5}, start: {formation: small groups, within: square, …}, …}
Good:
    A: {groups: {size: 5}, start: {formation: small groups, within: circle, …}, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Section, Standing
from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding

GRADE: Grade = "question"
SOURCE = (
    "what the words mean (a square has four equal sides, a diamond four points); that a circle, a "
    "half circle and a V need three is common practice, no source"
)

_LEAST = {"circle": 3, "semicircle": 3, "horseshoe": 3, "V": 3, "diamond": 4}
_EVEN = ("face to face", "back to back")
_BETTER = {
    2: "face to face, side by side or one behind another",
    3: "circle, line or one behind another",
}


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each start or end whose shape the size of its groups cannot make."""
    for letter, section in unit.dance.sections.items():
        if section.groups is None or section.groups.size == 1:
            continue
        said: set[str] = set()
        for end, standing in (("start", section.start), ("end", section.end)):
            field, shape = _shape(standing, section)
            if shape is None or shape in said:
                continue
            said.add(shape)
            size = section.groups.size
            if not (lacks := _lacks(shape, size)):
                continue
            yield Finding(
                unit.file,
                ("sections", letter, end, field),
                f"section {letter} has groups of {size}, and at its {end} `{field}: {shape}`, but "
                f"{lacks}",
                f"write a shape that {size} can make, such as "
                f"{_BETTER.get(size, 'circle, line or cluster')}, or another size of groups",
            )


def _shape(standing: Standing, section: Section) -> tuple[str, str | None]:
    """The field that says which shape each group makes, and the shape; None for none."""
    if standing.within is not None:
        return "within", standing.within
    each = standing.columns is not None or standing.groups_apart is not None
    if standing.formation in _LEAST and each and section.groups is not None:
        return "formation", standing.formation
    return "formation", None


def _lacks(shape: str, size: int) -> str | None:
    """Why `size` dancers cannot make the shape, in the reader's words; None where they can."""
    if size < _LEAST.get(shape, 2):
        return f"a {shape} takes {_LEAST[shape]} at least"
    if shape == "square" and size != 4:
        return f"a square takes 4, one in each corner, and {size} stand in no square"
    if shape in _EVEN and size % 2:
        return f"of {size} who stand in pairs, {shape}, one has no partner"
    return None
