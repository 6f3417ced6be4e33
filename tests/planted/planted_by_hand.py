"""Faults planted by reading alone, and how many of them the rules report, by family and kind.

`python -m tests.planted.planted_by_hand FILE` puts each fault of FILE into a copy of the units that
its writer read, checks the copy as an author's folder is checked, and prints a table. Those units
are kept in `by_hand/content`, as they were: a fault planted by reading goes with what was read.
Where a set was planted in later units, they lie beside it, in a folder of its name with `_content`.
FILE holds a list of faults, each with its `edits` (a text that stands once in a file, and what is
put in its place), the `line` at which an author is told of it, and `also`, other lines as good. A
problem that the sound unit has already is no answer.
"""

from __future__ import annotations

import json
import shutil
import sys
import tempfile
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from build_tools.checking.check_bank import (
    BankFiles,
    UnitCheck,
    check_bank_files,
    check_folder,
    check_together,
    check_unit,
)
from build_tools.problem import Problem

CONTENT = Path(__file__).parent / "by_hand/content"
KINDS = ("fields", "both", "text")
ANSWERS = ("at the line", "elsewhere", "missed")


@dataclass(frozen=True, slots=True)
class Edit:
    """`before` stands exactly once in `file`, which is in the unit's folder."""

    file: str
    before: str
    after: str


@dataclass(frozen=True, slots=True)
class Spot:
    """A line of a file after the edits, by a part of it."""

    file: str
    holds: str


@dataclass(frozen=True, slots=True)
class HandFault:
    """One fault, as the one who planted it wrote it down."""

    number: int
    unit: str
    kind: str
    family: str
    edits: tuple[Edit, ...]
    spots: tuple[Spot, ...]
    why: str


@dataclass(frozen=True, slots=True)
class Answer:
    """What the check said of one fault: where it was told, and by which rules."""

    fault: HandFault
    told: str
    """One of `ANSWERS`."""
    rules: tuple[str, ...]


def read_faults(path: Path) -> tuple[HandFault, ...]:
    """The faults in a file."""
    return tuple(_fault(one) for one in json.loads(path.read_text(encoding="utf-8")))


def _fault(data: Any) -> HandFault:
    return HandFault(
        number=data["id"],
        unit=data["unit"],
        kind=data["kind"],
        family=data["family"],
        edits=tuple(Edit(e["file"], e["before"], e["after"]) for e in data["edits"]),
        spots=tuple(Spot(s["file"], s["holds"]) for s in (data["line"], *data["also"])),
        why=data["why"],
    )


def planted(fault: HandFault, content: Path) -> Mapping[str, str]:
    """The files of the unit that the fault changes, by name, as they are then.

    Raises ValueError where an edit's text does not stand exactly once.
    """
    texts: dict[str, str] = {}
    for edit in fault.edits:
        path = content / "units" / fault.unit / edit.file
        text = texts.get(edit.file) or path.read_text(encoding="utf-8")
        if text.count(edit.before) != 1:
            times = text.count(edit.before)
            raise ValueError(f"fault {fault.number}: {edit.file} has {edit.before!r} {times} times")
        texts[edit.file] = text.replace(edit.before, edit.after)
    return texts


@dataclass(frozen=True, slots=True)
class Sound:
    """The units before anything is planted: each unit's check, and what is said of them all."""

    files: BankFiles
    checks: Mapping[str, UnitCheck]
    said: frozenset[tuple[str, str, str]]
    """File, rule and message."""


@cache
def sound(content: Path) -> Sound:
    """The units of a content folder, checked once."""
    files = check_bank_files(content)
    slugs = sorted(path.name for path in (content / "units").iterdir())
    checks = {slug: check_unit(content, slug, files.grades) for slug in slugs}
    outlines = [one.outline for one in checks.values() if one.outline is not None]
    together = check_together(content, files, slugs, outlines)
    own = (problem for check in checks.values() for problem in check.problems)
    said = frozenset((p.file, p.rule, p.message) for p in (*own, *together.problems))
    return Sound(files, checks, said)


