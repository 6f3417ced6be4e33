"""The cases of the rules, one file a rule: what is changed in the base, and what is then found.

    bad:
      fours make a motif that nobody has tried:
        edits:
          - {in: lesson-1.md, at: steps/1/phase, before: explore, after: rehearse}
          - {in: lesson-1.md, at: steps/2/grouping, before: alone, after: fours}
        expect: [{in: lesson-1.md, at: steps/2/makes/0}]
    good:
      …

`in` is a file of the base's unit, or a path from its content folder. `at` is a field's path, its
places in lists from 0; `notes` is the text below the fields. Every `at` of an edit is a place in
the base as it is, whatever the other edits do; those of `expect` are places after the edits. A
finding stands on a field that is there: where something is missing, on the field around it, or,
without `at`, on the file as a whole. The first line of the notes is `notes/0`.

`before` is what stands there in the base, so that no case goes stale; `none` where nothing does.
A text, list or map may be cut short: `Walk, …`, `[rivers, …]`, `{phase: make, …}`. `after: none`
takes the field out; `insert: true` in place of `before` puts a new item before the one at `at`.
Whole files: `{in: units/red-boats, copy_of: units/paper-boats}`, `{in: lesson-4.md, copy_of:
lesson-3.md}`, `{in: media/boat.svg, take_out: true}`; they come before all other edits.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from build_tools.problem import Fault
from build_tools.source.yaml_reader import Places, read_yaml
from tests.rules.edits import NONE, CaseMistake, Edit

HERE = Path(__file__).parent
BASE = HERE / "base"
UNIT = "units/paper-boats"
_OF_UNIT = ("unit.md", "lesson-", "media/")


@dataclass(frozen=True, slots=True)
class FileEdit:
    """One change to one file: to a field of it, or (`edit` is None) to the file itself.

    `copy_of` names the file or folder it is a copy of; without that it is taken out.
    """

    file: str
    edit: Edit | None = None
    copy_of: str | None = None


@dataclass(frozen=True, slots=True, eq=False)
class Case:
    """One case: `expect` holds a file and the path of a field in it for each finding."""

    rule: str
    family: str
    bad: bool
    name: str
    line: int
    edits: tuple[FileEdit, ...]
    expect: tuple[tuple[str, str], ...]

    def __str__(self) -> str:
        return f"{self.rule}: {'bad' if self.bad else 'good'}: {self.name}"


def case_files() -> list[Path]:
    """The files of all cases, by family and rule."""
    return sorted(path for path in HERE.glob("*/*.yml") if path.parent != BASE)


@cache
def read_cases(path: Path) -> tuple[Case, ...]:
    """The cases in one file; raises a CaseMistake where it is not in form."""
    read = read_yaml(path.read_text(encoding="utf-8"))
    if isinstance(read, Fault):
        raise CaseMistake(f"{path}:{read.line}: {read.message}; {read.help}")
    data, places = read
    try:
        return tuple(_cases(path, _only(data, {"bad", "good"}), places))
    except CaseMistake as mistake:
        raise CaseMistake(f"{path}: {mistake}") from None


def all_cases() -> list[Case]:
    """Every case of every file that is in form; the others have a test of their own."""
    found: list[Case] = []
    for path in case_files():
        try:
            found += read_cases(path)
        except CaseMistake:
            continue
    return found


def _cases(path: Path, data: Mapping[str, Any], places: Places) -> Iterator[Case]:
    for kind, named in data.items():
        for name, written in _only(named).items():
            line = places[kind, name][0]
            try:
                case = _only(written, {"edits", "expect"})
                yield Case(
                    rule=path.stem,
                    family=path.parent.name,
                    bad=kind == "bad",
                    name=name,
                    line=line,
                    edits=tuple(_edit(one) for one in case.get("edits", [])),
                    expect=tuple(_expected(one) for one in case.get("expect", [])),
                )
            except CaseMistake as mistake:
                raise CaseMistake(f"line {line}: {name}: {mistake}") from None


def _edit(written: Any) -> FileEdit:
    fields = _only(written, {"in", "at", "before", "after", "insert", "copy_of", "take_out"})
    file = _in_full(fields)
    rest = set(fields) - {"in"}
    if rest == {"copy_of"}:
        return FileEdit(file, copy_of=_in_full({"in": fields["copy_of"]}))
    if rest == {"take_out"} and fields["take_out"] is True:
        return FileEdit(file)
    insert = fields.get("insert", False)
    wanted = {"at", "after", "insert"} if insert is True else {"at", "before", "after"}
    if rest != wanted:
        raise CaseMistake(f"an edit has {', '.join(sorted(wanted))} beside `in`, not {fields}")
    before = NONE if insert else fields["before"]
    return FileEdit(file, Edit(str(fields["at"]), before, fields["after"], bool(insert)))


def _expected(written: Any) -> tuple[str, str]:
    fields = _only(written, {"in", "at"})
    return _in_full(fields), str(fields.get("at", ""))


def _in_full(fields: Mapping[str, Any]) -> str:
    """A file as a path from the content folder."""
    if not isinstance(file := fields.get("in"), str):
        raise CaseMistake(f"`in` names the file; it is not in {fields}")
    return f"{UNIT}/{file}" if file.startswith(_OF_UNIT) else file


def _only(written: Any, names: set[str] | None = None) -> Mapping[str, Any]:
    if not isinstance(written, dict):
        raise CaseMistake(f"named fields belong here, not {written}")
    if unknown := set(written) - (names or set(written)):
        raise CaseMistake(
            f"`{min(unknown)}` is no field of a case; text with a comma or a colon in it "
            "belongs in quotation marks"
        )
    return written
