"""Which paths may stand in a pack: inside it, on every computer, and each one only once."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable

from build_tools.packs.limits import MOST_DEPTH, MOST_NAME, MOST_PATH
from build_tools.packs.reading.refusal import RefusedError

# Microsoft, Naming Files, Paths, and Namespaces
_NOT_ON_WINDOWS = re.compile(r'[<>:"|?*]')
_DEVICES = frozenset(
    {"con", "prn", "aux", "nul", "conin$", "conout$"}
    | {f"{port}{n}" for port in ("com", "lpt") for n in "0123456789¹²³"}
)


def refuse_path(path: str) -> None:
    """Raise for a path that leads out of the pack or that some computer cannot hold."""
    why = _wrong_whole(path) or next(filter(None, map(_wrong_part, _parts(path))), None)
    if why:
        raise RefusedError(f"the path `{printable(path)}` {why}")


def refuse_clashes(paths: Iterable[str]) -> None:
    """Raise for two paths that are one on some computer, or a file that is also a folder."""
    seen: dict[str, str] = {}
    folders: dict[str, str] = {}
    for path in paths:
        key = _same(path)
        if key in seen:
            both = "twice" if seen[key] == path else f"beside `{printable(seen[key])}`"
            raise RefusedError(
                f"the path `{printable(path)}` is there {both}: on some computers they are one file"
            )
        seen[key] = path
        parts = key.split("/")
        folders |= {"/".join(parts[:n]): path for n in range(1, len(parts))}
    for key, path in seen.items():
        if key in folders:
            raise RefusedError(
                f"`{printable(path)}` is a file and, for `{printable(folders[key])}`, a folder too"
            )


def printable(path: str) -> str:
    """A path that can be printed: no controls, and not too long."""
    plain = "".join(letter if letter.isprintable() else "?" for letter in path)
    return plain if len(plain) <= 60 else f"{plain[:59]}…"


def _parts(path: str) -> list[str]:
    return path.split("/")


def _same(path: str) -> str:
    return unicodedata.normalize("NFC", unicodedata.normalize("NFC", path).casefold())


def _wrong_whole(path: str) -> str | None:
    if not path:
        return "has no letters"
    if len(path) > MOST_PATH:
        return f"has {len(path)} letters, more than {MOST_PATH}"
    if path.startswith(("//", "\\\\")):
        return "names a share on a network, which lies outside the pack"
    if re.match(r"[A-Za-z]:", path):
        return "names a drive, which lies outside the pack"
    if path.startswith(("/", "\\")):
        return "starts at the top of a disk, outside the pack"
    if "\\" in path:
        return "has a backslash, which is a way into a folder on Windows"
    if path.startswith("~"):
        return "starts in somebody's home folder, outside the pack"
    if path.count("/") > MOST_DEPTH:
        return f"lies {path.count('/')} folders deep, more than {MOST_DEPTH}"
    return None


def _wrong_part(part: str) -> str | None:
    if not part:
        return "has an empty name in it"
    if part == "..":
        return "leads up and out of its folder"
    if part.startswith("."):
        return "has a name that starts with a dot, which is hidden or leads elsewhere"
    if any(unicodedata.category(letter) in ("Cc", "Cf", "Cs", "Co", "Cn") for letter in part):
        return "has a letter in it that nobody sees"
    if _NOT_ON_WINDOWS.search(part):
        return 'has one of < > : " | ? * in it, which Windows cannot hold'
    if part.endswith((".", " ")):
        return "has a name that ends with a dot or a space, which Windows drops"
    if part.partition(".")[0].rstrip().casefold() in _DEVICES:
        return "has the name of a device on Windows"
    if len(part) > MOST_NAME:
        return f"has a name of {len(part)} letters, more than {MOST_NAME}"
    if unicodedata.normalize("NFC", part) != part:
        return "has letters put together from pieces, which some computers write otherwise"
    return None
