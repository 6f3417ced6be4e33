"""Adapting a unit: one's own draft from a unit that is here, its line and its licence kept."""

from __future__ import annotations

import shutil
from dataclasses import dataclass
from pathlib import Path

from build_tools.adapting.adapt import Adaptation, NotAllowed, adapted, licence_for
from build_tools.checking.check_bank import Report, check_folder
from build_tools.disk.stray_files import is_stray
from build_tools.model.unit import Unit
from build_tools.problem import Problem
from build_tools.source.folder import TAKEN_IN
from build_tools.use_cases.new_folder import free_folder, written_whole


@dataclass(frozen=True, slots=True)
class Wishes:
    """What whoever adapts wants it to be; None leaves it to the unit, the bank or its licence."""

    title: str | None = None
    publisher: str | None = None
    licence: str | None = None


@dataclass(frozen=True, slots=True)
class Adapted:
    """The draft that was written: its folder, its licence, and the title of what it is from."""

    folder: Path
    licence: str
    made_from: str


@dataclass(frozen=True, slots=True)
class NotAdapted:
    """Why it may not be done, and what to do; the problems of a unit that is not sound."""

    reason: str
    problems: tuple[Problem, ...] = ()


def adapt(content: Path, source: str, slug: str, wishes: Wishes) -> Adapted | NotAdapted:
    """Write `content`/units/`slug`, made from the unit `source`, as a draft.

    Nothing is written where it may not be adapted. Raises Misuse, with nothing written, where the
    name cannot be used or is taken, or the disk refuses.
    """
    folder = free_folder(content, slug)
    report = check_folder(content)
    unit = _unit_in(report, source)
    if report.bank is None or unit is None:
        wrong = (p for p in report.problems if p.file.startswith(f"units/{source}/"))
        return NotAdapted(f"there is no sound unit {source} in {content.as_posix()}", tuple(wrong))
    licence = licence_for(unit, wishes.licence)
    if isinstance(licence, NotAllowed):
        return NotAdapted(licence.reason)
    wanted = Adaptation(
        title=wishes.title or f"{unit.title}, adapted",
        publisher=wishes.publisher or report.bank.name,
        day=report.bank.as_of,
        licence=licence,
    )
    old = content / "units" / source
    text = (old / "unit.md").read_text(encoding="utf-8")
    with written_whole(folder) as room:
        shutil.copytree(old, room, ignore=_left_behind, dirs_exist_ok=True)
        fresh = adapted(text, unit, wanted)
        (room / "unit.md").write_text(fresh, encoding="utf-8", newline="\n")
    return Adapted(folder, licence, unit.title)


def _left_behind(_: object, names: list[str]) -> set[str]:
    """What lies beside a unit's own files and is none of them."""
    return {name for name in names if name.startswith(".") or is_stray(name) or name == TAKEN_IN}


def _unit_in(report: Report, slug: str) -> Unit | None:
    units = report.bank.units if report.bank else ()
    return next((unit for unit in units if unit.slug == slug), None)
