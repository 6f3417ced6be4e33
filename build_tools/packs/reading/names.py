"""Which paths may stand in a pack: inside it, on every computer, and each one only once."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable

from build_tools.packs.limits import MOST_DEPTH, MOST_NAME, MOST_NAME_BYTES, MOST_PATH
from build_tools.packs.reading.refused_error import RefusedError

# Microsoft, Naming Files, Paths, and Namespaces
_NOT_ON_WINDOWS = re.compile(r'[<>:"|?*]')
_DEVICES = frozenset(
    {"con", "prn", "aux", "nul", "conin$", "conout$", "clock$"}
    | {f"{port}{n}" for port in ("com", "lpt") for n in "0123456789¹²³"}
)
_SHORT_ON_WINDOWS = re.compile(r"~[0-9]+(\.[^.]*)?\Z")
_UNSEEN_KINDS = frozenset({"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp", "Zs"})
_UNSEEN = re.compile(
    "[\u034f\u115f\u1160\u17b4\u17b5\u180b-\u180f\u2800\u3164\ufe00-\ufe0f\uffa0"
    "\U000e0100-\U000e01ef]"
)
"""Letters that show nothing though their kind does not say so (Unicode 16.0, DerivedCoreProperties,
Default_Ignorable_Code_Point), and the Braille sign without a dot."""


def refuse_path(path: str) -> None:
    """Raise for a path that leads out of the pack or that some computer cannot hold."""
    why = _wrong_whole(path) or next(filter(None, map(_wrong_part, _parts(path))), None)
    if why:
        raise RefusedError(f"the path `{printable(path)}` {why}")


def refuse_clashes(paths: Iterable[str]) -> None:
    """Raise for two paths that are one on some computer, or a file that is also a folder.

    A path that ends in `/` is a folder's.
    """
    files: dict[str, str] = {}
    folders: dict[str, tuple[str, str]] = {}
    listed: set[str] = set()
    for path in paths:
        parts = _parts(path.removesuffix("/"))
        whole = "/".join(parts)
        key = _same(whole)
        if path.endswith("/") and key in listed:
            raise _one("twice", path)
        listed.add(key)
        inside = len(parts) + 1 if path.endswith("/") else len(parts)
        for n in range(1, inside):
            folder = "/".join(parts[:n])
            spelt, _ = folders.setdefault(_same(folder), (folder, whole))
            if spelt != folder:
                raise _one(f"beside `{printable(spelt)}`", folder)
        if not path.endswith("/"):
            if key in files:
                both = "twice" if files[key] == path else f"beside `{printable(files[key])}`"
                raise _one(both, path)
            files[key] = path
    for key, path in files.items():
        if key in folders:
            raise RefusedError(
                f"`{printable(path)}` is a file and, for `{printable(folders[key][1])}`, a folder "
                "too"
            )


def printable(path: str) -> str:
    """A path that can be printed: no controls, and not too long."""
    plain = "".join(letter if letter.isprintable() else "?" for letter in path[:61])
    return plain if len(plain) <= 60 else f"{plain[:59]}…"


def _one(how: str, path: str) -> RefusedError:
    return RefusedError(
        f"the path `{printable(path)}` is there {how}: on some computers they are one file"
    )


def _parts(path: str) -> list[str]:
    return path.split("/")


def _same(path: str) -> str:
    """The path as the least strict file system tells names apart: by neither size nor form."""
    plain = unicodedata.normalize("NFKC", path).upper().casefold()
    return unicodedata.normalize("NFKC", plain).casefold()


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
    if any(letter != " " and unicodedata.category(letter) in _UNSEEN_KINDS for letter in part):
        return "has a letter in it that nobody sees"
    if _UNSEEN.search(part):
        return "has a letter in it that nobody sees"
    if _NOT_ON_WINDOWS.search(part):
        return 'has one of < > : " | ? * in it, which Windows cannot hold'
    if part.startswith(" "):
        return "has a name that starts with a space, which nobody sees"
    if part.endswith((".", " ")):
        return "has a name that ends with a dot or a space, which Windows drops"
    if part.partition(".")[0].rstrip().casefold() in _DEVICES:
        return "has the name of a device on Windows"
    if _SHORT_ON_WINDOWS.search(part):
        return "has a name such as Windows gives to other files for short"
    if len(part) > MOST_NAME:
        return f"has a name of {len(part)} letters, more than {MOST_NAME}"
    if len(part.encode()) > MOST_NAME_BYTES:
        return f"has a name of {len(part.encode())} bytes, more than {MOST_NAME_BYTES}"
    if unicodedata.normalize("NFC", part) != part:
        return "has letters put together from pieces, which some computers write otherwise"
    return None
