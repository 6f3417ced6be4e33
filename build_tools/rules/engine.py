"""Rules run on a unit or the bank: what is found, what a unit allows, what could not be run."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from build_tools.model.bank import BankOutline
from build_tools.model.unit import Unit
from build_tools.movement.not_danceable import NotDanceable
from build_tools.rules.allowances import stale_allowances, stale_in_bank
from build_tools.rules.ground import GROUND
from build_tools.rules.rule import Finding, Rule
from build_tools.rules.said_of_the_first import without_repeats


@dataclass(slots=True)
class Outcome:
    """What the rules say. `skipped` counts rules whose ground was broken."""

    found: list[tuple[Rule, Finding]] = field(default_factory=list)
    allowed: list[tuple[Rule, Finding]] = field(default_factory=list)
    stale: list[Finding] = field(default_factory=list)
    skipped: int = 0
    unread: int = 0
    """How many rules were not asked, since they read sentences of another language."""


def run_rules(unit: Unit, rules: Iterable[Rule]) -> Outcome:
    """Run `rules` on `unit`, those that others need first; rules for the whole bank are left.

    Where the ground under all is broken, a rule that cannot go on is skipped, whether or not it
    says that it needs that ground.

    A rule that reads sentences is left too where the unit is written in another language; what a
    unit allows of it is not called stale.
    """
    outcome = Outcome()
    language = unit.language.partition("-")[0].lower()
    unread: set[str] = set()
    broken: set[str] = set()
    used: set[str] = set()
    for rule in sorted(rules, key=lambda one: one.name not in GROUND):
        if rule.check is None:
            continue
        if rule.reads and language != rule.reads:
            unread.add(rule.name)
            continue
        if broken.intersection(rule.needs):
            outcome.skipped += 1
            broken.add(rule.name)
            continue
        try:
            yielded = list(rule.check(unit))
        except (NotDanceable, LookupError):
            if not broken & GROUND:
                raise
            outcome.skipped += 1
            broken.add(rule.name)
            continue
        findings = [(rule, found) for found in without_repeats(unit, yielded)]
        if not findings:
            continue
        broken.add(rule.name)
        if rule.name in unit.allow and rule.name not in GROUND:
            used.add(rule.name)
            outcome.allowed += findings
        else:
            outcome.found += findings
    outcome.unread = len(unread)
    outcome.stale = list(stale_allowances(unit, used, broken | unread))
    return outcome


def run_bank_rules(bank: BankOutline, rules: Iterable[Rule]) -> Outcome:
    """Run those of `rules` that look at the whole bank; a unit may allow what points at it.

    While a unit of the bank is not sound, what it would bring is not known, and no allowance is
    called stale.
    """
    outcome = Outcome()
    units = {unit.file: unit for unit in bank.units}
    used: dict[str, set[str]] = {file: set() for file in units}
    for rule in rules:
        for finding in rule.check_bank(bank) if rule.check_bank else ():
            if finding.file in units and rule.name in units[finding.file].allow:
                used[finding.file].add(rule.name)
                outcome.allowed.append((rule, finding))
            else:
                outcome.found.append((rule, finding))
    if bank.folders == {unit.slug for unit in bank.units}:
        for file, unit in units.items():
            outcome.stale += stale_in_bank(unit, used[file])
    return outcome
