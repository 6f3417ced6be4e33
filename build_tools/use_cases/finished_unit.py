"""Whether a unit may be handed to others, judged by all that needs no other unit."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from build_tools.checking.check_bank import check_bank_files, check_unit
from build_tools.model.unit import Unit
from build_tools.problem import Problem
from build_tools.source.folder import unit_slugs
from build_tools.source.front_matter import Document


@dataclass(frozen=True, slots=True)
class NotMade:
    """Why nothing is made of a unit: in words, and the problems to mend first."""

    reason: str
    problems: tuple[Problem, ...] = ()


@dataclass(frozen=True, slots=True)
class FinishedUnit:
    """A unit without errors that is no draft, with what was found in it and the bank's files."""

    unit: Unit
    problems: tuple[Problem, ...]
    documents: Mapping[str, Document]


def finished_unit(content: Path, slug: str) -> FinishedUnit | NotMade:
    """The unit `slug` in the folder `content`; one with errors or a draft goes to nobody."""
    files = check_bank_files(content)
    if not files.sound:
        return NotMade("the bank's own files have errors", files.problems)
    if slug not in unit_slugs(content)[0]:
        return NotMade(f"there is no unit in {(content / 'units' / slug).as_posix()}")
    check = check_unit(content, slug, files.grades)
    errors = tuple(p for p in check.problems if p.severity == "error")
    if errors or check.unit is None:
        return NotMade("it has errors", errors)
    if check.unit.draft:
        return NotMade("it is a draft: take out `draft: true` when it is finished")
    return FinishedUnit(check.unit, check.problems, files.documents)
