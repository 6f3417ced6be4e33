"""Real documents, and documents made from them by small changes at fixed seeds."""

from __future__ import annotations

import copy
import random
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from build_tools.checking.check_bank import BANK_KINDS
from build_tools.shapes.schemas import Kind
from build_tools.source.front_matter import Document, kind_of_file, read_data, read_markdown
from tests.support.banks import ROOT

BANKS = sorted(
    p.parent
    for f in ("content", "tests")
    for p in (ROOT / f).rglob("bank.yml")
    if (p.parent / "units").is_dir()
)
"""The real bank and every bank among the tests' files."""


def kind_of(file: str) -> Kind:
    """Which schema a file of a bank is for."""
    if file in BANK_KINDS:
        return BANK_KINDS[file]
    return "unit" if file.endswith("/unit.md") else "lesson"


def read(bank: Path, path: Path) -> Document | None:
    """The document in `path`, or None where it cannot be read."""
    file = path.relative_to(bank).as_posix()
    reader = read_data if path.suffix == ".yml" else read_markdown
    result = reader(file, path.read_bytes())
    return result if isinstance(result, Document) else None


def documents() -> Iterator[tuple[Kind, Document]]:
    """Every document of every bank that can be read, with its kind."""
    for bank in BANKS:
        files = [bank / file for file in BANK_KINDS]
        files += sorted((bank / "units").rglob("*.md"))
        for path in files:
            if path.is_file() and (document := read(bank, path)):
                yield kind_of(document.file), document


def fixture_documents() -> Iterator[tuple[Kind, Document]]:
    """Every unit and lesson file among the rules' good and bad examples that can be read."""
    for path in sorted((ROOT / "tests" / "rules").rglob("*.md")):
        document = read(path.parent, path)
        if document is not None and isinstance(document.data, dict):
            yield kind_of_file(document.file) or "unit", document


ODD: tuple[Any, ...] = (
    None,
    True,
    False,
    0,
    1,
    -1,
    8,
    12,
    13,
    119,
    120,
    121,
    512,
    513,
    999_999_999,
    -999_999_999,
    1.0,
    0.5,
    8.0,
    120.0,
    -0.0,
    1e15,
    10**15,
    "",
    " ",
    "\n",
    "\t \r",
    "x",
    "A",
    "AA",
    "A\n",
    "a-b",
    "a-b\n",
    "-a",
    "a--b",
    "a" * 40,
    "a" * 41,
    "a" * 400,
    "a" * 401,
    "8",
    "1/2",
    "1 1/2",
    "1/0",
    "0/1",
    "1/2\n",
    "600",
    "20 to 40",
    "20 to",
    "any",
    "whole",
    "R",
    "P7",
    "P8",
    "1.0.0",
    "1.0",
    "01.0.0",
    "2026-11-25",
    "2026-13-01",
    "en-GB",
    "en-UK",
    "é",
    "日本",
    "😀",
    "😀" * 400,
    "😀" * 401,
    "e\u0301" * 200,
    "\u00a0",
    "\u2003",
    "٣",
    "²",
    "media/a.svg",
    "media/../a.svg",
    "media/a.svg\n",
    "A B C",
    "A  B",
    "A B\n",
    "İ",
    "ß",
    [],
    {},
    [None],
    [1, 1],
    [1, 1.0],
    [True, 1],
    ["a", "a"],
    [{}],
    {"a": 1},
    [[]],
    {"": ""},
)


def changed(data: Any, choose: random.Random) -> Any:
    """A copy of `data` with one to three small changes."""
    fresh = copy.deepcopy(data)
    for _ in range(choose.choice((1, 1, 1, 2, 3))):
        fresh = _change(fresh, choose)
    return fresh


def _change(data: Any, choose: random.Random) -> Any:
    spots = list(_spots(data))
    if not spots:
        return _odd(choose)
    around, key = choose.choice(spots)
    value = around[key]
    match choose.randrange(9):
        case 0:
            del around[key]
        case 1 if isinstance(around, dict):
            around[_slip(key, choose)] = around.pop(key)
        case 2 if isinstance(around, dict):
            around[_slip(key, choose)] = _odd(choose)
        case 3 if isinstance(value, str):
            around[key] = _slip(value, choose)
        case 4 if isinstance(value, list) and value:
            value += [copy.deepcopy(choose.choice(value)) for _ in range(choose.choice((1, 20)))]
        case 5 if isinstance(value, int | float):
            around[key] = value + choose.choice((-1, 1, 100, 0.0, 0.5, -value))
        case 6:
            other, name = choose.choice(spots)
            around[key] = copy.deepcopy(other[name])
        case 7 if isinstance(value, dict):
            value |= {f"more-{n}": _odd(choose) for n in range(choose.choice((1, 13)))}
        case _:
            around[key] = _odd(choose)
    return data


def _odd(choose: random.Random) -> Any:
    """One odd value of its own, since what is put in may be changed again."""
    return copy.deepcopy(choose.choice(ODD))


def _slip(text: str, choose: random.Random) -> str:
    at = choose.randrange(len(text) + 1)
    letter = choose.choice(["", "x", "X", "-", " ", "\n", "é", "😀", "9", "٣", "\u00a0"])
    return choose.choice(
        [
            text[:at] + letter + text[at:],
            text[:at] + text[at + 1 :],
            text + "\n",
            text * 2,
            text[::-1],
        ]
    )


def _spots(value: Any) -> Iterator[tuple[Any, Any]]:
    """Every place in `value` whose value can be changed: what holds it, and its key there."""
    keys: list[Any] = []
    if isinstance(value, dict):
        keys = list(value)
    elif isinstance(value, list):
        keys = list(range(len(value)))
    for key in keys:
        yield value, key
        yield from _spots(value[key])
