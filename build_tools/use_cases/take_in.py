"""Taking in a unit that another school packed: looked at first, agreed to, then all or nothing."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

from build_tools.checking.check_bank import UnitCheck, check_bank_files, check_together, check_unit
from build_tools.packs.reading.contents import Pack
from build_tools.packs.reading.read import verified
from build_tools.packs.reading.refusal import RefusedError
from build_tools.packs.reading.scratch import laid_out
from build_tools.packs.taking_in.arrival import Arrival
from build_tools.packs.taking_in.journal import BusyError, HalfwayError, alone_in, take
from build_tools.packs.taking_in.placing import placing_of
from build_tools.problem import Problem
from build_tools.source.folder import unit_slugs

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
    looked = _looked_at(content, file)
    if isinstance(looked, NotTakenIn):
        return looked
    pack, check = looked
    if check.unit is None:
        return _refused(file, "its unit cannot be read", check.problems)
    if check.unit.edition != pack.edition:
        told = f"edition {pack.edition}, and the unit in it {check.unit.edition}"
        return _refused(file, f"about.json says {told}")
    try:
        with alone_in(content):
            arrival = Arrival(check.unit, check.problems, placing_of(content, pack))
            goal = content / arrival.placing.goal
            if arrival.placing.why == "here":
                return HereAlready(goal, arrival)
            if not agreed(arrival):
                return Declined()
            take(content, pack.unit_files, arrival.placing)
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


def _looked_at(content: Path, file: Path) -> tuple[Pack, UnitCheck] | NotTakenIn:
    try:
        pack = verified(file)
        return pack, _checked(content, pack)
    except RefusedError as refused:
        return _refused(file, str(refused))


def _refused(file: Path, why: str, problems: tuple[Problem, ...] = ()) -> NotTakenIn:
    return NotTakenIn(f"{file.as_posix()}: refused: {why}; {STANDS}", problems)


def _checked(content: Path, pack: Pack) -> UnitCheck:
    """What the bank's rules say of the unit, read from a folder that is removed again.

    Of the rules for the whole bank those speak that need no other unit's text: whether its topics
    and the units that it names are here.
    """
    files = check_bank_files(content)
    with laid_out(pack) as scratch:
        check = check_unit(scratch, pack.slug, files.grades)
        if check.outline is None:
            return check
        here, _ = unit_slugs(content)
        together = check_together(scratch, files, {*here, pack.slug}, [check.outline])
    # An allowance may be needed among units that were not read here.
    found = [p for p in together.problems if p.rule != "allowance-stale"]
    return replace(check, problems=(*check.problems, *found))
