"""How well the rules that read sentences know their faults: precision and recall, by rule.

    .venv/bin/python -m tests.wordings.measure                  the lists of all writers together
    .venv/bin/python -m tests.wordings.measure --misses [RULE]  and the texts they are wrong about
    .venv/bin/python -m tests.wordings.measure --lists FOLDER   one writer's, in the same settings

Recall: of the faulty texts, how many are found. Precision: of the texts found, how many are faulty.
"""

from __future__ import annotations

import argparse
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from tests.wordings.lists import Wordings, all_wordings, fires


@dataclass(frozen=True, slots=True)
class Measure:
    """Counts of texts: found and faulty, found and sound, faulty and not found."""

    right: int
    alarms: tuple[str, ...]
    missed: tuple[str, ...]

    @property
    def precision(self) -> float:
        found = self.right + len(self.alarms)
        return self.right / found if found else 1.0

    @property
    def recall(self) -> float:
        faulty = self.right + len(self.missed)
        return self.right / faulty if faulty else 1.0


def measure(wordings: Wordings) -> Measure:
    found = [text for text in wordings.faulty if fires(wordings, text)]
    return Measure(
        right=len(found),
        alarms=tuple(text for text in wordings.sound if fires(wordings, text)),
        missed=tuple(text for text in wordings.faulty if text not in found),
    )


def together(measures: Iterable[Measure]) -> Measure:
    kept = list(measures)
    return Measure(
        right=sum(one.right for one in kept),
        alarms=tuple(text for one in kept for text in one.alarms),
        missed=tuple(text for one in kept for text in one.missed),
    )


def by_rule(*lists: Path) -> dict[str, Measure]:
    """The measure of each rule, over all its lists in the folders, or those of all writers."""
    found: dict[str, list[Measure]] = {}
    for wordings in all_wordings(*lists):
        found.setdefault(wordings.rule.name, []).append(measure(wordings))
    return {name: together(measures) for name, measures in sorted(found.items())}


def _line(name: str, one: Measure) -> str:
    wrong = f"{len(one.missed)} missed, {len(one.alarms)} false alarms"
    return f"{name:36} precision {one.precision:4.2f}   recall {one.recall:4.2f}   {wrong}"


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--lists", type=Path, nargs="*", default=())
    parser.add_argument("--misses", nargs="?", const="", metavar="RULE")
    asked = parser.parse_args()
    measures = by_rule(*asked.lists)
    for name, one in measures.items():
        if asked.misses and asked.misses != name:
            continue
        print(_line(name, one))
        if asked.misses is not None:
            for text in one.missed:
                print(f"    missed: {text}")
            for text in one.alarms:
                print(f"    alarm:  {text}")
    print(_line("all of them", together(measures.values())))


if __name__ == "__main__":
    main()
