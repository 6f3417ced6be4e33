"""A bag of files as RFC 8493, BagIt 1.0, has it: payload, manifests and tags, all as bytes."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping, Sequence

DECLARATION = b"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"
_ENCODED = {"%": "%25", "\n": "%0A", "\r": "%0D"}


def bagged(payload: Mapping[str, bytes], info: Sequence[tuple[str, str]]) -> dict[str, bytes]:
    """Every file of a bag that holds `payload`, by its path below the bag's own folder.

    `payload` is named without `data/`. `info` is what bag-info.txt says, label and value; how many
    bytes in how many files is added to it.
    """
    files = {f"data/{name}": data for name, data in payload.items()}
    oxum = f"{sum(map(len, files.values()))}.{len(files)}"
    lines = [f"{label}: {value}" for label, value in (*info, ("Payload-Oxum", oxum))]
    tags = {
        "bagit.txt": DECLARATION,
        "bag-info.txt": _text(lines),
        "manifest-sha512.txt": _manifest(files),
    }
    return {**files, **tags, "tagmanifest-sha512.txt": _manifest(tags)}


def encoded(name: str) -> str:
    """A path as a manifest writes it (RFC 8493, 2.1.3: only line ends and the per cent sign)."""
    return "".join(_ENCODED.get(letter, letter) for letter in name)


def decoded(name: str) -> str:
    """A path from a manifest; other per cent signs stand as they are."""
    for letter in ("\n", "\r", "%"):
        code = _ENCODED[letter]
        name = name.replace(code, letter).replace(code.lower(), letter)
    return name


def _manifest(files: Mapping[str, bytes]) -> bytes:
    lines = [
        f"{hashlib.sha512(files[name]).hexdigest()}  {encoded(name)}" for name in sorted(files)
    ]
    return _text(lines)


def _text(lines: Sequence[str]) -> bytes:
    return "".join(f"{' '.join(line.splitlines())}\n" for line in lines).encode()
