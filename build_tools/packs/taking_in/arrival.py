"""A unit that has come, before it is taken in: what it is, and where it would go, in words."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from build_tools.checking.report_text import as_text, counted
from build_tools.model.unit import Unit
from build_tools.packs.taking_in.placing import Placing
from build_tools.problem import Problem


@dataclass(frozen=True, slots=True)
class Arrival:
    """A verified unit, what the bank's rules find in it, and where it would go."""

    unit: Unit
    problems: tuple[Problem, ...]
    placing: Placing
    pages: Literal["none", "ours", "other"] = "none"
    """Whether pages came with it, and whether they are those that this bank would draw."""


def arrival_in_words(arrival: Arrival) -> str:
    """Whose unit it is, under which licence, how much, and what the bank's rules find in it."""
    unit, parent = arrival.unit, arrival.unit.adapted_from
    lines = [
        f"{unit.title}, edition {unit.edition} of {unit.issued}",
        f"from {unit.publisher}" + (f", by {unit.credit}" if unit.credit else ""),
        f"licence {unit.licence}",
    ]
    if parent:
        lines.append(
            f"adapted from {parent.title}, edition {parent.edition}, by {parent.publisher}, "
            f"licence {parent.licence}"
        )
    lines.append(f"{len(unit.lessons)} lessons, {len(unit.media)} pictures")
    if arrival.pages == "other":
        lines.append(
            "its pages are not those that this bank draws of such a unit: they are left out, and "
            "the unit is drawn anew; do not open them in the file itself"
        )
    if arrival.problems:
        lines.append(as_text(arrival.problems, ""))
    lines.append(f"the bank's rules find {counted(arrival.problems)}")
    return "\n".join(lines)


def placing_in_words(arrival: Arrival, content: Path) -> str:
    """Where it would go in the folder `content`, and what is there now."""
    placing = arrival.placing
    goal = (content / placing.goal).as_posix()
    if placing.why == "new":
        return f"it would be new here: {goal}"
    if placing.why == "newer" and placing.moved is not None:
        return (
            f"it would take the place of edition {placing.edition_here} in {goal}, which would be "
            f"kept in {(content / placing.moved).as_posix()}"
        )
    what = "an older edition" if placing.why == "older" else "another unit or other words"
    return (
        f"it is {what} under the name {arrival.unit.slug}: the one here, edition "
        f"{placing.edition_here}, stays, and this one would be kept beside it in {goal}"
    )
