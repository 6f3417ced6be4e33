"""Packs made piece by piece, so that a test can break any piece of one."""

from __future__ import annotations

import hashlib
import io
import json
import re
import shutil
import zipfile
from collections.abc import Mapping
from functools import cache
from pathlib import Path

from tests.support.built_sites import ROOT

SLUG, TOP = "paper-boats", "paper-boats-1.0.0"
_SMALL = ROOT / "tests/rules/base"
"""Where a sound unit lies that is judged and drawn soon, since it is small."""
DECLARATION = b"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"


@cache
def unit_files() -> Mapping[str, bytes]:
    """The unit's own files, by their paths in its folder."""
    folder = _SMALL / "units" / SLUG
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def about(**other: object) -> bytes:
    told: dict[str, object] = {"format": 1, "unit": SLUG, "edition": "1.0.0"}
    return json.dumps(told | other).encode()


def payload(**other: bytes | None) -> dict[str, bytes]:
    """A sound payload; `other` sets files by path, with __ for / and None to leave one out."""
    found = {f"unit/{name}": data for name, data in unit_files().items()}
    found |= {"about.json": about(), "licence.txt": b"words\n", "credits.txt": b"words\n"}
    for name, data in other.items():
        path = name.replace("__", "/").replace("_DOT_", ".").replace("_", "-")
        if data is None:
            del found[path]
        else:
            found[path] = data
    return found


def with_files(files: Mapping[str, bytes]) -> dict[str, bytes]:
    """A sound payload with `files` put in by their paths."""
    return {**payload(), **files}


def manifest(files: Mapping[str, bytes], algorithm: str = "sha512") -> bytes:
    """A manifest as the standard's text has it, made without the project's own code."""
    lines = [f"{hashlib.new(algorithm, data).hexdigest()}  {name}" for name, data in files.items()]
    return ("\n".join(lines) + "\n").encode()


def bag(
    content: Mapping[str, bytes] | None = None, tags: Mapping[str, bytes | None] | None = None
) -> dict[str, bytes]:
    """The files of a bag below its own folder; `tags` sets or leaves out tag files."""
    files = {f"data/{name}": data for name, data in (content or payload()).items()}
    made: dict[str, bytes | None] = {
        "bagit.txt": DECLARATION,
        "manifest-sha512.txt": manifest(files),
        **(tags or {}),
    }
    return files | {name: data for name, data in made.items() if data is not None}


def in_top(files: Mapping[str, bytes], top: str = TOP) -> dict[str, bytes]:
    return {f"{top}/{name}": data for name, data in files.items()}


def zipped(files: Mapping[str, bytes], method: int = zipfile.ZIP_STORED) -> bytes:
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", method) as archive:
        for name, data in files.items():
            entry = zipfile.ZipInfo(name)
            entry.compress_type = method
            archive.writestr(entry, data)
    return made.getvalue()


def pack(content: Mapping[str, bytes] | None = None, **tags: bytes | None) -> bytes:
    """A pack as bytes; `tags` by name with _ for - and without .txt."""
    named = {f"{name.replace('_', '-')}.txt": data for name, data in tags.items()}
    return zipped(in_top(bag(content, named)))


def written(folder: Path, data: bytes, name: str = "unit.zip") -> Path:
    path = folder / name
    path.write_bytes(data)
    return path


def empty_bank(folder: Path, of: Path = _SMALL) -> Path:
    """A sound bank without units, called something else and with all topics and words of `of`.

    The small one is read much sooner than the real one, and knows the words of the small unit.
    """
    shutil.copytree(of, folder, ignore=shutil.ignore_patterns("units", "earlier", ".*"))
    (folder / "units").mkdir()
    bank = folder / "bank.yml"
    said = bank.read_text(encoding="utf-8")
    renamed, times = re.subn(r"(?m)^name: .*$", "name: Another bank", said)
    assert times == 1
    bank.write_text(renamed, encoding="utf-8")
    return folder
