"""What rules say of made lessons beside what the page's script says, and what the browser prints.

`.venv/bin/python -m tests.agreement.disagreements [LESSONS] [PRINTED]` counts, for so many made
lessons and for so many of them printed, where the two do not say the same.
"""

from __future__ import annotations

import os
import sys
import tempfile
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser

from build_tools.model.unit import Unit
from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.project.tools_for_tests import tools
from build_tools.rules.lesson import minutes_do_not_add_up, showing_does_not_fit, too_long_sitting
from build_tools.rules.reading import lesson_over_two_sides
from build_tools.rules.rule import Finding
from build_tools.rules.safety import space_for_fewer
from build_tools.views.dance.recommended_metres import HALLS, recommended_least
from build_tools.views.lesson.class_groups import groupings_known
from build_tools.views.lesson.handouts import copies_for
from build_tools.views.lesson.longest_talk import longest_talk
from build_tools.views.paper.sides import MOST_SIDES
from tests.agreement.made_lessons import Made, made, numbers_in
from tests.sums.lessons import GROUPINGS, Lesson
from tests.sums.page_facts import facts_of_all
from tests.support.browser import launched
from tests.support.page_script import Call, page_script
from tests.support.printed_lessons import LessonPrinter
from tests.support.sound_bank import real_bank

SLOTS = (20, 30, 38, 45, 60, 90)
LESSONS, PRINTED = 600, 10
"""How many are tried in the usual run, and how many of them are printed."""
LESSONS_THOROUGH, PRINTED_THOROUGH = 20_000, 1200


@dataclass(slots=True)
class Count:
    """How often something was compared, and each time that it differed, in words."""

    compared: int = 0
    differing: list[str] = field(default_factory=list)

    def add(self, same: bool, words: str) -> None:
        self.compared += 1
        if not same:
            self.differing.append(words)


@dataclass(frozen=True, slots=True)
class Counts:
    """The comparisons, by what is compared."""

    minutes: Count = field(default_factory=Count)
    talk: Count = field(default_factory=Count)
    showing: Count = field(default_factory=Count)
    groups: Count = field(default_factory=Count)
    space: Count = field(default_factory=Count)
    sides: Count = field(default_factory=Count)

    def table(self) -> str:
        """A line for each: how many compared, how many differ."""
        rows = (
            (
                "minutes",
                self.minutes,
                "whether the steps fill the lesson, and so are its own fit",
            ),
            ("talk", self.talk, "no slot makes pupils sit for longer than the rule allows"),
            ("showing", self.showing, "whether it fits, its runs, its seconds and its minutes"),
            ("groups", self.groups, "groups that are shown, and that handouts are counted for"),
            ("space", self.space, "how many a floor has room for"),
            ("sides", self.sides, "whether the lesson prints on more than two"),
        )
        return "\n".join(
            f"{name:8} {count.compared:7,} compared {len(count.differing):5,} differ   {words}"
            for name, count, words in rows
        )

    def differing(self) -> list[str]:
        """Every difference, in words."""
        counts = (self.minutes, self.talk, self.showing, self.groups, self.space, self.sides)
        return [words for count in counts for words in count.differing]


def compare_sums(numbers: Sequence[int], counts: Counts) -> None:
    """Compare the sums of the lessons of these numbers, all asked of the page's script at once."""
    asked: list[Call] = []
    waiting = []
    lessons = [made(number) for number in numbers]
    every = facts_of_all([(one.unit, one.lesson) for one in lessons])
    for one, facts in zip(lessons, every, strict=True):
        calls = list(_calls(one, facts))
        waiting.append((one, facts, len(asked), len(calls)))
        asked += calls
    answers = page_script().answers(asked)
    for one, facts, start, long in waiting:
        _compare(one, facts, iter(answers[start : start + long]), counts)


def _calls(one: Made, facts: Lesson) -> Iterator[Call]:
    """What the page's script is asked of a lesson, in the order in which `_compare` reads it."""
    groupings = groupings_known(one.unit, one.lesson)
    yield "sums.shareMinutes", (facts, one.lesson.minutes)
    for slot in SLOTS:
        yield "sums.lessonToday", (facts, {"available": slot, "changing": 0})
    for index, step in enumerate(one.lesson.steps):
        yield "sums.showing", (facts, index, step.minutes, USUAL_CLASS)
    for grouping in GROUPINGS:
        yield "sums.classGroups", (groupings, grouping, USUAL_CLASS)
    yield "sums.floorSpace", (USUAL_CLASS, _metres(one.unit), recommended_least(one.unit.years))


