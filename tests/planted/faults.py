"""What a planted fault is: the rule that finds it, the kind of edit, and the edit itself."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from tests.planted.unit_edits import EditableUnit, Place

Plant = Callable[[EditableUnit], Place | None]
"""Edits a unit and says where the fault is to be reported; None if it cannot be planted there."""


@dataclass(frozen=True, slots=True)
class Planted:
    """One way to break one rule. `edit` is drop, set, move, swap, stretch, repeat or insert."""

    rule: str
    edit: str
    plant: Plant


class Registry:
    """The planted faults of one family."""

    def __init__(self) -> None:
        self.faults: list[Planted] = []

    def __call__(self, rule: str, edit: str) -> Callable[[Plant], Plant]:
        """Put the function below into the registry."""

        def keep(plant: Plant) -> Plant:
            self.faults.append(Planted(rule, edit, plant))
            return plant

        return keep
