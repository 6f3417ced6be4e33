"""The cases on which the Python sums and the scripts of a page are held to the same answers.

`.venv/bin/python -m tests.vectors.make_vectors` writes them anew. A case names what a page calls,
with what, and what comes back.
"""

from __future__ import annotations

import json
import random
from collections.abc import Callable, Iterator
from dataclasses import fields, is_dataclass
from pathlib import Path
from typing import Any

from build_tools.views.lesson.catch_up import catch_up
from build_tools.views.lesson.class_groups import group_size, groups
from build_tools.views.lesson.fit import fit, fitting_least
from build_tools.views.lesson.floor_space import floor_space, square_metres
from build_tools.views.lesson.groups_in_words import (
    groups_in_words,
    groups_sentence,
    number_in_words,
    odd_group,
)
from build_tools.views.lesson.settings_code import settings_code, settings_from
from build_tools.views.lesson.showing_plan import showing_plan, talk_seconds
from build_tools.views.lesson.sittings import sittings
from build_tools.views.lesson.step_facts import StepFacts, regrouped

HERE = Path(__file__).parent
GROUPINGS = ("alone", "pairs", "threes", "fours", "fives", "sixes", "half class", "whole class")
_MIDDLE = ("explore", "make", "develop", "join", "rehearse", "show", "look and talk")

Case = dict[str, Any]
Steps = tuple[StepFacts, ...]


def step(
    number: int, phase: str, minutes: int, least: int, grouping: str = "alone", **more: Any
) -> StepFacts:
    facts = {"regroups": False, "shows": None, "can_wait": False, **more}
    return StepFacts(number, minutes, least, phase, grouping, **facts)


FORTY_FIVE: Steps = (
    step(1, "warm-up", 5, 4),
    step(2, "recall", 5, 3, "whole class"),
    step(3, "explore", 5, 3, can_wait=True),
    step(4, "make", 7, 4, "pairs", regroups=True),
    step(5, "develop", 6, 4, "fours", regroups=True),
    step(6, "make", 7, 5, "fours"),
    step(7, "rehearse", 3, 2, "fours"),
    step(8, "look and talk", 4, 3, "fours", shows=17.8),
    step(9, "cool-down", 3, 2),
)
THIRTY: Steps = (
    step(1, "warm-up", 4, 3),
    step(2, "explore", 4, 3, can_wait=True),
    step(3, "make", 8, 6),
    step(4, "rehearse", 3, 2, "whole class"),
    step(5, "explore", 5, 4),
    step(6, "look and talk", 3, 2, "half class", regroups=True),
    step(7, "cool-down", 3, 2),
)
TALK_IN_THE_MIDDLE: Steps = (
    step(1, "warm-up", 5, 4),
    step(2, "join", 6, 4, "fours", regroups=True),
    step(3, "look and talk", 5, 3, "fours"),
    step(4, "rehearse", 8, 5, "whole class"),
    step(5, "look and talk", 5, 4, "pairs", regroups=True),
    step(6, "cool-down", 4, 2),
)
NO_TALK: Steps = (step(1, "warm-up", 4, 4), step(2, "make", 9, 9), step(3, "join", 7, 1))
NOTHING_TO_CUT: Steps = (
    step(1, "warm-up", 5, 4),
    step(2, "make", 20, 12),
    step(3, "cool-down", 5, 3),
)
EQUAL: Steps = tuple(step(n, "make", 5, 1) for n in range(1, 6))
LESSONS = (FORTY_FIVE, THIRTY, TALK_IN_THE_MIDDLE, NO_TALK, NOTHING_TO_CUT, EQUAL)