def _compare(one: Made, facts: Lesson, answers: Iterator[Any], counts: Counts) -> None:
    unit, lesson, where = one.unit, one.lesson, f"made lesson {one.number}"
    alone = replace(unit, lessons=(lesson,))
    planned = [step.minutes for step in lesson.steps]
    adds_up = not list(minutes_do_not_add_up.check(alone))
    counts.minutes.add((next(answers) == planned) == adds_up, f"{where}: minutes add up: {adds_up}")

    too_long = any(finding.file == lesson.file for finding in too_long_sitting.check(unit))
    for slot in SLOTS:
        sat = _longest_sat(facts, next(answers)["sittings"])
        most = longest_talk(unit, lesson)
        counts.talk.add(too_long or sat <= most, f"{where}: {sat} minutes sat of {most} in {slot}")

    said = {
        finding.path[1]: finding
        for finding in showing_does_not_fit.check(unit)
        if finding.file == lesson.file
    }
    for index, step in enumerate(lesson.steps):
        shown = next(answers)
        if shown is None:
            counts.showing.add(index not in said, f"{where}: step {index + 1}: no showing to see")
            continue
        same = shown["fits"] == (index not in said)
        if index in said:
            same = same and _same_sum(said[index], shown)
        counts.showing.add(same, f"{where}: step {index + 1}, {step.minutes} minutes, page {shown}")

    for grouping in GROUPINGS:
        groups = next(answers)
        if grouping != "alone":
            copies = copies_for(unit, lesson, grouping, USUAL_CLASS)
            counts.groups.add(
                len(groups) == copies, f"{where}: {grouping}: {groups}, {copies} copies"
            )

    floor = next(answers)
    found = [finding for finding in space_for_fewer.check(unit) if "is room for" in finding.message]
    if _is_measured(unit):
        same = floor["enough"] == (not found)
        if found:
            same = same and floor["holds"] in numbers_in(found[0].message)
        counts.space.add(same, f"{where}: {unit.space.hall} {floor}")


def _same_sum(finding: Finding, shown: Any) -> bool:
    """Whether a finding names the runs, the length and the minutes that the page has."""
    minutes, seconds = divmod(shown["seconds"], 60)
    whole = [minutes] if minutes else []
    whole += [seconds] if seconds or not minutes else []
    told = numbers_in(finding.message.partition("about")[2])
    runs = told[len(whole) : len(whole) + 1]
    return (
        told[: len(whole)] == whole
        and runs == [len(shown["runs"])]
        and numbers_in(finding.help)[:1] == [shown["needs"]]
    )


def _longest_sat(facts: Lesson, sittings: Sequence[Sequence[dict[str, int]]]) -> int:
    """The most minutes in a row in which pupils sit and talk."""
    sits = {step["number"]: step["sits"] is not None for step in facts}
    longest = 0
    for sitting in sittings:
        now = 0
        for part in sitting:
            now = now + part["minutes"] if sits.get(part["step"]) else 0
            longest = max(longest, now)
    return longest


def _is_measured(unit: Unit) -> bool:
    """Whether the words for the hall give its size, not how much each pupil needs."""
    return "each pupil" not in unit.space.hall and bool(numbers_in(unit.space.hall))


def _metres(unit: Unit) -> int:
    """The square metres that the words for the hall give; those of a hall where they give none."""
    if not _is_measured(unit):
        return HALLS["full"]
    numbers = numbers_in(unit.space.hall)
    return numbers[0] * numbers[1] if len(numbers) > 1 else numbers[0]


def compare_sides(numbers: Sequence[int], browser: Browser, counts: Counts) -> None:
    """Print the lessons of these numbers and compare their sides with what the rule says."""
    lessons = [made(number) for number in numbers]
    tab = browser.new_page()
    with tempfile.TemporaryDirectory() as folder:
        printer = LessonPrinter(tab, Path(folder))
        printed = printer.sides(real_bank(), [(one.unit, one.lesson) for one in lessons])
    tab.close()
    for one, sides in zip(lessons, printed, strict=True):
        every = lesson_over_two_sides.check(one.unit)
        found = [finding for finding in every if finding.file == one.lesson.file]
        said = found[0].message if found else "two sides"
        counts.sides.add(
            (sides > MOST_SIDES) == bool(found), f"made lesson {one.number}: {sides} sides; {said}"
        )


def main(lessons: int, printed: int) -> int:
    """Count, print the table and each difference; gives 1 where there is one."""
    os.environ.update(tools().environment())
    counts = Counts()
    for start in range(0, lessons, 500):
        compare_sums(range(start, min(lessons, start + 500)), counts)
    with launched() as browser:
        compare_sides(range(printed), browser, counts)
    print(counts.table())
    for words in counts.differing():
        print(words)
    return 1 if counts.differing() else 0


if __name__ == "__main__":
    given = [int(word) for word in sys.argv[1:]]
    sys.exit(main(*(given + [LESSONS, PRINTED][len(given) :])))
