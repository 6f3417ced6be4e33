"""A content folder in memory: the base, and the base with a case's edits in it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache

from build_tools.checking.check_bank import BANK_KINDS, sign
from build_tools.model.build import build_unit
from build_tools.model.build_bank import outline_bank, outline_unit
from build_tools.model.unit import Unit
from build_tools.problem import Problem
from build_tools.rules.catalogue import all_rules, rule_named
from build_tools.rules.engine import run_rules
from build_tools.rules.rule import Finding, Rule
from build_tools.schema_check.check import check_document
from build_tools.shapes.schemas import Kind
from build_tools.source.folder import read_bank_files, read_unit_folder, unit_slugs
from build_tools.source.front_matter import Document, read_data, read_markdown
from build_tools.source.said_once.in_full import in_full
from tests.rules.cases import BASE, Case, FileEdit
from tests.rules.edits import NONE, CaseMistake, Edit, check_before, edited
from tests.support.writing_yaml import write_yaml

NOTES = "notes"
"""In a case: the text below the fields."""


@dataclass(frozen=True, slots=True)
class Contents:
    """The documents of a content folder by file, and its media, each with its size in bytes."""

    documents: Mapping[str, Document]
    media: Mapping[str, int]

    def units(self) -> list[Unit]:
        """Its units, by the names of their folders."""
        slugs = {file.split("/")[1] for file in self.documents if file.startswith("units/")}
        return [self._unit(slug) for slug in sorted(slugs)]

    def _unit(self, slug: str) -> Unit:
        at = f"units/{slug}/"
        unit = self.documents.get(f"{at}unit.md")
        lessons = [d for f, d in self.documents.items() if f.startswith(f"{at}lesson-")]
        if unit is None or not lessons:
            raise CaseMistake(f"{at} has no unit.md, or no lesson")
        media = {f.removeprefix(at): n for f, n in self.media.items() if f.startswith(at)}
        return build_unit(slug, unit, lessons, media)


@cache
def base() -> Contents:
    """The base, read once by the bank's own reader."""
    documents, problems = read_bank_files(BASE)
    slugs, odd = unit_slugs(BASE)
    media: dict[str, int] = {}
    for slug in slugs:
        folder = read_unit_folder(BASE, slug)
        problems += folder.problems
        documents |= folder.by_file()
        media |= {f"units/{slug}/{file}": size for file, size in folder.media.items()}
    assert [*problems, *odd] == []
    return Contents(documents, media)


def laid_over_base(case: Case) -> Contents:
    """The base with the case's edits in it, written out and read again by the bank's own reader."""
    files: dict[str, Document | int] = {**base().documents, **base().media}
    edits: dict[str, list[Edit]] = {}
    for one in case.edits:
        if one.edit is None:
            _edit_files(files, one)
        else:
            edits.setdefault(one.file, []).append(one.edit)
    for file, of_file in edits.items():
        document = files.get(file)
        if not isinstance(document, Document):
            raise CaseMistake(f"there is no file {file} to edit")
        files[file] = _edited(document, of_file)
    return Contents(
        {file: held for file, held in files.items() if isinstance(held, Document)},
        {file: held for file, held in files.items() if isinstance(held, int)},
    )


def with_needs(name: str) -> list[Rule]:
    """The rule and every rule it needs, those first."""
    wanted, waiting = set(), [name]
    while waiting:
        rule = rule_named(waiting.pop())
        if rule is None:
            raise CaseMistake(f"there is no rule {name}")
        wanted.add(rule.name)
        waiting += rule.needs
    return [rule for rule in all_rules() if rule.name in wanted]


def findings(contents: Contents, rules: Sequence[Rule]) -> list[tuple[Rule, Finding]]:
    """What `rules` find in the units and the bank."""
    units = contents.units()
    found = [pair for unit in units for pair in run_rules(unit, rules).found]
    outlines = [outline_unit(unit) for unit in units]
    bank = outline_bank(contents.documents, outlines, [unit.slug for unit in units])
    found += [
        (rule, finding)
        for rule in rules
        if rule.check_bank is not None
        for finding in rule.check_bank(bank)
    ]
    return found


def signed(contents: Contents, found: Iterable[tuple[Rule, Finding]]) -> list[Problem]:
    """The findings as they are reported, each with its line and column."""
    return [sign(contents.documents, rule, finding, {}) for rule, finding in found]


def _edit_files(files: dict[str, Document | int], edit: FileEdit) -> None:
    """Copy or take out one file, or all files of a folder."""
    whole = edit.copy_of or edit.file
    concerned = [f for f in files if f == whole or f.startswith(f"{whole}/")]
    if not concerned:
        raise CaseMistake(f"there is no file {whole} in the base")
    for file in concerned:
        if edit.copy_of is None:
            del files[file]
        else:
            new, held = edit.file + file.removeprefix(whole), files[file]
            files[new] = replace(held, file=new) if isinstance(held, Document) else held


def _edited(document: Document, edits: Sequence[Edit]) -> Document:
    data = edited(document.data, [edit for edit in edits if edit.at != NOTES])
    body = document.body
    for edit in edits:
        if edit.at == NOTES:
            check_before(edit, body.strip("\n"), absent=not body.strip())
            body = "" if edit.after == NONE else f"{edit.after}\n"
    return _written(document.file, data, body)


def _written(file: str, data: object, body: str) -> Document:
    fields = write_yaml(data) or f"{data}\n"
    if file.endswith(".md"):
        document = read_markdown(file, f"---\n{fields}---\n{body}".encode())
    else:
        document = read_data(file, fields.encode())
    problems = document if isinstance(document, list) else check_document(document, _kind(file))
    if problems:
        said = "; ".join(f"{problem.message}; {problem.help}" for problem in problems)
        raise CaseMistake(f"{file} is out of shape: {said}")
    assert isinstance(document, Document)
    full = in_full(data, _kind(file), file)
    assert (document.data, document.body) == (full, body), "written and read back unequal"
    return document


def _kind(file: str) -> Kind:
    if file in BANK_KINDS:
        return BANK_KINDS[file]
    return "unit" if file.endswith("/unit.md") else "lesson"
