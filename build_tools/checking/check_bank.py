"""From a content folder to a bank of sound units and a report. Nothing here prints or exits."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path

from build_tools.checking.move_lines_read import move_lines_read
from build_tools.model.bank import Bank, UnitOutline
from build_tools.model.build import build_unit
from build_tools.model.build_bank import build_bank, outline_bank, outline_unit
from build_tools.model.unit import Unit
from build_tools.problem import Grade, Problem
from build_tools.rules.catalogue import all_rules
from build_tools.rules.engine import run_bank_rules, run_rules
from build_tools.rules.ground import GROUND
from build_tools.rules.rule import Finding, Rule
from build_tools.schema_check.check import check_document
from build_tools.schema_check.formats import FIRST, newer_fields
from build_tools.schema_check.wording import nearest
from build_tools.shapes.schemas import Kind
from build_tools.source.file_names import ODD
from build_tools.source.folder import (
    MAY_BE_MISSING,
    UnitFolder,
    read_bank_files,
    read_unit_folder,
    unit_slugs,
)
from build_tools.source.front_matter import Document
from build_tools.source.lines_run_together import lines_run_together
from build_tools.source.other_programs import notes_for_others
from build_tools.source.shared_pictures import LIST as SHARED_LIST
from build_tools.source.shared_pictures import problems_of_list, unused

BANK_KINDS: dict[str, Kind] = {
    "bank.yml": "bank",
    "vocabulary/topics.yml": "topics",
    "vocabulary/words.yml": "words",
    "vocabulary/near.yml": "near",
    SHARED_LIST: "pictures",
    "safety.md": "safety",
}


@dataclass(frozen=True, slots=True)
class Allowance:
    """A problem that the unit allows, with the author's reason."""

    problem: Problem
    reason: str


@dataclass(frozen=True, slots=True)
class BankFiles:
    """The bank's own files: its documents, what is wrong with them, and its grades.

    `sound` is false where a file of the bank is missing or out of shape.
    """

    documents: Mapping[str, Document]
    problems: tuple[Problem, ...]
    grades: Mapping[str, Grade]
    sound: bool


@dataclass(frozen=True, slots=True)
class UnitCheck:
    """What one unit's own files and rules say.

    `unit` and `outline` are None where a file of it is missing, unread or out of shape; `skipped`
    counts the rules that were not run because the ground under them was broken.
    """

    slug: str
    unit: Unit | None
    outline: UnitOutline | None
    problems: tuple[Problem, ...]
    allowances: tuple[Allowance, ...]
    skipped: int
    shares: bool = False
    """Whether it names pictures that units of the bank share."""


@dataclass(frozen=True, slots=True)
class Together:
    """What the rules for the whole bank say, and what of it units allow."""

    problems: tuple[Problem, ...] = ()
    allowances: tuple[Allowance, ...] = ()


@dataclass(frozen=True, slots=True)
class Report:
    """Everything that one check found.

    `bank` holds the units whose files are sound, and is None where the bank's own files are not.
    """

    bank: Bank | None
    problems: tuple[Problem, ...]
    allowances: tuple[Allowance, ...]
    skipped: int

    def of_grade(self, grade: Grade) -> tuple[Problem, ...]:
        """The problems of one grade."""
        return tuple(p for p in self.problems if p.severity == grade)


def check_folder(root: Path) -> Report:
    """Read and check the content folder `root`, keeping every sound unit."""
    files = check_bank_files(root)
    slugs, problems = unit_slugs(root)
    checks = [check_unit(root, slug, files.grades) for slug in slugs]
    units = [check.unit for check in checks if check.unit is not None]
    found = [*files.problems, *problems, *(p for check in checks for p in check.problems)]
    outlines = [check.outline for check in checks if check.outline is not None]
    together = check_together(root, files, slugs, outlines)
    found += together.problems
    own = [allowance for check in checks for allowance in check.allowances]
    return Report(
        bank=build_bank(files.documents, units) if files.sound else None,
        problems=tuple(sorted(set(found))),
        allowances=(*own, *together.allowances),
        skipped=sum(check.skipped for check in checks),
    )


def check_bank_files(root: Path) -> BankFiles:
    """Read and check the bank's own files."""
    documents, problems = read_bank_files(root)
    for file, document in documents.items():
        problems += check_document(document, BANK_KINDS[file])
    sound = set(BANK_KINDS) - MAY_BE_MISSING <= set(documents) and not problems
    problems += _notes(documents.values())
    if sound:
        problems += problems_of_list(root, documents.get(SHARED_LIST))
    grades: dict[str, Grade] = {}
    if sound:
        grades = dict(documents["bank.yml"].data.get("grades", {}))
        problems += _unknown_grades(documents["bank.yml"], grades)
    return BankFiles(documents, tuple(problems), grades, sound)


def _notes(documents: Iterable[Document]) -> list[Problem]:
    """How files were read, where they were typed otherwise than they are read."""
    return [
        note
        for one in documents
        for note in (*one.read_as(), *notes_for_others(one), *lines_run_together(one))
    ]