def problems_with(unit: str, content: Path, copy: Path) -> Iterator[Problem]:
    """What is said of `copy`, in which only `unit` differs from `content`, and not of that."""
    before = sound(content)
    check = check_unit(copy, unit, before.files.grades)
    checks = {**before.checks, unit: check}
    outlines = [one.outline for one in checks.values() if one.outline is not None]
    together = check_together(copy, before.files, sorted(checks), outlines)
    for problem in (*check.problems, *together.problems):
        if (problem.file, problem.rule, problem.message) not in before.said:
            yield problem


def answer(fault: HandFault, content: Path, copy: Path) -> Answer:
    """Plant the fault in `copy`, a copy of `content`, check it, and put the copy right again."""
    folder = copy / "units" / fault.unit
    changed = planted(fault, content)
    for file, text in changed.items():
        (folder / file).write_text(text, encoding="utf-8")
    new = list(problems_with(fault.unit, content, copy))
    lines = {place for spot in fault.spots for place in _lines(spot, fault.unit, folder)}
    at = [p for p in new if (p.file, p.line) in lines]
    for file in changed:
        shutil.copyfile(content / "units" / fault.unit / file, folder / file)
    told = "at the line" if at else "elsewhere" if new else "missed"
    return Answer(fault, told, tuple(sorted({p.rule for p in at or new})))


def _lines(spot: Spot, unit: str, folder: Path) -> Iterator[tuple[str, int]]:
    text = (folder / spot.file).read_text(encoding="utf-8")
    for number, line in enumerate(text.split("\n"), start=1):
        if spot.holds in line:
            yield f"units/{unit}/{spot.file}", number


def content_of(path: Path) -> Path:
    """The units in which the faults of a file were planted."""
    own = path.with_name(f"{path.stem}_content")
    return own if own.is_dir() else CONTENT


def answers(faults: Iterable[HandFault], content: Path = CONTENT) -> tuple[Answer, ...]:
    """The answers to all faults, each planted alone."""
    with tempfile.TemporaryDirectory() as folder:
        copy = Path(folder) / "content"
        shutil.copytree(content, copy)
        return tuple(answer(fault, content, copy) for fault in faults)


def rate(given: Iterable[Answer], *kinds: str) -> float:
    """The share of the faults of some kinds that are told at their line."""
    chosen = [one for one in given if one.fault.kind in kinds]
    return sum(one.told == "at the line" for one in chosen) / len(chosen)


def table(given: Sequence[Answer]) -> str:
    """A row for each family and kind: planted, at the line, elsewhere, missed."""
    families = sorted({one.fault.family for one in given})
    rows = [f"{'':<22}" + "".join(f"{kind:^24}" for kind in (*KINDS, "all"))]
    rows.append(f"{'line / elsewhere / missed':<22}")
    for family in (*families, "all"):
        here = [one for one in given if family in (one.fault.family, "all")]
        cells = [[one for one in here if one.fault.kind == kind] for kind in KINDS]
        rows.append(f"{family:<22}" + "".join(_cell(cell) for cell in (*cells, here)))
    shares = [rate(given, kind) for kind in KINDS] + [rate(given, *KINDS)]
    rows.append(f"{'at the line':<22}" + "".join(f"{share:^24.0%}" for share in shares))
    with_text = rate(given, "both", "text")
    rows.append(f"at the line, fields {shares[0]:.0%}, with text {with_text:.0%}")
    return "\n".join(rows)


def _cell(given: Sequence[Answer]) -> str:
    if not given:
        return f"{'.':^24}"
    counted = " / ".join(str(sum(one.told == told for one in given)) for told in ANSWERS)
    return f"{counted:^24}"


def problems_now(content: Path = CONTENT) -> tuple[Problem, ...]:
    """What the check says of the units before anything is planted."""
    return check_folder(content).problems


def main(arguments: Sequence[str]) -> None:
    """Print the table, and with a second argument each fault with what was said of it."""
    path = Path(arguments[0])
    given = answers(read_faults(path), content_of(path))
    print(table(given))
    if len(arguments) > 1:
        for one in given:
            fault = one.fault
            rules = ", ".join(one.rules)
            print(f"{fault.number:>4} {fault.unit:<18} {fault.kind:<7} {one.told:<12} {rules}")
            if one.told != "at the line":
                print(f"       {fault.spots[0].file}: {fault.why}")


if __name__ == "__main__":
    main(sys.argv[1:])
