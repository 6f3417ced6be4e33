"""Lessons as a page's script sees them: four to look at, and any shape, for the laws of fitting."""

from __future__ import annotations

import random
from collections.abc import Sequence
from typing import NotRequired, TypedDict

from hypothesis import strategies as st

from tests.support.page_script import ask

GROUPINGS = ("alone", "pairs", "threes", "fours", "fives", "sixes", "half class", "whole class")
PHASES = ("recall", "explore", "make", "develop", "join", "rehearse", "show", "look and talk")


class Shows(TypedDict):
    """How a step shows: the seconds of a run with its change over, and of talk."""

    each: int
    talk: int
    atOnce: int | None


class Step(TypedDict):
    """One step as `bank.stepFacts` gives it."""

    number: int
    minutes: int
    least: int
    phase: str
    grouping: str
    sits: int | None
    shows: Shows | None
    canWait: bool
    travels: NotRequired[bool]
    onSpots: NotRequired[bool]
    parts: NotRequired[list[str]]
    wants: NotRequired[int]


Lesson = Sequence[Step]


def step(
    number: int,
    phase: str,
    minutes: int,
    least: int,
    grouping: str = "alone",
    *,
    sits: int | None = None,
    can_wait: bool = False,
) -> Step:
    return {
        "number": number,
        "minutes": minutes,
        "least": least,
        "phase": phase,
        "grouping": grouping,
        "sits": sits,
        "shows": None,
        "canWait": can_wait,
    }


FORTY_FIVE: Lesson = (
    step(1, "warm-up", 5, 4),
    step(2, "recall", 5, 3, "whole class"),
    step(3, "explore", 5, 3, can_wait=True),
    step(4, "make", 7, 4, "pairs"),
    step(5, "develop", 6, 4, "fours"),
    step(6, "make", 7, 5, "fours"),
    step(7, "rehearse", 3, 2, "fours"),
    step(8, "look and talk", 4, 3, "fours"),
    step(9, "cool-down", 3, 2),
)
THIRTY: Lesson = (
    step(1, "warm-up", 4, 3),
    step(2, "explore", 4, 3, can_wait=True),
    step(3, "make", 8, 6),
    step(4, "rehearse", 3, 2, "whole class"),
    step(5, "explore", 5, 4),
    step(6, "look and talk", 3, 2, "half class"),
    step(7, "cool-down", 3, 2),
)
NOTHING_TO_CUT: Lesson = (
    step(1, "warm-up", 5, 4),
    step(2, "make", 20, 12),
    step(3, "cool-down", 5, 3),
)
EQUAL: Lesson = tuple(step(n, "make", 5, 1) for n in range(1, 6))


@st.composite
def steps(draw: st.DrawFn, phase: st.SearchStrategy[str]) -> Step:
    minutes, kind = draw(st.integers(1, 15)), draw(phase)
    talks = kind == "look and talk"
    return step(
        1,
        kind,
        minutes,
        draw(st.integers(1, minutes)),
        draw(st.sampled_from(GROUPINGS)),
        sits=draw(st.sampled_from((None, 4, 6, 9))) if talks else None,
        can_wait=draw(st.booleans()),
    )


@st.composite
def lessons(draw: st.DrawFn) -> Lesson:
    """A warm-up, up to eight steps of other kinds, and a cool-down."""
    found = [
        draw(steps(st.just("warm-up"))),
        *draw(st.lists(steps(st.sampled_from(PHASES)), max_size=8)),
        draw(steps(st.just("cool-down"))),
    ]
    for number, one in enumerate(found, start=1):
        one["number"] = number
    return tuple(found)


def some_lesson(seed: int) -> Lesson:
    """One of many lessons of any shape, the same for the same seed."""
    chance = random.Random(seed)
    phases = ["warm-up", *(chance.choice(PHASES) for _ in range(chance.randint(1, 7))), "cool-down"]
    found = []
    for number, phase in enumerate(phases, start=1):
        minutes = chance.randint(1, 14)
        sits = chance.choice((None, 4, 6)) if phase == "look and talk" else None
        found.append(
            step(
                number,
                phase,
                minutes,
                chance.randint(1, minutes),
                chance.choice(GROUPINGS),
                sits=sits,
                can_wait=chance.random() < 0.25,
            )
        )
    return tuple(found)


def wanting(lesson: Lesson, times: Sequence[int]) -> Lesson:
    """The same with steps that want so many times their planned minutes, as teams in turn do."""
    return tuple(
        {**one, "wants": one["minutes"] * often} for one, often in zip(lesson, times, strict=True)
    )


def wanted(one: Step) -> int:
    """The minutes that a step wants."""
    return one.get("wants", one["minutes"])


def frame(lesson: Lesson) -> list[int]:
    """The places of warming up and cooling down."""
    return [n for n, one in enumerate(lesson) if one["phase"] in ("warm-up", "cool-down")]


def planned(lesson: Lesson) -> int:
    """Its planned minutes."""
    return sum(one["minutes"] for one in lesson)


def leasts(lesson: Lesson) -> list[int]:
    """The fewest minutes of each step, as the page has them."""
    found: list[int] = ask("sums.leasts", lesson)
    return found


def talks(lesson: Lesson) -> list[tuple[list[int], int]]:
    """Each stretch of sitting and talking: the places of its steps, and the most minutes of it.

    That is the most that any of its steps says, or what is planned where that is more.
    """
    found: list[list[int]] = []
    for place, one in enumerate(lesson):
        if one["sits"] is None:
            continue
        if found and found[-1][-1] == place - 1:
            found[-1].append(place)
        else:
            found.append([place])
    return [
        (
            places,
            max(
                sum(lesson[place]["minutes"] for place in places),
                *(lesson[place]["sits"] or 0 for place in places),
            ),
        )
        for places in found
    ]
