"""The real bank, sound as it is, for tests that look at what is made of it."""

from __future__ import annotations

from functools import cache

from build_tools.checking.check_bank import check_folder
from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from tests.support.banks import CONTENT, ROOT, UNIT


@cache
def real_bank() -> Bank:
    """The bank in content/."""
    bank = check_folder(CONTENT).bank
    assert bank is not None
    assert bank.units
    return bank


@cache
def real_unit() -> Unit:
    """The unit that most tests look at."""
    (unit,) = (unit for unit in real_bank().units if unit.slug == UNIT)
    return unit


@cache
def every_unit() -> tuple[Unit, ...]:
    """The published units and those of unusual shape."""
    unusual = check_folder(ROOT / "tests" / "unusual_units").bank
    assert unusual is not None
    return (*real_bank().units, *unusual.units)