def some_lesson(chance: random.Random) -> Steps:
    """A lesson of any shape that the schema lets through, from a warm-up to a cool-down."""
    phases = ["warm-up", *(["recall"] if chance.random() < 0.5 else [])]
    phases += [chance.choice(_MIDDLE) for _ in range(chance.randint(1, 7))] + ["cool-down"]
    steps: list[StepFacts] = []
    for number, phase in enumerate(phases, start=1):
        minutes = chance.randint(1, 14)
        grouping = chance.choice(GROUPINGS)
        regroups = regrouped(steps[-1].grouping if steps else None, grouping)
        least = chance.randint(1, minutes)
        waits = chance.random() < 0.25
        steps.append(
            step(number, phase, minutes, least, grouping, regroups=regroups, can_wait=waits)
        )
    return tuple(steps)


def fit_cases(chance: random.Random) -> Iterator[Case]:
    for lesson in (*LESSONS, *(some_lesson(chance) for _ in range(12))):
        planned = sum(one.minutes for one in lesson)
        least = sum(fitting_least(one) for one in lesson)
        for minutes in sorted({0, least - 1, least, (least + planned) // 2, planned, planned + 9}):
            yield case("fit", fit(lesson, minutes), lesson, minutes)
    yield case("fit", fit((), 10), (), 10)
    yield from (case("fittingLeast", fitting_least(one), one) for one in FORTY_FIVE)


def sitting_cases(chance: random.Random) -> Iterator[Case]:
    for lesson in (*LESSONS, *(some_lesson(chance) for _ in range(12))):
        least = sittings(lesson, 0).least
        for minutes in sorted({1, least - 1, least, least + 1, least + 8} - {-1}):
            yield case("sittings", sittings(lesson, minutes), lesson, minutes)
    for before in (None, *GROUPINGS):
        for grouping in GROUPINGS:
            yield case("regrouped", regrouped(before, grouping), before, grouping)


def catch_up_cases(chance: random.Random) -> Iterator[Case]:
    for lesson in (*LESSONS, *(some_lesson(chance) for _ in range(6))):
        for gone in sorted({0, len(lesson) // 2, len(lesson)}):
            rest = lesson[gone:]
            planned = sum(one.minutes for one in rest)
            for late in sorted({0, 1, 4, planned // 2, planned}):
                yield case("catchUp", catch_up(rest, planned - late), rest, planned - late)


def group_cases() -> Iterator[Case]:
    for pupils in (0, 1, 2, 3, 5, 6, 7, 11, 18, *range(23, 34), 47, 60, 119, 120):
        for size in (1, 2, 3, 4, 5, 6):
            sizes = groups(pupils, size)
            yield case("groups", sizes, pupils, size)
            yield case("groupsInWords", groups_in_words(sizes), sizes)
            yield case("groupsSentence", groups_sentence(sizes, None), sizes, None)
            yield case("groupsSentence", groups_sentence(sizes, "pairs"), sizes, "pairs")
            for partners in (None, "In a three, two ask together.", "Stand beside a friend."):
                yield case("oddGroup", odd_group(sizes, size, partners), sizes, size, partners)
        for grouping in ("half class", "whole class", "alone", "sixes"):
            size = group_size(grouping, pupils)
            yield case("groupSize", size, grouping, pupils)
            yield case("groupsInWords", groups_in_words(groups(pupils, size)), groups(pupils, size))
    for number in (0, 1, 12, 19, 20, 21, 30, 55, 99, 100, 120):
        yield case("numberInWords", number_in_words(number), number)


def showing_cases() -> Iterator[Case]:
    for pupils, size in ((27, 4), (27, 2), (30, 5), (1, 1), (2, 1), (3, 3), (28, 14), (30, 30)):
        sizes = groups(pupils, size)
        for run in (4.5, 17.8, 21.333333333333332, 45.0, 75.0, 130.25):
            for minutes in (1, 2, 3, 4, 6):
                yield case("showingPlan", showing_plan(sizes, run, minutes), sizes, run, minutes)
    yield case("showingPlan", showing_plan((), 20.0, 3), (), 20.0, 3)
    # exactly two minutes, and a hundredth of a second over
    yield case("showingPlan", showing_plan((4, 4), 45.0, 2, 0), (4, 4), 45.0, 2, 0)
    yield case("showingPlan", showing_plan((4, 4), 45.005, 2, 0), (4, 4), 45.005, 2, 0)
    for phase, after in (("show", "look and talk"), ("show", None), ("look and talk", None)):
        yield case("talkSeconds", talk_seconds(phase, after), phase, after)
    both = ("look and talk", "look and talk")
    yield case("talkSeconds", talk_seconds(*both), *both)


def space_cases() -> Iterator[Case]:
    for metres in (1, 2, 54, 70, 90, 96, 140, 180, 9801):
        for pupils in (0, 1, 10, 18, 19, 28, 29, 30, 31, 46, 47, 60, 120):
            for least in (3, 5):
                yield case("space", floor_space(pupils, metres, least), pupils, metres, least)
    for space in ("full", "half", "classroom", "unknown", "12x8m", "14x9s", "1x1m", "99x99s"):
        yield case("squareMetres", square_metres(space), space)
    for space in ("", "12x8", "0x8m", "12x08m", "100x8m", "12x8m ", "12x8m\n", "toString"):
        yield case("squareMetres", square_metres(space), space)


CODES = (
    *("38-7-25-2-half", "45-0-30-0-full", "1-0-1-0-unknown", "240-239-120-120-classroom"),
    *("50-5-27-1-12x8m", "50-5-27-1-14x9s", "50-5-27-1-99x99m"),
)
NO_CODES = (
    *("", "38", "38-7-25-2", "38-7-25-2-", "38-7-25-2-hall", "38-38-25-2-half", "0-0-25-2-half"),
    *("241-7-25-2-half", "38-7-0-2-half", "38-7-121-0-half", "38-7-25-121-half", "038-7-25-2-half"),
    *(
        "38-7-25-2-half ",
        " 38-7-25-2-half",
        "38-7-25-2-half\n",
        "-38-7-25-2-half",
        "3.5-1-25-2-half",
    ),
    *("38-7-25-2-0x8m", "38-7-25-2-12x8", "38-7-25-2-HALF", "38-7-25-2-half-2", "٣٨-7-25-2-half"),
    *("38-7-25-2-100x8m", "1e1-7-25-2-half", "38--7-25-2-half"),
)


def settings_cases() -> Iterator[Case]:
    for code in (*CODES, *NO_CODES):
        yield case("settings.fromCode", settings_from(code), code)
    for code in CODES:
        settings = settings_from(code)
        assert settings is not None
        yield case("settings.code", settings_code(settings), settings)


FILES: dict[str, Callable[[], Iterator[Case]]] = {
    "fit.json": lambda: fit_cases(random.Random(1)),
    "sittings.json": lambda: sitting_cases(random.Random(2)),
    "catch_up.json": lambda: catch_up_cases(random.Random(3)),
    "groups.json": group_cases,
    "showing.json": showing_cases,
    "space.json": space_cases,
    "settings.json": settings_cases,
}


def case(call: str, result: Any, *args: Any) -> Case:
    """One case; what is a dataclass here is an object with the same names there."""
    return {"call": call, "args": [_plain(one) for one in args], "result": _plain(result)}


def written(name: str) -> str:
    """The text of the file `name`: a case on each line."""
    lines = (json.dumps(one, ensure_ascii=False, separators=(",", ":")) for one in FILES[name]())
    return "[\n" + ",\n".join(lines) + "\n]\n"


def _plain(value: Any) -> Any:
    if is_dataclass(value) and not isinstance(value, type):
        return {_camel(one.name): _plain(getattr(value, one.name)) for one in fields(value)}
    if isinstance(value, (tuple, list)):
        return [_plain(one) for one in value]
    return value


def _camel(name: str) -> str:
    first, *rest = name.split("_")
    return first + "".join(word.capitalize() for word in rest)


if __name__ == "__main__":
    for file in FILES:
        (HERE / file).write_text(written(file), encoding="utf-8")
