"""plan: choose the units of a year so that they cover most, and put them in order."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace
from pathlib import Path

from build_tools.building.ready import ready_to_publish
from build_tools.checking.quick_check import quick_check
from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_content, take_content
from build_tools.commands.shared.saying import say_ready
from build_tools.commands.shared.year_asked import asked_of, command_of
from build_tools.disk.places import PROJECT
from build_tools.pages.year_plan.year_plan import PATH, covered_said, heading_said, said_of
from build_tools.planning.year_plan import NoPlan, YearPlan
from build_tools.use_cases.check import kept_file
from build_tools.use_cases.plan_year import CALENDAR, refuse_plan_folder, units_known, write_plan
from build_tools.views.words.plain_words import how_many


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    add = parser.add_argument
    add("--year", required=True, help="the year group as its nation writes it: R, 4, P5")
    add("--nation", help="the nation, where several have that year")
    add(
        "--term",
        action="append",
        help='a term and its slots, how many lessons each has: "Autumn: 6, 6"; with days: '
        '"Autumn: 6 from 2026-09-07"; again for each term (three slots of 6 where none is given)',
    )
    add("--topic", action="append", help='a topic that has to come; "2=romans" in the second slot')
    add("--unit", action="append", help="a unit that has to come, by its folder; 2=UNIT in slot 2")
    add("--done", action="append", help="a unit that the class has had, by its folder")
    add("--no-lesson", action="append", help="a day without a lesson, such as 2026-12-18")
    add("--out", type=Path, default=PROJECT / "plan", help="the folder to write the plan into")
    add("--site", type=Path, default=PROJECT / "site", help="the site whose units it leads to")
    take_content(parser)


def run(args: Namespace) -> int:
    """Give 0 when the plan is written; 1 when there is none, and then the last plan stands."""
    content, out, site = existing_content(args.content), args.out.resolve(), args.site.resolve()
    refuse_plan_folder(out)
    kept = kept_file(PROJECT, content)
    report = quick_check(content, kept)
    ready = ready_to_publish(report, content)
    say_ready(ready, report.skipped, content, "nothing was planned")
    if ready.wanted is None:
        return STOPPED
    units = units_known(ready.wanted, kept.with_suffix(".covers"))
    asked = asked_of(args, units, ready.wanted.settings.topics)
    done = write_plan(ready.wanted, units, asked, out, site, command_of(args))
    if isinstance(done, NoPlan):
        print(*done.why, "Nothing was planned; a plan that was there still stands.", sep="\n")
        return STOPPED
    _say(done.plan)
    print(*done.notes, sep="\n", end="\n" if done.notes else "")
    print(f"open {(out / PATH).as_posix()}")
    if done.calendar:
        print(f"calendar: {(out / CALENDAR).as_posix()}")
    return DONE


def _say(plan: YearPlan) -> None:
    for place, (slot, at) in enumerate(zip(plan.asked.slots, plan.order, strict=True), start=1):
        unit = None if at is None else plan.units[at]
        said = f"{unit.title} ({how_many(unit.lessons, 'lesson')})" if unit else "nothing fits"
        print(f"{place}. {slot.term}, {how_many(slot.lessons, 'lesson')}: {said}")
    print(covered_said(plan.met))
    for heading in dict.fromkeys(heading for heading, _ in plan.met):
        if left := [said_of(word) for word, n in plan.met.items() if word[0] == heading and not n]:
            print(f"missing, {heading_said(heading).lower()}: {'; '.join(left)}")
