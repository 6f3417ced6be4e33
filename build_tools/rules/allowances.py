"""Rules a unit breaks on purpose: an allowance that is no longer needed is itself a problem."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from build_tools.model.bank import UnitOutline
from build_tools.model.unit import Unit
from build_tools.rules.catalogue import all_rules
from build_tools.rules.rule import Finding
from build_tools.schema_check.wording import nearest

ALLOWANCE_STALE = {
    "allowance-stale": "What a unit allows, it still needs to allow.\n\nAn allowance that nothing "
    "needs would hide the next fault of that kind."
}


def stale_allowances(unit: Unit, used: set[str], broken: set[str]) -> Iterator[Finding]:
    """Yield a finding for each allowance of no rule, or of a rule the unit no longer breaks.

    `used` names the rules that found something the unit allows, `broken` those that found
    something or could not run. Rules for the whole bank are left to `stale_in_bank`.
    """
    names = {rule.name for rule in all_rules()}
    for name in unit.allow:
        if name not in names:
            near = nearest(name, names)
            yield Finding(
                unit.file,
                ("allow", name),
                f"`{name}` is allowed, but there is no rule of that name",
                f"did you mean `{near}`?" if near else "delete the line",
            )
        elif name not in used | broken | _bank_wide():
            yield _not_needed(unit.file, name)


def stale_in_bank(unit: UnitOutline, used: set[str]) -> Iterator[Finding]:
    """Yield a finding for each allowance of a rule for the whole bank that found nothing here."""
    for name in unit.allow:
        if name in _bank_wide() and name not in used:
            yield _not_needed(unit.file, name)


@cache
def _bank_wide() -> frozenset[str]:
    """The names of the rules for the whole bank."""
    return frozenset(rule.name for rule in all_rules() if rule.check_bank is not None)


def _not_needed(file: str, name: str) -> Finding:
    return Finding(
        file,
        ("allow", name),
        f"`{name}` is allowed, but the unit no longer breaks that rule",
        "delete the line",
    )
