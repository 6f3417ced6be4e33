"""The cases of the rules, one file a rule: what is changed in the base, and what is then found.

    bad:
      a fold nobody could count:
        edits:
          - {in: lesson-1.md, at: steps/1/look_for, before: Sharp edges., after: none}
        expect:
          - {in: lesson-1.md, at: steps/1}
    good:
      …

`in` is a file of the base's unit, or a path from its content folder. Every `at` is a place in the
base as it is, whatever the other edits do; `notes` is the text below the fields. Without `at` a
finding stands on the file as a whole.
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