def check_unit(root: Path, slug: str, grades: Mapping[str, Grade]) -> UnitCheck:
    """Read and check the unit in the folder `slug` by everything that needs no other unit."""
    return check_read(slug, read_unit_folder(root, slug), grades, strays=True)


def check_read(
    slug: str, folder: UnitFolder, grades: Mapping[str, Grade], *, strays: bool = False
) -> UnitCheck:
    """Check what was read of a unit's folder, wherever it lies, as the unit `slug`.

    With `strays`, a file that has no place in the folder is an error of its own, and the unit is
    checked as if that lay elsewhere.
    """
    problems = [*folder.problems, *check_shape(folder)]
    notes = [*_notes(folder.by_file().values()), *folder.notes]
    apart = [one for one in problems if strays and one.rule == ODD]
    if len(problems) > len(apart) or folder.unit is None or not folder.lessons:
        skipped = sum(rule.check is not None for rule in all_rules())
        return UnitCheck(slug, None, None, (*problems, *notes), (), skipped, folder.shares)
    unit = build_unit(slug, folder.unit, folder.lessons, folder.media)
    documents = folder.by_file()
    outcome = run_rules(unit, all_rules())
    notes += move_lines_read(unit, documents)
    problems = [*apart, *notes, *(sign(documents, rule, f, grades) for rule, f in outcome.found)]
    problems += [_stale(documents, f) for f in outcome.stale]
    if outcome.unread:
        problems.append(_not_judged(folder.unit, unit.language, outcome.unread))
    allowances = tuple(
        Allowance(sign(documents, rule, f, grades), unit.allow[rule.name])
        for rule, f in outcome.allowed
    )
    outline = outline_unit(unit, folder.shared)
    return UnitCheck(
        slug, unit, outline, tuple(problems), allowances, outcome.skipped, folder.shares
    )


def _not_judged(document: Document, language: str, unread: int) -> Problem:
    """That the wording of a unit in another language than the rules read has been left alone."""
    return document.problem(
        "wording-not-judged",
        "note",
        ("language",),
        f"the unit is in `{language}`, and {unread} rules read English alone: what its sentences "
        "say of safety, of names and of how they read has not been judged",
        "have them read by somebody who knows the language, and signed for (`read_by`)",
    )


def check_together(
    root: Path, files: BankFiles, slugs: Iterable[str], outlines: Iterable[UnitOutline]
) -> Together:
    """What the rules for the whole bank find; nothing where the bank's own files are broken.

    `slugs` names the folders of all units, `outlines` holds the sound ones.
    """
    if not files.sound:
        return Together()
    bank = outline_bank(files.documents, outlines, slugs)
    outcome = run_bank_rules(bank, all_rules())
    findings = [*outcome.stale, *(f for _, f in (*outcome.found, *outcome.allowed))]
    documents = dict(files.documents)
    for file in {finding.file for finding in findings} - set(documents):
        documents |= read_unit_folder(root, file.split("/")[1]).by_file()
    problems = [sign(documents, rule, f, files.grades) for rule, f in outcome.found]
    problems += [_stale(documents, f) for f in outcome.stale]
    if SHARED_LIST in files.documents:
        shown = frozenset(name for unit in bank.units for name in unit.shared)
        problems += unused(files.documents[SHARED_LIST], shown)
    reasons = {unit.file: unit.allow for unit in bank.units}
    allowances = (
        Allowance(sign(documents, rule, f, files.grades), reasons[f.file][rule.name])
        for rule, f in outcome.allowed
    )
    return Together(tuple(problems), tuple(allowances))


def errors_together(
    files: BankFiles, slugs: Iterable[str], outlines: Iterable[UnitOutline]
) -> frozenset[str]:
    """The errors that the rules for the whole bank find, each as a sentence that starts with its
    file; what a unit allows is none.
    """
    outcome = run_bank_rules(outline_bank(files.documents, outlines, slugs), all_rules())
    return frozenset(
        f"{finding.file}: {finding.message}"
        for rule, finding in outcome.found
        if files.grades.get(rule.name, rule.grade) == "error"
    )


def check_shape(folder: UnitFolder, *, any_format: bool = False) -> list[Problem]:
    """The problems of a unit's files against their schemas.

    A file of an earlier format has only that format's fields, unless `any_format` lets it be.
    """
    problems = check_document(folder.unit, "unit") if folder.unit else []
    for lesson in folder.lessons:
        problems += check_document(lesson, "lesson")
    if not problems and not any_format and folder.unit and folder.unit.data["format"] == FIRST:
        problems += newer_fields(folder.unit, "unit")
        for lesson in folder.lessons:
            problems += newer_fields(lesson, "lesson")
    if folder.taken_in:
        problems += check_document(folder.taken_in, "taken-in")
    return problems


def sign(
    documents: Mapping[str, Document], rule: Rule, finding: Finding, grades: Mapping[str, Grade]
) -> Problem:
    """A finding with its rule, its grade in this bank, and its line and column."""
    return documents[finding.file].problem(
        rule.name,
        rule.grade if rule.name in GROUND else grades.get(rule.name, rule.grade),
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
