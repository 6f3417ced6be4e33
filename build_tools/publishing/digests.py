"""The list of an edition's files with their SHA-512 digests (FIPS 180-4), and checking against it.

A line for each file: the digest in hexadecimal, two spaces, and the path with `/`; the form that
`sha512sum --check` reads.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Mapping
from pathlib import Path

from build_tools.stray_files import is_beside

MANIFEST = "manifest-sha512.txt"
_LINE = re.compile(r"([0-9a-f]{128})  (.+)")


def digest(data: bytes) -> str:
    """The SHA-512 digest of `data` in hexadecimal."""
    return hashlib.sha512(data).hexdigest()


def files_in(folder: Path) -> dict[str, Path]:
    """Every file of `folder` that was published, by its path with `/`, in order.

    So neither the manifest itself nor what a share or a system leaves behind.
    """
    found = {
        path.relative_to(folder).as_posix(): path
        for path in folder.rglob("*")
        if path.is_symlink() or not path.is_dir()
    }
    return {name: found[name] for name in sorted(found) if name != MANIFEST and not is_beside(name)}


def digests_of(folder: Path) -> dict[str, str]:
    """The digest of every file of `folder`."""
    return {name: digest(path.read_bytes()) for name, path in files_in(folder).items()}


def written(digests: Mapping[str, str]) -> bytes:
    """The manifest as it is written."""
    return "".join(f"{value}  {name}\n" for name, value in sorted(digests.items())).encode()


def read_manifest(folder: Path) -> dict[str, str] | None:
    """The digests an edition's manifest lists; None where it cannot be read as one."""
    try:
        lines = (folder / MANIFEST).read_text(encoding="utf-8").splitlines()
    except (OSError, UnicodeDecodeError):
        return None
    matches = [_LINE.fullmatch(line) for line in lines]
    if not matches or None in matches:
        return None
    return {match[2]: match[1] for match in matches if match}


def faults(folder: Path) -> list[str]:
    """What differs between an edition and its manifest, a line for each file; empty when whole."""
    listed = read_manifest(folder)
    if listed is None:
        return [f"{folder.name}: {MANIFEST} is missing or cannot be read"]
    here = files_in(folder)
    found = [f"{folder.name}/{name} is missing" for name in sorted(listed.keys() - here.keys())]
    found += [f"{folder.name}/{name} was added" for name in sorted(here.keys() - listed.keys())]
    for name in sorted(listed.keys() & here.keys()):
        path = here[name]
        if path.is_symlink() or digest(path.read_bytes()) != listed[name]:
            found.append(f"{folder.name}/{name} was changed")
    return found
