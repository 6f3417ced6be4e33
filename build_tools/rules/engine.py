"""Rules run on one unit: what is found, what the unit allows, what could not be run."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from build_tools.model.unit import Unit
from build_tools.rules.allowances import stale_allowances
from build_tools.rules.rule import Finding, Rule


@dataclass(slots=True)
class Outcome:
    """What the rules say of one unit. `skipped` counts rules whose ground was broken."""

    found: list[tuple[Rule, Finding]] = field(default_factory=list)
    allowed: list[tuple[Rule, Finding]] = field(default_factory=list)
    stale: list[Finding] = field(default_factory=list)
    skipped: int = 0


def run_rules(unit: Unit, rules: Iterable[Rule]) -> Outcome:
    """Run `rules` on `unit`, those that others need first; rules for the whole bank are left."""
    outcome = Outcome()
    broken: set[str] = set()
    used: set[str] = set()
    for rule in rules:
        if rule.check is None:
            continue
        if broken.intersection(rule.needs):
            outcome.skipped += 1
            broken.add(rule.name)
            continue
        findings = [(rule, finding) for finding in rule.check(unit)]
        if not findings:
            continue
        broken.add(rule.name)
        if rule.name in unit.allow:
            used.add(rule.name)
            outcome.allowed += findings
        else:
            outcome.found += findings
    outcome.stale = list(stale_allowances(unit, used, broken))
    return outcome
