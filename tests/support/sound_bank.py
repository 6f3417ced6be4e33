"""The real bank, sound as it is, for tests that look at what is made of it.

It is read and built without its rules, which are asked of it elsewhere: many files of tests name
its units while they are gathered, once for each worker.
"""

from __future__ import annotations

import os
from dataclasses import replace
from functools import cache
from pathlib import Path

from build_tools.checking.check_bank import check_shape
from build_tools.model.bank import Bank
from build_tools.model.build import build_unit
from build_tools.model.build_bank import build_bank
from build_tools.model.unit import Unit
from build_tools.source.folder import read_bank_files, read_unit_folder, unit_slugs
from tests.support.banks import CONTENT, LOOKED_AT, ROOT, THOROUGH, UNIT

UNUSUAL = ROOT / "tests" / "unusual_units"


def _bank_in(root: Path) -> Bank:
    documents, problems = read_bank_files(root)
    slugs, odd = unit_slugs(root)
    problems += odd
    units = []
    for slug in slugs:
        folder = read_unit_folder(root, slug)
        problems += [*folder.problems, *check_shape(folder)]
        assert folder.unit is not None
        units.append(build_unit(slug, folder.unit, folder.lessons, folder.media))
    assert problems == []
    assert units
    return build_bank(documents, units)


@cache
def whole_bank() -> Bank:
    """The bank in content/, with every published unit."""
    return _bank_in(CONTENT)


@cache
def real_bank() -> Bank:
    """The bank in content/ with the units that are looked at closely; in the long run, with all."""
    bank = whole_bank()
    if os.environ.get(THOROUGH):
        return bank
    return replace(bank, units=tuple(unit for unit in bank.units if unit.slug in LOOKED_AT))


@cache
def real_unit() -> Unit:
    """The unit that most tests look at."""
    (unit,) = (unit for unit in real_bank().units if unit.slug == UNIT)
    return unit


@cache
def every_unit() -> tuple[Unit, ...]:
    """The units of the real bank that are looked at, and those of unusual shape."""
    return (*real_bank().units, *unusual_bank().units)


@cache
def unusual_bank() -> Bank:
    """The bank in tests/unusual_units/, whose units have a shape that no published one has."""
    return _bank_in(UNUSUAL)


def unit_named(slug: str) -> Unit:
    """The published unit of that name, whichever units are looked at closely."""
    return next(unit for unit in whole_bank().units if unit.slug == slug)
