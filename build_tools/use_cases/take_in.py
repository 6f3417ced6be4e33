"""Taking in a unit that another school packed: looked at first, agreed to, then all or nothing."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Literal

from build_tools.checking.check_bank import check_bank_files, errors_together
from build_tools.checking.quick_check import quick_outlines
from build_tools.disk.places import PROJECT
from build_tools.packs.reading.walled import Refused
from build_tools.packs.taking_in.arrival_in_words import Arrival, stops_in_words
from build_tools.packs.taking_in.journal import (
    BusyError,
    HalfwayError,
    OutsideError,
    alone_in,
    take,
)
from build_tools.packs.taking_in.placing import UNITS, Placing, placing_of
from build_tools.packs.taking_in.provenance import Provenance, noted
from build_tools.problem import Problem
from build_tools.source.folder import unit_slugs
from build_tools.use_cases.check import kept_file
from build_tools.use_cases.judging_packs import Judged, judged

STANDS = "nothing was taken in, and the bank is as it was"
Answer = Literal["no", "yes", "instead", "unasked"]
"""Whether it goes where its placing says, or in the place of a unit that was written here; unasked
where nobody looked: then it goes where its placing says, unless nothing could be published with it.
"""


@dataclass(frozen=True, slots=True)
class TakenIn:
    """The unit is in the folder `goal`."""

    goal: Path


@dataclass(frozen=True, slots=True)
class HereAlready:
    """These very files are in the folder `goal`."""

    goal: Path
    arrival: Arrival


@dataclass(frozen=True, slots=True)
class NotTakenIn:
    """Why not, in a sentence, and the problems of a unit that cannot be read."""

    reason: str
    problems: tuple[Problem, ...] = ()


@dataclass(frozen=True, slots=True)
class Declined:
    """Somebody looked at it and said no."""


def take_in(
    content: Path, file: Path, today: date, agreed: Callable[[Arrival], Answer]
) -> TakenIn | HereAlready | Declined | NotTakenIn:
    """Verify the pack `file`, ask whether it is `agreed`, and take its unit into `content`.

    Until then nothing is written, and while it is asked no other run takes anything in. `today`
    is noted beside it.
    """
    found = judged(content, file)
    if isinstance(found, Refused):
        return NotTakenIn(f"{file.as_posix()}: refused: {found.why}; {STANDS}", found.problems)
    try:
        with alone_in(content):
            return _taken(content, file, today, found, agreed)
    except BusyError:
        return NotTakenIn(
            f"another unit is being taken in at this moment; {STANDS}. Try again in a minute"
        )
    except OutsideError as error:
        return NotTakenIn(f"{error}; {STANDS}. Put a folder in its place, then run it again")
    except HalfwayError as error:
        return NotTakenIn(
            f"{error}: it is half taken in; mend the disk and run the same command to finish it"
        )
    except OSError as error:
        what = f"{error.filename or content}: {error.strerror}"
        return NotTakenIn(
            f"{what}; {STANDS}. Make room or ask for the right to write there, then run it again"
        )


def arrival_of(content: Path, found: Judged) -> Arrival:
    """What has come, and what would become of it in the bank at `content` as it is now."""
    placing = placing_of(content, found.pack, found.bank)
    among_units = any(one.goal.startswith(f"{UNITS}/") for one in _ways(placing))
    return Arrival(
        found.unit,
        found.problems,
        placing,
        found.bank,
        found.pages,
        found.other_words,
        found.differs,
        _stops(content, found) if among_units and placing.why != "here" else (),
    )


def _taken(
    content: Path,
    file: Path,
    today: date,
    found: Judged,
    agreed: Callable[[Arrival], Answer],
) -> TakenIn | HereAlready | Declined | NotTakenIn:
    arrival = arrival_of(content, found)
    placing = arrival.placing
    if placing.why == "here":
        return HereAlready(content / placing.goal, arrival)
    answer = agreed(arrival)
    if answer == "no":
        return Declined()
    if answer == "instead" and placing.instead is not None:
        placing = placing.instead
    if answer == "unasked" and arrival.stops and placing.goal.startswith(f"{UNITS}/"):
        return NotTakenIn(
            f"{stops_in_words(arrival)}\nwith it among the units nothing of the bank could be "
            f"published; {STANDS}. Ask for one that is mended, or look at it without --yes"
        )
    pack, unit = found.pack, found.unit
    came = Provenance(file.name, pack.sha512, unit.publisher, unit.edition, today)
    take(content, noted(pack.unit_files, came), placing)
    return TakenIn(content / placing.goal)


def _ways(placing: Placing) -> tuple[Placing, ...]:
    return (placing,) if placing.instead is None else (placing, placing.instead)


def _stops(content: Path, found: Judged) -> tuple[str, ...]:
    """The errors that the bank would have with it among the units, and has not now."""
    if found.unit.draft:
        return ()
    own = [f"{p.file}: {p.message}" for p in found.problems if p.severity == "error"]
    if own:
        return tuple(own)
    files, (slugs, _) = check_bank_files(content), unit_slugs(content)
    before = quick_outlines(content, kept_file(PROJECT, content))
    others = [one for one in before if one.slug != found.pack.slug]
    now = errors_together(files, slugs, before)
    then = errors_together(files, {*slugs, found.pack.slug}, [*others, found.outline])
    return tuple(sorted(then - now))
