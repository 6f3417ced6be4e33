"""Explaining the rules: what each wants, why a teacher cares, and an example."""

from __future__ import annotations

from collections.abc import Mapping

from build_tools.misuse import Misuse
from build_tools.rules.allowances import ALLOWANCE_STALE
from build_tools.rules.catalogue import all_rules
from build_tools.schema_check.faults import SHAPE_FAULTS
from build_tools.schema_check.wording import nearest
from build_tools.source.faults import READING_FAULTS

_OF_FILES: Mapping[str, str] = {**READING_FAULTS, **SHAPE_FAULTS, **ALLOWANCE_STALE}
"""What may be wrong before any rule is asked, by name."""

_LEFT_OUT = "Where … stands in an example, more may be written; it is left out here."


def first_lines() -> dict[str, str]:
    """The first line of every manual, by the rule's name."""
    manuals = {**_OF_FILES, **{rule.name: rule.manual for rule in all_rules()}}
    return {name: manuals[name].strip().splitlines()[0] for name in sorted(manuals)}


def manual(name: str) -> str:
    """The whole manual of one rule, with its grade. Raises Misuse for an unknown name."""
    rules = {rule.name: rule for rule in all_rules()}
    if name in rules:
        rule = rules[name]
        parts = [f"{name} ({rule.grade})", rule.manual.strip(), f"Source: {rule.source}"]
        parts[2:2] = [_LEFT_OUT] if "…" in rule.manual else []
        return "\n\n".join(parts)
    if name in _OF_FILES:
        return f"{name} (error)\n\n{_OF_FILES[name].strip()}"
    near = nearest(name, [*rules, *_OF_FILES])
    hint = f'did you mean "{near}"?' if near else "`explain` alone lists them all"
    raise Misuse(f"there is no rule {name}; {hint}")
