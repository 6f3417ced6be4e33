"""How long planning a year takes in a bank of 1,500 units, and in one where all are for one year.

The units are made up, each with words drawn at random, some common and some rare, so that no two
are alike: a bank by people repeats more, and is quicker. One in five builds on another.
"""

from __future__ import annotations

import argparse
import random
import time

from build_tools.planning.asked import Asked, Slot
from build_tools.planning.year_plan import YearPlan, year_plan
from build_tools.views.teaching.covers import HEADINGS, Covers

YEARS = ("R", "1", "2", "3", "4", "5", "6")
COMMON = (0.9, 0.6, 0.3, 0.15, 0.05, 0.02)


def made(number: int, one_year: bool, seed: int) -> list[Covers]:
    """Units of one or two years each, or all of them for Year 4 too."""
    draw = random.Random(seed)
    often = {(h, word): draw.choice(COMMON) for h, words in HEADINGS.items() for word in words}
    units = []
    for n in range(number):
        first = draw.randrange(len(YEARS))
        years = ("4",) if one_year else YEARS[first : first + draw.choice((1, 2))]
        earlier = draw.randrange(n) if n and draw.random() < 0.2 else None
        units.append(
            Covers(
                slug=f"u{n:04}",
                title=f"Unit {n:04}",
                issued="2026-01-01",
                licence="CC-BY-4.0",
                parts=(),
                years=tuple(("England", year) for year in years),
                words={
                    heading: tuple(word for word in words if draw.random() < often[heading, word])
                    for heading, words in HEADINGS.items()
                },
                links=(),
                topics=(),
                lessons=draw.choice((1, 3, 4, 5, 6, 6)),
                builds_on=() if earlier is None else (f"u{earlier:04}",),
                leads_to=(),
            )
        )
    return units


def timed(name: str, units: list[Covers], slots: int) -> None:
    asked = Asked(("England", "4"), tuple(Slot("Term", 6) for _ in range(slots)))
    wall, cores = time.perf_counter(), time.process_time()
    plan = year_plan(units, asked)
    wall, cores = time.perf_counter() - wall, time.process_time() - cores
    assert isinstance(plan, YearPlan)
    has = sum(number > 0 for number in plan.met.values())
    print(
        f"{name}, {slots} slots: {len(plan.units)} units for the year, {has} of {len(plan.met)} "
        f"words, {wall:.1f} s wall, {cores:.1f} core-seconds"
    )


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--units", type=int, default=1500)
    number: int = parser.parse_args().units
    for seed in (1, 2):
        for slots in (3, 6):
            timed(f"bank {seed}, years in turn", made(number, False, seed), slots)
    timed("bank 1, all for one year", made(number, True, 1), 3)


if __name__ == "__main__":
    main()
