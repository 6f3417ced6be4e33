"""The plan of a year: the best units in order, or in words why there is none."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from build_tools.model.school_years import in_words
from build_tools.model.unit import SchoolYears
from build_tools.planning.asked import Asked, Wish
from build_tools.planning.ordering import in_order
from build_tools.planning.problem import Problem, Word, candidates, problem_of
from build_tools.planning.solving import SolverError, best_units
from build_tools.views.teaching.covers import Covers
from build_tools.views.words.plain_words import how_many, listed

FEW = 3
"""How many units of other years are named where a topic has none in this one."""


@dataclass(frozen=True, slots=True)
class YearPlan:
    """The unit in each slot, and what the year then has."""

    asked: Asked
    units: tuple[Covers, ...]
    """Every unit that could be planned, in its order."""
    problem: Problem
    order: tuple[int | None, ...]
    """The place in `units` of the unit in each slot; None where it stays empty."""
    met: Mapping[Word, int]
    """Each word that some unit could bring, and in how many slots it comes."""
    notes: tuple[str, ...]
    """What an adviser has to see to, in sentences."""


@dataclass(frozen=True, slots=True)
class NoPlan:
    """Why there is no plan, in sentences."""

    why: tuple[str, ...]


def year_plan(units: Sequence[Covers], asked: Asked) -> YearPlan | NoPlan:
    """The units of the bank `units` that cover most with fewest repeats, in an order that holds."""
    pool = candidates(units, asked)
    if not pool:
        return NoPlan((f"No unit for {year_said(asked)} is left to plan.",))
    why = [words for wish in asked.wishes if (words := _impossible(wish, units, pool, asked))]
    if why:
        return NoPlan(tuple(why))
    problem = problem_of(pool, asked, asked.wishes)
    chosen = best_units(problem)
    if chosen is None:
        clash = _clash(pool, asked)
        return NoPlan((f"No order of units keeps all of this: {listed([*map(str, clash)])}.",))
    order = in_order(problem, chosen)
    if order is None:
        raise SolverError("the units that the solver chose have no order")
    every = {word for words in problem.words for word in words}
    times = Counter(word for n in chosen for word in problem.words[n])
    return YearPlan(
        asked, pool, problem, order,
        {word: times[word] for word in sorted(every)},
        _notes(units, [pool[n] for n in order if n is not None], pool, asked),
    )  # fmt: skip


def year_said(asked: Asked) -> str:
    """The year group in words."""
    nation, year = asked.year
    return in_words(SchoolYears(nation, (year,)))


def _impossible(
    wish: Wish, units: Sequence[Covers], pool: Sequence[Covers], asked: Asked
) -> str | None:
    """Why a wish cannot be kept, whatever else is planned; None where it can."""
    having = [unit for unit in pool if _has(unit, wish)]
    if not having:
        return _nobody(wish, units, asked)
    slots = asked.slots if wish.slot is None else asked.slots[wish.slot : wish.slot + 1]
    longest = max(slot.lessons for slot in slots)
    shortest = min(having, key=lambda unit: unit.lessons)
    if shortest.lessons <= longest:
        return None
    return (
        f"{_capital(str(wish))} has no place: “{shortest.title}” takes "
        f"{how_many(shortest.lessons, 'lesson')}, and there {'is' if longest == 1 else 'are'} "
        f"{longest} at most."
    )


def _nobody(wish: Wish, units: Sequence[Covers], asked: Asked) -> str:
    others = [unit for unit in units if _has(unit, wish)]
    said = year_said(asked)
    if wish.unit:
        had = any(unit.slug in asked.done and asked.year in unit.years for unit in others)
        reason = "the class has had it" if had else f"it is not for {said}"
        return f"The unit “{wish.unit}” cannot be planned: {reason}."
    over = [unit.title for unit in others if unit.slug in asked.done and asked.year in unit.years]
    if over:
        return f"Nobody is left to teach {wish.topic} to {said}: the class has had {listed(over)}."
    elsewhere = [
        f"“{unit.title}” ({', '.join(in_words(SchoolYears(n, (y,))) for n, y in unit.years)})"
        for unit in others[:FEW]
    ]
    more = f" For other years there is {listed(elsewhere)}." if elsewhere else ""
    none = "" if elsewhere else ", nor any other of the bank"
    return f"No unit for {said} teaches {wish.topic}{none}.{more}"


def _has(unit: Covers, wish: Wish) -> bool:
    return wish.topic in unit.topics if wish.topic else unit.slug == wish.unit


def _clash(pool: Sequence[Covers], asked: Asked) -> list[Wish]:
    """Few of the wishes that cannot be kept together: without any of them the rest can."""
    left = list(asked.wishes)
    for wish in asked.wishes:
        fewer = [one for one in left if one is not wish]
        if best_units(problem_of(pool, asked, fewer)) is None:
            left = fewer
    return left


def _notes(
    units: Sequence[Covers], planned: Sequence[Covers], pool: Sequence[Covers], asked: Asked
) -> tuple[str, ...]:
    by_slug = {unit.slug: unit for unit in units}
    mine = {unit.slug for unit in pool}
    return tuple(
        f"“{unit.title}” builds on “{by_slug[slug].title}”, which is for other years: see that "
        "the class has had it, or what it teaches."
        for unit in planned
        for slug in unit.builds_on
        if slug in by_slug and slug not in mine and slug not in asked.done
    )


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]
