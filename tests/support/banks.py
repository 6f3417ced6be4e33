"""Copies of the real bank for tests that change it, and the faults in one text."""

from __future__ import annotations

import shutil
from functools import cache
from pathlib import Path

from build_tools.checking.check_bank import check_folder
from build_tools.problem import Problem
from build_tools.source.front_matter import Document, read_data, read_markdown

ROOT = Path(__file__).resolve().parents[2]
CONTENT = ROOT / "content"
UNIT = "rock-pool"
LOOKED_AT = ("rock-pool", "seeds-on-the-move", "weaving-shed")
"""The published units that the usual run looks at closely; the rest only where nothing is slow.

They are of each age and of three patterns, so that a bank of any size is tested in the same time.
"""
THOROUGH = "BANK_LOOKS_AT_EVERY_UNIT"
"""Set in the environment by the long run, in which tests look at every published unit."""
BASE = ROOT / "tests" / "rules" / "base"
BASE_UNIT = "paper-boats"


def copy_bank(folder: Path) -> Path:
    """A bank of the real files and one unit in `folder`/content, to be changed at will."""
    bank = folder / "content"
    shutil.copytree(CONTENT, bank, ignore=shutil.ignore_patterns("units"))
    shutil.copytree(CONTENT / "units" / UNIT, bank / "units" / UNIT)
    return bank


def copy_base(folder: Path) -> Path:
    """The small bank in `folder`/content, to be changed at will.

    What a rule may ask of it beside errors is allowed there, so that tests of anything but the
    rules stay as they are when a rule is added.
    """
    bank = Path(shutil.copytree(BASE, folder / "content"))
    if asked := _asked_of_base():
        allowed = "".join(f"  {rule}: not what this test is about\n" for rule in asked)
        change(bank / "units" / BASE_UNIT / "unit.md", "\ntried:", f"\nallow:\n{allowed}tried:")
    return bank


@cache
def _asked_of_base() -> tuple[str, ...]:
    problems = check_folder(BASE).problems
    assert not [p for p in problems if p.severity == "error"]
    return tuple(sorted({p.rule for p in problems}))


def change(file: Path, old: str, new: str) -> int:
    """Replace `old`, which stands in `file` exactly once; gives its line, from 1."""
    text = file.read_text(encoding="utf-8")
    assert text.count(old) == 1, f"{old!r} stands {text.count(old)} times in {file}"
    file.write_text(text.replace(old, new), encoding="utf-8", newline="")
    return text[: text.index(old)].count("\n") + 1


def line_count(raw: bytes) -> int:
    """How many lines an editor shows, without an empty one at the end; at least 1."""
    text = raw.replace(b"\r\n", b"\n").replace(b"\r", b"\n")
    return max(1, len(text.removesuffix(b"\n").split(b"\n")))


def faults_of_data(raw: bytes) -> list[Problem]:
    """The faults in a file that is YAML throughout; fails where there are none."""
    return _faults(read_data("any.yml", raw), raw)


def faults_of_markdown(raw: bytes) -> list[Problem]:
    """The faults in a Markdown file with fields; fails where there are none."""
    return _faults(read_markdown("units/u/any.md", raw), raw)


def _faults(result: Document | list[Problem], raw: bytes) -> list[Problem]:
    assert isinstance(result, list), f"nothing is wrong with {raw[:80]!r}"
    for problem in result:
        assert 1 <= problem.line <= line_count(raw), problem
        assert problem.column >= 1, problem
        assert problem.severity == "error"
    return result
