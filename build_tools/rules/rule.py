"""What a rule is, and what it yields."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from build_tools.model.bank import BankOutline
from build_tools.model.unit import Unit
from build_tools.problem import FieldPath, Grade


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing found by a rule, at the field `path` of the document `file`.

    `file` is `unit.file` or a lesson's `file`; `message` says what is wrong, with the arithmetic,
    and `help` how to mend it.
    """

    file: str
    path: FieldPath
    message: str
    help: str


@dataclass(frozen=True, slots=True)
class Rule:
    """One rule, as its module states it.

    `name` states the fault, so that "allow minutes-do-not-add-up" reads well. `grade` is the
    usual one. `needs` names rules whose findings break the ground under this one. `source` is
    the published source, or "common practice, no source". `manual` is the module's docstring.
    `reads` is the language of the sentences that it understands, en; None if it reads fields only.
    Exactly one of `check` (one unit) and `check_bank` (all units) is there.
    """

    name: str
    family: str
    grade: Grade
    needs: tuple[str, ...]
    source: str
    manual: str
    reads: str | None
    check: Callable[[Unit], Iterator[Finding]] | None
    check_bank: Callable[[BankOutline], Iterator[Finding]] | None
