"""Faults planted in every sound unit they fit, and what all the unit rules say of each copy."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from build_tools.model.bank import UnitOutline
from build_tools.model.build_bank import outline_bank, outline_unit
from build_tools.rules.catalogue import all_rules
from build_tools.rules.engine import run_rules
from build_tools.rules.rule import Rule
from build_tools.schema_check.check import check_document
from build_tools.source.folder import read_bank_files, unit_slugs
from build_tools.source.front_matter import NOTES, Document
from tests.planted.faults import Planted
from tests.planted.registry import FAULTS
from tests.planted.unit_edits import EditableUnit, load
from tests.rules.contents import with_needs
from tests.support.banks import LOOKED_AT

ROOT = Path(__file__).resolve().parents[2]
BASE = ROOT / "tests/rules/base"
UNUSUAL = (
    "clock-shop-sounds",
    "improvised-weather",
    "learned-market-dance",
    "reception-toys",
    "round-live-drums",
    "silent-statues",
    "three-lessons-kites",
    "two-sections-bakery",
)
SOUND = (
    *((ROOT / "content", slug) for slug in LOOKED_AT),
    *((BASE, slug) for slug in unit_slugs(BASE)[0]),
    *((ROOT / "tests/unusual_units", slug) for slug in UNUSUAL),
)


@dataclass(frozen=True, slots=True)
class Outcome:
    """One copy with a fault: the place it was planted at, and where its rule reported."""

    fault: Planted
    slug: str
    file: str
    line: int
    misshapen: tuple[str, ...]
    reported: frozenset[tuple[str, int]]

    @property
    def key(self) -> str:
        """The fault and the unit it was planted in."""
        return f"{self.fault.plant.__name__} in {self.slug}"

    @property
    def found(self) -> bool:
        """Whether the right rule reports at the right line."""
        return (self.file, self.line) in self.reported and not self.misshapen


@cache
def sound_units() -> tuple[EditableUnit, ...]:
    """Each sound unit, read once; planting works on copies."""
    return tuple(load(root, slug) for root, slug in SOUND)


def reported(
    unit: EditableUnit, rules: Sequence[Rule]
) -> tuple[dict[str, set[tuple[str, int]]], tuple[str, ...]]:
    """Where each rule reports on the unit as it stands, and what is wrong with its shape."""
    own, lessons = unit.written()
    problems = check_document(own, "unit")
    for lesson in lessons:
        problems += check_document(lesson, "lesson")
    if problems:
        return {}, tuple(f"{p.file}:{p.line} {p.message}" for p in problems)
    documents = {document.file: document for document in (own, *lessons)}
    found: dict[str, set[tuple[str, int]]] = {}
    for rule, finding in run_rules(unit.built(own, lessons), rules).found:
        line = documents[finding.file].locate(finding.path)[0]
        found.setdefault(rule.name, set()).add((finding.file, line))
    for rule_name, finding_place in _bank_wide(unit, own, lessons, rules):
        found.setdefault(rule_name, set()).add(finding_place)
    return found, ()


def _bank_wide(
    unit: EditableUnit, own: Document, lessons: list[Document], rules: Sequence[Rule]
) -> Iterator[tuple[str, tuple[str, int]]]:
    """What the rules for the whole bank say of the unit beside the other sound units."""
    if all(rule.check_bank is None for rule in rules):
        return
    outlines = [o for o in _outlines() if o.slug != unit.slug]
    outlines.append(outline_unit(unit.built(own, lessons)))
    folders = [outline.slug for outline in outlines]
    bank = outline_bank(read_bank_files(unit.root)[0], outlines, folders)
    for rule in rules:
        for finding in rule.check_bank(bank) if rule.check_bank else ():
            if finding.file == unit.file:
                yield rule.name, (finding.file, own.locate(finding.path)[0])


@cache
def _outlines() -> tuple[UnitOutline, ...]:
    return tuple(outline_unit(unit.built(*unit.written())) for unit in sound_units())


@cache
def rules_before(slug: str) -> frozenset[str]:
    """The rules that report on the unit before anything is planted."""
    unit = next(unit for unit in sound_units() if unit.slug == slug)
    return frozenset(reported(unit, all_rules())[0])


def outcomes(fault: Planted) -> Iterator[Outcome]:
    """The fault in each sound unit that it fits and whose copy its rule was silent on.

    One fault begins with one unit and the next with the next, so that whoever looks at a few
    outcomes of each sees every unit.
    """
    turn = FAULTS.index(fault) % len(SOUND)
    for sound in (*sound_units()[turn:], *sound_units()[:turn]):
        if fault.rule in rules_before(sound.slug):
            continue
        unit = sound.copied()
        place = fault.plant(unit)
        if place is None:
            continue
        unit.tidy()
        own, lessons = unit.written()
        document = next(d for d in (own, *lessons) if d.file == place[0])
        if place[1][:1] == (NOTES,):
            assert document.body.split("\n")[int(place[1][1])]
        else:
            unit.get(place[0], place[1])  # the place itself is there, not only one around it
        found, misshapen = reported(unit, with_needs(fault.rule))
        yield Outcome(
            fault,
            sound.slug,
            place[0],
            document.locate(place[1])[0],
            misshapen,
            frozenset(found.get(fault.rule, ())),
        )


def faults_of(rule: str) -> list[Planted]:
    """The planted faults of one rule."""
    return [fault for fault in FAULTS if fault.rule == rule]
