"""Rules a unit breaks on purpose: an allowance that is no longer needed is itself a problem."""

from __future__ import annotations

from collections.abc import Iterator

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
    something or could not run.
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
        elif name not in used and name not in broken:
            yield Finding(
                unit.file,
                ("allow", name),
                f"`{name}` is allowed, but the unit no longer breaks that rule",
                "delete the line",
            )
