"""Taking in a unit that another school packed: looked at first, agreed to, then all or nothing."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from build_tools.packs.reading.walled import Refused
from build_tools.packs.taking_in.arrival import Arrival
from build_tools.packs.taking_in.journal import BusyError, HalfwayError, alone_in, take
from build_tools.packs.taking_in.placing import placing_of
from build_tools.problem import Problem
from build_tools.use_cases.judging import judged

STANDS = "nothing was taken in, and the bank is as it was"


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
    content: Path, file: Path, agreed: Callable[[Arrival], bool]
) -> TakenIn | HereAlready | Declined | NotTakenIn:
    """Verify the pack `file`, ask whether it is `agreed`, and take its unit into `content`.

    Until then nothing is written, and while it is asked no other run takes anything in.
    """
    found = judged(content, file)
    if isinstance(found, Refused):
        return NotTakenIn(f"{file.as_posix()}: refused: {found.why}; {STANDS}", found.problems)
    try:
        with alone_in(content):
            arrival = Arrival(
                found.unit, found.problems, placing_of(content, found.pack), found.pages
            )
            goal = content / arrival.placing.goal
            if arrival.placing.why == "here":
                return HereAlready(goal, arrival)
            if not agreed(arrival):
                return Declined()
            take(content, found.pack.unit_files, arrival.placing)
            return TakenIn(goal)
    except BusyError:
        return NotTakenIn(
            f"another unit is being taken in at this moment; {STANDS}. Try again in a minute"
        )
    except HalfwayError as error:
        return NotTakenIn(
            f"{error}: it is half taken in; mend the disk and run the same command to finish it"
        )
    except OSError as error:
        what = f"{error.filename or content}: {error.strerror}"
        return NotTakenIn(
            f"{what}; {STANDS}. Make room or ask for the right to write there, then run it again"
        )
