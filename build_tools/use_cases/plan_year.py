"""Planning a year from a checked bank, and writing the plan into a folder of its own."""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path

from build_tools.building.assets import asset_files
from build_tools.building.kept_covers import kept_covers
from build_tools.building.site import Wanted
from build_tools.building.unit_files import drawn
from build_tools.disk.stray_files import is_stray
from build_tools.disk.whole_folder import staged
from build_tools.misuse import Misuse
from build_tools.pages.year_plan.year_plan import PATH, year_plan_page
from build_tools.planning.asked import Asked
from build_tools.planning.calendar import calendar, lesson_days, overrun
from build_tools.planning.year_plan import NoPlan, YearPlan, year_plan
from build_tools.views.teaching.covers import Covers
from build_tools.views.words.days import day_in_words

CALENDAR = "plan.ics"
_LOADED = ("look.css", "typeface.css", "reference.css", "year_plan.css", "year_plan.js")


@dataclass(frozen=True, slots=True)
class Written:
    """A plan in its folder."""

    plan: YearPlan
    notes: tuple[str, ...]
    """What an adviser has to see to, in sentences."""
    calendar: bool
    """Whether there is a calendar file: there is none without a day to start on."""


def units_known(wanted: Wanted, kept: Path) -> tuple[Covers, ...]:
    """What each published unit covers; `kept` is the file where that is kept."""
    return kept_covers(wanted.content, wanted.units, kept)


def refuse_plan_folder(out: Path) -> None:
    """Raise Misuse where `out` holds something other than a plan, which would be lost."""
    if out.exists() and not out.is_dir():
        raise Misuse(f"{out} is a file; give the name of a folder")
    names = {path.name for path in out.iterdir()} if out.is_dir() else set()
    if any(not is_stray(name) for name in names - {PATH, CALENDAR, "assets"}):
        raise Misuse(f"{out} holds something other than a plan; give another folder")


def write_plan(
    wanted: Wanted, units: tuple[Covers, ...], asked: Asked, out: Path, site: Path, command: str
) -> Written | NoPlan:
    """Plan the year that is `asked` and put page and calendar into `out`, whole or not at all.

    The page leads to units where there is a `site`; `command` is what it says makes it again.
    """
    plan = year_plan(units, asked)
    if isinstance(plan, NoPlan):
        return plan
    late = tuple(
        f"Lesson {one.number} of “{one.title}” would be on {day_in_words(one.day.isoformat())}, "
        "when a later slot has begun."
        for one in overrun(plan)
    )
    notes = (*plan.notes, *late)
    at = Path(os.path.relpath(site / "units", out)).as_posix() if _is_site(site, out) else None
    pages = drawn([year_plan_page(wanted.settings, plan, notes, command, at)])
    files = {path: html.encode() for path, html in pages.items()}
    files |= {name: data for name, data in asset_files().items() if _is_loaded(name)}
    if lesson_days(plan):
        files[CALENDAR] = calendar(plan, wanted.settings.name, wanted.settings.as_of)
    with staged(out) as room:
        for name, data in files.items():
            (room / name).parent.mkdir(parents=True, exist_ok=True)
            (room / name).write_bytes(data)
    return Written(plan, notes, CALENDAR in files)


def _is_site(site: Path, out: Path) -> bool:
    return (site / "units").is_dir() and site.anchor == out.anchor


def _is_loaded(name: str) -> bool:
    return name.startswith("assets/fonts/") or name.rpartition("/")[2] in _LOADED
