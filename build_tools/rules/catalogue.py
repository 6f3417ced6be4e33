"""Every rule there is, found by walking the families' folders: no list to keep."""

from __future__ import annotations

import importlib
import pkgutil
from functools import cache
from graphlib import TopologicalSorter
from pathlib import Path
from types import ModuleType

from build_tools.problem import GRADES
from build_tools.rules.rule import Rule


class RuleMistake(Exception):  # noqa: N818 - it is about a rule, not about content
    """A rule itself is written wrongly; no fault of any unit."""


@cache
def all_rules() -> tuple[Rule, ...]:
    """Every rule, those that others need first, otherwise by name."""
    found: dict[str, Rule] = {}
    here = Path(__file__).parent
    for family in sorted(pkgutil.iter_modules([str(here)]), key=lambda m: m.name):
        if not family.ispkg:
            continue
        for module in pkgutil.iter_modules([str(here / family.name)]):
            rule = _read(family.name, module.name)
            if rule.name in found:
                raise RuleMistake(f"two rules are named {rule.name}")
            found[rule.name] = rule
    order = TopologicalSorter({name: sorted(found[name].needs) for name in sorted(found)})
    names = list(order.static_order())
    if unknown := [n for n in names if n not in found]:
        raise RuleMistake(f"a rule needs {unknown[0]}, which is no rule")
    return tuple(found[name] for name in names)


def rule_named(name: str) -> Rule | None:
    """The rule called `name`, if there is one."""
    return next((rule for rule in all_rules() if rule.name == name), None)


def _read(family: str, module_name: str) -> Rule:
    module: ModuleType = importlib.import_module(f"build_tools.rules.{family}.{module_name}")
    check = getattr(module, "check", None)
    check_bank = getattr(module, "check_bank", None)
    grade = getattr(module, "GRADE", None)
    if (check is None) == (check_bank is None):
        raise RuleMistake(f"{module.__file__}: write exactly one of check and check_bank")
    if grade not in GRADES or not module.__doc__ or not getattr(module, "SOURCE", ""):
        grades = ", ".join(GRADES)
        raise RuleMistake(f"{module.__file__}: state GRADE ({grades}), SOURCE and a docstring")
    return Rule(
        name=module_name.replace("_", "-"),
        family=family,
        grade=grade,
        needs=tuple(getattr(module, "NEEDS", ())),
        source=module.SOURCE,
        manual=module.__doc__,
        reads=getattr(module, "READS", None),
        check=check,
        check_bank=check_bank,
    )
