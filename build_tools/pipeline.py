"""From a content folder to a bank of sound units and a report. Nothing here prints or exits."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path as FilePath

from build_tools.model.bank import Bank
from build_tools.model.build import build_unit
from build_tools.model.build_bank import build_bank
from build_tools.model.unit import Unit
from build_tools.problem import Grade, Problem
from build_tools.rules.catalogue import all_rules
from build_tools.rules.engine import run_rules
from build_tools.rules.rule import Finding, Rule
from build_tools.schema_check.check import check_document
from build_tools.schema_check.schemas import Kind
from build_tools.schema_check.wording import nearest
from build_tools.source.document import Document
from build_tools.source.folder import Content, UnitFolder, read_content

BANK_KINDS: dict[str, Kind] = {
    "bank.yml": "bank",
    "vocabulary/topics.yml": "topics",
    "vocabulary/words.yml": "words",
    "safety.md": "safety",
}


@dataclass(frozen=True, slots=True)
class Allowance:
    """A problem that the unit allows, with the author's reason."""

    problem: Problem
    reason: str


@dataclass(frozen=True, slots=True)
class Report:
    """Everything that one check found.

    `bank` holds the units whose files are sound, and is None where the bank's own files are not.
    `skipped` counts rules not run because the ground under them was broken.
    """

    bank: Bank | None
    problems: tuple[Problem, ...]
    allowances: tuple[Allowance, ...]
    skipped: int

    def of_grade(self, grade: Grade) -> tuple[Problem, ...]:
        """The problems of one grade."""
        return tuple(p for p in self.problems if p.severity == grade)


def check_folder(root: FilePath) -> Report:
    """Read and check the content folder `root`."""
    content = read_content(root)
    documents = documents_by_file(content)
    problems = list(content.problems)
    for file, document in content.bank.items():
        problems += check_document(document, BANK_KINDS[file])
    bank_is_sound = set(content.bank) == set(BANK_KINDS) and not any(
        p.file in BANK_KINDS for p in problems
    )
    grades: dict[str, Grade] = {}
    if bank_is_sound:
        grades = dict(content.bank["bank.yml"].data.get("grades", {}))
        problems += _unknown_grades(content.bank["bank.yml"], grades)
    sound: list[Unit] = []
    allowances: list[Allowance] = []
    skipped = 0
    for folder in content.units:
        problems += check_shape(folder)
        unit = sound_unit(folder)
        if unit is None:
            skipped += sum(rule.check is not None for rule in all_rules())
            continue
        sound.append(unit)
        outcome = run_rules(unit, all_rules())
        problems += [sign(documents, rule, f, grades) for rule, f in outcome.found]
        problems += [_stale(documents, f) for f in outcome.stale]
        allowances += [
            Allowance(sign(documents, rule, f, grades), unit.allow[rule.name])
            for rule, f in outcome.allowed
        ]
        skipped += outcome.skipped
    bank = build_bank(content.bank, sound) if bank_is_sound else None
    if bank is not None:
        for rule in all_rules():
            if rule.check_bank is not None:
                problems += [sign(documents, rule, f, grades) for f in rule.check_bank(bank)]
    return Report(bank, tuple(sorted(set(problems))), tuple(allowances), skipped)


def documents_by_file(content: Content) -> dict[str, Document]:
    """Every document that could be read, by its file."""
    found = dict(content.bank)
    for folder in content.units:
        for document in (folder.unit, *folder.lessons):
            if document is not None:
                found[document.file] = document
    return found


def check_shape(folder: UnitFolder) -> list[Problem]:
    """The problems of a unit's files against their schemas."""
    problems = check_document(folder.unit, "unit") if folder.unit else []
    for lesson in folder.lessons:
        problems += check_document(lesson, "lesson")
    return problems


def sound_unit(folder: UnitFolder) -> Unit | None:
    """The unit in `folder`, or None where a file of it is missing, unread or out of shape."""
    if folder.unit is None or not folder.lessons or not folder.whole or check_shape(folder):
        return None
    return build_unit(folder.slug, folder.unit, folder.lessons, folder.media)


def sign(
    documents: Mapping[str, Document], rule: Rule, finding: Finding, grades: Mapping[str, Grade]
) -> Problem:
    """A finding with its rule, its grade in this bank, and its line and column."""
    return documents[finding.file].problem(
        rule.name,
        grades.get(rule.name, rule.grade),
        finding.path,
        finding.message,
        finding.help,
    )


def _stale(documents: Mapping[str, Document], finding: Finding) -> Problem:
    return documents[finding.file].problem(
        "allowance-stale", "error", finding.path, finding.message, finding.help
    )


def _unknown_grades(document: Document, grades: Mapping[str, Grade]) -> list[Problem]:
    names = {rule.name for rule in all_rules()}
    found = []
    for name in grades:
        if name not in names:
            near = nearest(name, names)
            help_ = f"did you mean `{near}`?" if near else "delete the line"
            message = f"`{name}` is graded, but there is no rule of that name"
            path = ("grades", name)
            found.append(document.problem("unknown-name", "error", path, message, help_))
    return found
