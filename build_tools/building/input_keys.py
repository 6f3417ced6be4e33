"""Digests of all that pages are made from: where one is as it was, so is what was made from it."""

from __future__ import annotations

import hashlib
from pathlib import Path

from build_tools.disk.digests import digest_of_files, digest_once, files_below
from build_tools.disk.places import OVERRIDES, PACKAGE, PROJECT
from build_tools.disk.stray_files import is_stray
from build_tools.shapes.schemas import SCHEMA_FOLDER

_BESIDE_CODE = (".py", ".json", ".txt", ".js", ".po")


def software_digest() -> str:
    """A digest of this software: its code and tables, its templates, schemas and notices."""
    ours = [path for path in files_below(PACKAGE) if path.suffix in _BESIDE_CODE]
    shown = [path for path in files_below(OVERRIDES) if not is_stray(path.name)]
    named = [PROJECT / name for name in ("NOTICES.json", "pyproject.toml")]
    files = [*ours, *shown, *SCHEMA_FOLDER.glob("*.json"), *named]
    return digest_of_files(files, PROJECT, digest_once)


def settings_digest(content: Path) -> str:
    """A digest of the bank's own files: all that lies in `content` outside its units."""
    files = [path for path in content.glob("*") if path.is_file()]
    files += [path for path in content.glob("*/*") if path.parent.name != "units"]
    plain = [path for path in files if path.is_file() and not is_stray(path.name)]
    return digest_of_files(plain, content)


def digest_of(*parts: object) -> str:
    """One digest of values that are the same whenever their `repr` is."""
    return hashlib.sha256("\0".join(map(repr, parts)).encode()).hexdigest()
