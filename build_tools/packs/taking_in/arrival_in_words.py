"""A unit that has come, before it is taken in: what it is, and where it would go, in words."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from build_tools.checking.report_text import as_text, counted, one_line
from build_tools.model.unit import Unit
from build_tools.packs.taking_in.placing import Placing, same_name
from build_tools.problem import Problem

_MOST_SHOWN = 100
"""Lines of one kind; whoever needs more takes the unit in and runs `check` or `compare`."""


@dataclass(frozen=True, slots=True)
class Arrival:
    """A verified unit, what the bank's rules find in it, and where it would go."""

    unit: Unit
    problems: tuple[Problem, ...]
    placing: Placing
    own: str
    """What this bank is called."""
    pages: Literal["none", "ours", "other"] = "none"
    """Whether pages came with it, and whether they are those that this bank would draw."""
    other_words: tuple[str, ...] = ()
    """Files that came with it and do not say what the unit says, as this bank would write them."""
    differs: tuple[str, ...] = ()
    """What differs from the unit of its name that is here, a sentence each."""
    stops: tuple[str, ...] = ()
    """Why nothing of the bank could be published with it among the units, a sentence each."""


def arrival_in_words(arrival: Arrival) -> str:
    """Whose unit it is, under which licence, how much, and what the bank's rules find in it."""
    unit, parent = arrival.unit, arrival.unit.adapted_from
    lines = [
        f"{unit.title}, edition {unit.edition} of {unit.issued}",
        f"from {unit.publisher}" + (f", by {unit.credit}" if unit.credit else ""),
        _proof(arrival),
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
    if arrival.other_words:
        lines.append(
            f"{', '.join(arrival.other_words)}: not as this bank would write it of such a unit, so "
            "it is left out; what the unit itself says holds"
        )
    lines = [one_line(line) for line in lines]
    if arrival.problems:
        lines.append(as_text(arrival.problems[:_MOST_SHOWN], ""))
    lines.append(f"the bank's rules find {counted(arrival.problems)}")
    return "\n".join(lines)


def placing_in_words(arrival: Arrival, content: Path) -> str:
    """Where it would go in the folder `content`, what is there now, and how the two differ."""
    lines = [_goes(arrival, content)]
    if arrival.differs and arrival.placing.why != "here":
        shown = arrival.differs[:_MOST_SHOWN]
        lines += ["beside the one here:", *(f"  {one_line(one)}" for one in shown)]
        if len(arrival.differs) > len(shown):
            lines.append(f"  and {len(arrival.differs) - len(shown)} more")
    return "\n".join(lines)


def stops_in_words(arrival: Arrival) -> str:
    """Why nothing of the bank could be published with it."""
    return "\n".join(map(one_line, arrival.stops[:_MOST_SHOWN]))


def _proof(arrival: Arrival) -> str:
    if same_name(arrival.unit.publisher, arrival.own):
        return "that is the name of this bank, and nothing proves that the pack is yours"
    return "so the pack says, and nothing proves it"


def _goes(arrival: Arrival, content: Path) -> str:
    placing = arrival.placing
    goal = (content / placing.goal).as_posix()
    if placing.why == "new":
        return f"it would be new here: {goal}"
    if placing.why == "newer" and placing.moved is not None:
        return (
            f"it would take the place of edition {placing.edition_here} in {goal}, which would be "
            f"kept in {(content / placing.moved).as_posix()}"
        )
    if placing.why == "yours":
        what = "it says that it is a later edition of a unit written here"
    else:
        older = placing.why == "older"
        what = "it is an older edition" if older else "it is another unit or other words"
        what += f" under the name {arrival.unit.slug}"
    return (
        f"{what}: the one here, edition {placing.edition_here}, stays, and this one would be kept "
        f"beside it in {goal}"
    )
