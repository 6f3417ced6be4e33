"""A unit as lists of the bank show it: as a card, with what it is found by."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.pages.pieces.unit_card import UnitCard, first_picture, unit_card
from build_tools.views.finding.findable import Findable, findable


@dataclass(frozen=True, slots=True)
class Shelved:
    """One unit on the shelves; it can be kept without the unit."""

    found: Findable
    """What it is found by."""
    card: UnitCard
    """How it is shown, for a page in the site's top folder."""
    picture_size: int
    """How many bytes its first picture has; 0 where it has none."""


def shelved(bank: Bank, unit: Unit) -> Shelved:
    """What lists say of `unit`."""
    shown = first_picture(unit)
    size = unit.media.get(shown.file or "", 0) if shown else 0
    return Shelved(findable(bank, unit), unit_card(bank, unit), size)
