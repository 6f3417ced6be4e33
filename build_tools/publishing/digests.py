"""The list of an edition's files with their SHA-512 digests (FIPS 180-4), and checking against it.

A line for each file: the digest in hexadecimal, two spaces, and the path with `/`; the form that
`sha512sum --check` reads.
"""

from __future__ import annotations

import hashlib
import os
import re
from collections.abc import Iterator, Mapping
from pathlib import Path, PurePath, PurePosixPath

from build_tools.disk.stray_files import is_beside
from build_tools.disk.sure_files import PART
from build_tools.publishing.shared_folder import read_file

MANIFEST = "manifest-sha512.txt"
_LINE = re.compile(r"([0-9a-f]{128})  (\S[^\n\r]*)")


def digest(data: bytes) -> str:
    """The SHA-512 digest of `data` in hexadecimal."""
    return hashlib.sha512(data).hexdigest()


def files_in(folder: Path) -> dict[str, Path]:
    """Every file of `folder` that was published, by its path with `/`, in order.

    So neither the manifest itself, nor what a share or a system leaves behind, nor what a killed
    run left half written: the next run removes it.
    """
    return {
        name: folder / name
        for name in sorted(_names_in(folder))
        if name != MANIFEST and not is_beside(name) and not is_half_written(PurePosixPath(name))
    }


def _names_in(folder: Path) -> Iterator[str]:
    """The paths of all files and links below `folder`, with `/`: a link is not followed."""
    start = os.path.join(folder, "")  # noqa: PTH118 - a folder has tens of thousands of them
    for top, folders, names in os.walk(folder):
        links = [one for one in folders if os.path.islink(os.path.join(top, one))]  # noqa: PTH118, PTH114
        for name in (*names, *links):
            yield os.path.join(top, name)[len(start) :].replace(os.sep, "/")  # noqa: PTH118


def digests_of(folder: Path) -> dict[str, str]:
    """The digest of every file of `folder`."""
    return {name: digest(path.read_bytes()) for name, path in files_in(folder).items()}


def written(digests: Mapping[str, str]) -> bytes:
    """The manifest as it is written."""
    return "".join(f"{value}  {name}\n" for name, value in sorted(digests.items())).encode()


def read_list(path: Path) -> dict[str, str] | None:
    """The digests that a list of files holds; None where it cannot be read as one, or was cut."""
    raw = read_file(path)
    try:
        text = "" if raw is None else raw.decode("utf-8")
    except UnicodeDecodeError:
        return None
    matches = [_LINE.fullmatch(line) for line in text.split("\n")[:-1]]
    if not matches or None in matches or not text.endswith("\n"):
        return None
    listed = {match[2]: match[1] for match in matches if match}
    return listed if written(listed) == raw and all(map(is_inside, listed)) else None


def read_manifest(folder: Path) -> dict[str, str] | None:
    """The digests an edition's manifest lists; None where it cannot be read as one."""
    return read_list(folder / MANIFEST)


def faults(folder: Path) -> list[str]:
    """What differs between an edition and its manifest, a line for each file; empty when whole."""
    listed = read_manifest(folder)
    if listed is None:
        return [f"{folder.name}: {MANIFEST} is missing or cannot be read"]
    missing, added, changed = differences(folder, listed)
    return [
        *(f"{folder.name}/{name} is missing" for name in missing),
        *(f"{folder.name}/{name} was added" for name in added),
        *(f"{folder.name}/{name} was changed" for name in changed),
    ]


def differences(folder: Path, listed: Mapping[str, str]) -> tuple[list[str], list[str], list[str]]:
    """The names of the files of `folder` that are missing, were added and were changed."""
    here = files_in(folder)
    changed = []
    for name in sorted(listed.keys() & here.keys()):
        data = read_file(here[name])
        if data is None or digest(data) != listed[name]:
            changed.append(name)
    return sorted(listed.keys() - here.keys()), sorted(here.keys() - listed.keys()), changed


def is_half_written(path: PurePath) -> bool:
    """Whether a file has the name of one that is still being written."""
    return path.name.startswith(".") and path.name.endswith(PART)


def is_inside(name: str) -> bool:
    """Whether a path with `/` stays inside the folder that it starts from."""
    return not name.startswith("/") and ".." not in name.split("/") and "\\" not in name
