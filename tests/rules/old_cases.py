"""The cases of the rules: a case's files laid over the base unit, and what is expected of them."""

from __future__ import annotations

import re
import shutil
from dataclasses import dataclass
from pathlib import Path

from build_tools.checking.check_bank import check_bank_files, check_unit, sign
from build_tools.model.build_bank import outline_bank, outline_unit
from build_tools.model.unit import Unit
from build_tools.problem import Problem
from build_tools.rules.catalogue import all_rules, rule_named
from build_tools.rules.engine import run_rules
from build_tools.rules.rule import Finding, Rule
from build_tools.source.document import Document
from build_tools.source.folder import read_unit_folder, unit_slugs

HERE = Path(__file__).parent
BASE = HERE / "base"
_MARK = re.compile(r"# expect: ([a-z0-9-]+)\s*$")

Place = tuple[str, int, str]
"""A file, a line from 1 and a rule's name."""


@dataclass(frozen=True, slots=True)
class Case:
    """One folder of files that differ from the base; it is bad if its name says so."""

    rule: str
    folder: Path

    @property
    def bad(self) -> bool:
        return self.folder.name.startswith("bad")

    def __str__(self) -> str:
        return f"{self.rule}/{self.folder.name}"


def all_cases() -> list[Case]:
    return [
        Case(folder.parent.name, folder)
        for folder in sorted(HERE.glob("*/*/*"))
        if folder.is_dir() and folder.name.startswith(("bad", "good"))
    ]


def expected(case: Case) -> set[Place]:
    """What the marks in the case's files say is found, and where."""
    found: set[Place] = set()
    for path in sorted(case.folder.rglob("*.md")):
        file = path.relative_to(case.folder).as_posix()
        for number, line in enumerate(path.read_text(encoding="utf-8").split("\n"), start=1):
            if mark := _MARK.search(line):
                found.add((file, number, mark.group(1)))
    return found


def laid_over_base(case: Case, folder: Path) -> Path:
    """The base with the case's files over it, written into `folder`."""
    shutil.copytree(BASE, folder, dirs_exist_ok=True)
    shutil.copytree(case.folder, folder, dirs_exist_ok=True)
    return folder


def sound_units(root: Path) -> tuple[list[Unit], dict[str, Document]]:
    """The units of a folder whose files can all be read and fit their schemas."""
    files = check_bank_files(root)
    assert files.problems == ()
    slugs, problems = unit_slugs(root)
    assert problems == []
    units, documents = [], dict(files.documents)
    for slug in slugs:
        unit = check_unit(root, slug, {}).unit
        assert unit is not None
        units.append(unit)
        documents |= read_unit_folder(root, slug).by_file()
    return units, documents


def with_needs(name: str) -> list[Rule]:
    """The rule and every rule it needs, those first."""
    wanted, waiting = set(), [name]
    while waiting:
        rule = rule_named(waiting.pop())
        assert rule is not None
        wanted.add(rule.name)
        waiting += rule.needs
    return [rule for rule in all_rules() if rule.name in wanted]


def findings(root: Path, rules: list[Rule]) -> list[tuple[Rule, Finding, Problem]]:
    """What `rules` find in the folder, each as it was found and as it is reported."""
    units, documents = sound_units(root)
    found = [pair for unit in units for pair in run_rules(unit, rules).found]
    outlines = [outline_unit(unit) for unit in units]
    bank = outline_bank(documents, outlines, [unit.slug for unit in units])
    found += [
        (rule, finding)
        for rule in rules
        if rule.check_bank is not None
        for finding in rule.check_bank(bank)
    ]
    return [(rule, finding, sign(documents, rule, finding, {})) for rule, finding in found]
