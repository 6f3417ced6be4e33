"""`explain`: what a rule wants, why a teacher cares, and an example."""

from __future__ import annotations

from build_tools.misuse import Misuse
from build_tools.rules.allowances import ALLOWANCE_STALE
from build_tools.rules.catalogue import all_rules
from build_tools.schema_check.faults import SHAPE_FAULTS
from build_tools.schema_check.wording import nearest
from build_tools.source.faults import READING_FAULTS


def run(name: str | None) -> int:
    """Print the manual of one rule, or the list of all. Raises Misuse for an unknown name."""
    manuals = {rule.name: rule.manual for rule in all_rules()}
    signed = {rule.name: (rule.grade, rule.source) for rule in all_rules()}
    plain = {**READING_FAULTS, **SHAPE_FAULTS, **ALLOWANCE_STALE}
    if name is None:
        for each in sorted({**manuals, **plain}):
            first_line = {**plain, **manuals}[each].strip().splitlines()[0]
            print(f"{each}\n    {first_line}")
        return 0
    if name in manuals:
        grade, source = signed[name]
        print(f"{name} ({grade})\n\n{manuals[name].strip()}\n\nSource: {source}")
    elif name in plain:
        print(f"{name} (error)\n\n{plain[name].strip()}")
    else:
        near = nearest(name, [*manuals, *plain])
        hint = f'did you mean "{near}"?' if near else "`explain` alone lists them all"
        raise Misuse(f"there is no rule {name}; {hint}")
    return 0
