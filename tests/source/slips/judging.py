"""What becomes of a slip: read rightly, told rightly, harmless, or wrong and in which way."""

from __future__ import annotations

import re
import shutil
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import yaml

from build_tools.checking.check_bank import check_folder
from build_tools.source.front_matter import Document, read_markdown
from tests.support.banks import ROOT

BASE = ROOT / "tests" / "rules" / "base"
FOLDER = Path(__file__).parent
UNIT = "units/paper-boats"
LOSES_WORDS = re.compile(r"\b(delete|remove|take out)\b")
"""Advice that, followed, loses what somebody wrote."""


@dataclass(frozen=True, slots=True)
class Slip:
    """One slip as it stands in the lists beside this file."""

    number: int
    slip: str
    outcome: str
    told: str
    meant: Any
    changes: dict[str, Any]


def slips(name: str) -> list[Slip]:
    """The slips of one list, in order."""
    listed = yaml.safe_load((FOLDER / f"{name}.yml").read_text(encoding="utf-8"))
    return [
        Slip(s["n"], s["slip"], s["outcome"], s.get("told", ""), s.get("meant"), s) for s in listed
    ]


def with_slip(slip: Slip, folder: Path) -> Path:
    """A bank in `folder` with the sound unit in which `slip` was made."""
    shutil.copytree(BASE, folder)
    unit = folder / UNIT
    for file, edits in slip.changes.get("edit", {}).items():
        text = (unit / file).read_text(encoding="utf-8")
        for old, new in edits:
            assert old in text, (slip.number, old)
            text = text.replace(old, new) if slip.changes.get("all") else text.replace(old, new, 1)
        (unit / file).write_text(text, encoding="utf-8", newline="")
    for old, new in slip.changes.get("rename", {}).items():
        (unit / old).rename(unit / new)
    for name, text in slip.changes.get("write", {}).items():
        (unit / name).write_text(text, encoding="utf-8")
    for file, coding in slip.changes.get("encode", {}).items():
        text = (unit / file).read_text(encoding="utf-8")
        raw = (
            b"\xef\xbb\xbf" + text.replace("\n", "\r\n").encode()
            if coding == "crlf"
            else text.encode(coding)
        )
        (unit / file).write_bytes(raw)
    return folder


def judged(slip: Slip, bank: Path) -> str:
    """`read`, `told` or `harmless`; else what is wrong with what became of the slip."""
    report = check_folder(bank)
    errors = [p for p in report.problems if p.severity == "error"]
    losing = [p for p in report.problems if LOSES_WORDS.search(p.help)]
    if losing:
        return f"advice that loses words: {losing[0].message}; {losing[0].help}"
    if slip.outcome == "told":
        said = [p for p in report.problems if slip.told in f"{p.file} {p.message} {p.help}"]
        if not said:
            told = "; ".join(f"{p.message} ({p.help})" for p in report.problems[:3])
            return f"not told rightly: {told or 'nothing said'}"
        return "told"
    if errors and not _only_rules(errors):
        return f"told instead of read: {errors[0].message}; {errors[0].help}"
    wrong = _unlike(slip, bank)
    return wrong or slip.outcome


def _only_rules(errors: list[Any]) -> bool:
    """Whether what is wrong is not how it is written: the changed dance may break a rule."""
    written = {"broken-yaml", "unknown-field", "missing-field", "wrong-value", "repeated-field"}
    written |= {"odd-number", "anchor-used", "no-fields", "not-utf-8", "file-name-odd"}
    return not any(p.rule in written for p in errors)


def _unlike(slip: Slip, bank: Path) -> str:
    meant = {} if slip.meant == "base" else slip.meant
    for path in sorted((bank / UNIT).glob("*.md")):
        now, before = _data(path), _data(BASE / UNIT / path.name)
        for place, value in meant.get(path.name, {}).items():
            _put(before, place, value)
        if now != before:
            return f"read as something else: {_first_difference(now, before)}"
    return ""


def _data(path: Path) -> Any:
    read = read_markdown(f"{UNIT}/{path.name}", path.read_bytes())
    assert isinstance(read, Document), read
    return read.data


def _put(data: Any, place: str, value: Any) -> None:
    *outer, last = [int(p) if p.isdigit() else p for p in place.split(".")]
    for part in outer:
        data = data[part]
    data[last] = value


def _first_difference(one: Any, other: Any) -> str:
    if isinstance(one, dict) and isinstance(other, dict) and list(one) == list(other):
        for name in one:
            if one[name] != other[name]:
                return f"{name}: {_first_difference(one[name], other[name])}"
    if isinstance(one, list) and isinstance(other, list) and len(one) == len(other):
        for n, (a, b) in enumerate(zip(one, other, strict=True)):
            if a != b:
                return f"{n}: {_first_difference(a, b)}"
    return f"{str(one)[:200]!r}, not {str(other)[:200]!r}"
