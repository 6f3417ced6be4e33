"""`take-in`: a unit that another school packed, looked at first and asked about."""

from __future__ import annotations

import sys
from dataclasses import replace
from pathlib import Path

from build_tools.checking.check_bank import UnitCheck, check_bank_files, check_together, check_unit
from build_tools.checking.report_text import as_text, counted
from build_tools.model.unit import Unit
from build_tools.packs.reading.contents import Pack
from build_tools.packs.reading.read import verified
from build_tools.packs.reading.refusal import RefusedError
from build_tools.packs.reading.scratch import laid_out
from build_tools.packs.taking_in.journal import BusyError, HalfwayError, alone_in, take
from build_tools.packs.taking_in.placing import Placing, placing_of
from build_tools.source.folder import unit_slugs

_STAND = "nothing was taken in, and the bank is as it was"


def run(content: Path, file: Path, *, yes: bool = False) -> int:
    """Verify the pack `file`, show what it is, ask unless `yes`, and take it in.

    Returns 0 when it is in or was already, and when the answer is no; 1 when it is refused or the
    disk refuses.
    """
    try:
        pack = verified(file)
        check = _checked(content, pack)
    except RefusedError as refused:
        print(f"{file.as_posix()}: refused: {refused}; {_STAND}")
        return 1
    if check.unit is None:
        print(as_text(check.problems, f"{file.name}: "))
        print(f"{file.as_posix()}: refused: its unit cannot be read; {_STAND}")
        return 1
    if check.unit.edition != pack.edition:
        told = f"edition {pack.edition}, and the unit in it {check.unit.edition}"
        print(f"{file.as_posix()}: refused: about.json says {told}; {_STAND}")
        return 1
    try:
        with alone_in(content):
            return _asked(content, pack, check, check.unit, yes)
    except BusyError:
        print(f"another unit is being taken in at this moment; {_STAND}. Try again in a minute")
    except HalfwayError as error:
        print(f"{error}: it is half taken in; mend the disk and run the same command to finish it")
    except OSError as error:
        what = f"{error.filename or content}: {error.strerror}"
        print(f"{what}; {_STAND}. Make room or ask for the right to write there, then run it again")
    return 1


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


def _asked(content: Path, pack: Pack, check: UnitCheck, unit: Unit, yes: bool) -> int:
    plan = placing_of(content, pack)
    print("\n".join(_shown(unit, check)))
    if plan.why == "here":
        print(f"it is here already: {(content / plan.goal).as_posix()}; nothing to take in")
        return 0
    print(_would(content, plan, pack))
    if not yes and not _agreed():
        print(_STAND)
        return 0
    take(content, pack.unit_files, plan)
    print(f"taken in: {(content / plan.goal).as_posix()}; run `check` to see it among the others")
    return 0


def _shown(unit: Unit, check: UnitCheck) -> list[str]:
    parent = unit.adapted_from
    lines = [
        f"{unit.title}, edition {unit.edition} of {unit.issued}",
        f"from {unit.publisher}" + (f", by {unit.credit}" if unit.credit else ""),
        f"licence {unit.licence}",
        *(
            [
                f"adapted from {parent.title}, edition {parent.edition}, by {parent.publisher}, "
                f"licence {parent.licence}"
            ]
            if parent
            else []
        ),
        f"{len(unit.lessons)} lessons, {len(unit.media)} pictures",
    ]
    if check.problems:
        lines.append(as_text(check.problems, ""))
    return [*lines, f"the bank's rules find {counted(check.problems)}"]


def _would(content: Path, plan: Placing, pack: Pack) -> str:
    goal = (content / plan.goal).as_posix()
    if plan.why == "new":
        return f"it would be new here: {goal}"
    if plan.why == "newer" and plan.moved is not None:
        return (
            f"it would take the place of edition {plan.edition_here} in {goal}, which would be "
            f"kept in {(content / plan.moved).as_posix()}"
        )
    what = "an older edition" if plan.why == "older" else "another unit or other words"
    return (
        f"it is {what} under the name {pack.slug}: the one here, edition {plan.edition_here}, "
        f"stays, and this one would be kept beside it in {goal}"
    )


def _agreed() -> bool:
    print("Take it in? yes or no: ", end="", flush=True)
    answer = sys.stdin.readline().strip().casefold()
    if not answer:
        print()
    return answer in ("y", "yes")
