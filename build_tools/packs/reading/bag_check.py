"""A bag compared with the rules of RFC 8493 (BagIt 1.0) and of BagIt 0.97."""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterator, Mapping

from build_tools.packs.bag import decoded
from build_tools.packs.limits import MOST_ABOUT, MOST_LIST
from build_tools.packs.reading.names import printable, refuse_path
from build_tools.packs.reading.refused_error import RefusedError

_VERSIONS = ("1.0", "0.97")
_MOST_DECLARED = 200
_DECLARATION = re.compile(
    r"BagIt-Version: (\d+\.\d+)(?:\r\n|\n|\r)"
    r"Tag-File-Character-Encoding: ([A-Za-z0-9_.-]+)(?:\r\n|\n|\r)?\Z"
)
_MANIFEST = re.compile(r"(tag)?manifest-([a-z0-9-]+)\.txt\Z")
_LINE = re.compile(r"([0-9A-Fa-f]+)[ \t]+(\S.*)\Z")
_ALGORITHMS = {"sha512": "sha512", "sha256": "sha256", "sha1": "sha1", "md5": "md5"}
_STRONG = frozenset({"sha512", "sha256"})
_LABEL = re.compile(r"[^\s\ufeff:](?:[^:]{0,98}[^\s:])?:[ \t]?")
"""RFC 8493, 2.2.2: no white space at its start or end. None that is of use is longer."""
_LINE_END = re.compile(r"\r\n|\n|\r")


def payload_of(files: Mapping[str, bytes]) -> dict[str, bytes]:
    """The payload of the bag in `files`, by paths without the bag's folder and `data/`.

    `files` are all files of a pack, below one folder. Raises RefusedError where the bag is not
    complete, not as it was packed, or breaks a rule of the standard.
    """
    bag = _in_one_folder(files)
    version = _version(bag)
    if "fetch.txt" in bag:
        raise RefusedError("it leaves files to be fetched from elsewhere (fetch.txt)")
    payload = {name: data for name, data in bag.items() if name.startswith("data/")}
    if not payload:
        raise RefusedError("it is a bag with nothing in its folder data")
    manifests = [name for name in bag if _MANIFEST.match(name)]
    own = [name for name in manifests if not name.startswith("tag")]
    if not own:
        raise RefusedError("it has no manifest, so nobody can tell whether it is whole")
    if not any(_algorithm(name) in _STRONG for name in own):
        raise RefusedError(
            "its manifests are of a kind that can be forged: SHA-256 or better is read"
        )
    tags = {name: data for name, data in bag.items() if name not in payload}
    for name in own:
        told = dict(_digests(name, bag[name], version))
        _compare(name, told, payload, "payload")
        if version == "1.0" or _algorithm(name) in _STRONG:
            _all_named(name, told, payload)
    for name in sorted(set(manifests) - set(own)):
        told = dict(_digests(name, bag[name], version))
        for path in told:
            if path.startswith("tagmanifest-"):
                raise RefusedError(f"{name} names a manifest of its own kind, `{printable(path)}`")
        _compare(name, told, tags, "tag file")
    _check_info(bag.get("bag-info.txt"), payload)
    return {name.removeprefix("data/"): data for name, data in payload.items()}


def _in_one_folder(files: Mapping[str, bytes]) -> dict[str, bytes]:
    tops = {name.partition("/")[0] for name in files}
    if "bagit.txt" in files or len(tops) != 1 or any("/" not in name for name in files):
        if not any(name.rpartition("/")[2] == "bagit.txt" for name in files):
            raise RefusedError("it is not a bag: no bagit.txt is in it")
        raise RefusedError("its files do not lie in one folder")
    top = next(iter(tops))
    bag = {name.removeprefix(f"{top}/"): data for name, data in files.items()}
    if "bagit.txt" not in bag:
        raise RefusedError("it is not a bag: no bagit.txt is in it")
    return bag


def _version(bag: Mapping[str, bytes]) -> str:
    raw = bag["bagit.txt"]
    if raw.startswith(b"\xef\xbb\xbf"):
        raise RefusedError("bagit.txt starts with a byte order mark, which the standard forbids")
    found = _DECLARATION.match(_read("bagit.txt", raw)) if len(raw) <= _MOST_DECLARED else None
    if found is None:
        raise RefusedError("bagit.txt does not say which bag this is, in its two lines")
    version, encoding = found[1], found[2]
    if version not in _VERSIONS:
        raise RefusedError(f"it is a bag of version {version}; 1.0 and 0.97 are read")
    if encoding.upper() not in ("UTF-8", "UTF8"):
        raise RefusedError(f"its lists are written in {encoding}; UTF-8 is read")
    return version


def _algorithm(name: str) -> str:
    found = _MANIFEST.match(name)
    algorithm = found[2] if found else ""
    if algorithm not in _ALGORITHMS:
        raise RefusedError(f"{name} is of a kind that is not known here")
    return algorithm


def _digests(name: str, raw: bytes, version: str) -> Iterator[tuple[str, str]]:
    """Each path that a manifest names, with its digest."""
    algorithm = _algorithm(name)
    length = hashlib.new(_ALGORITHMS[algorithm], usedforsecurity=False).digest_size * 2
    seen: set[str] = set()
    for number, line in enumerate(_lines(name, raw, MOST_LIST), start=1):
        if not line.strip():
            continue
        found = _LINE.match(line)
        if found is None or len(found[1]) != length:
            raise RefusedError(f"{name}, line {number}: this is no digest with a path")
        path = found[2].removeprefix("*") if version == "0.97" else decoded(found[2])
        refuse_path(path)
        payload = path.startswith("data/")
        if payload == name.startswith("tag"):
            where = "outside" if not payload else "in"
            raise RefusedError(
                f"{name}, line {number}: `{printable(path)}` lies {where} the folder data"
            )
        if path in seen:
            raise RefusedError(f"{name}, line {number}: `{printable(path)}` is named twice")
        seen.add(path)
        yield path, found[1].lower()


def _compare(name: str, told: Mapping[str, str], files: Mapping[str, bytes], what: str) -> None:
    algorithm = _ALGORITHMS[_algorithm(name)]
    for path, digest in told.items():
        if path not in files:
            raise RefusedError(f"the {what} `{printable(path)}` is missing, though {name} names it")
        if hashlib.new(algorithm, files[path], usedforsecurity=False).hexdigest() != digest:
            raise RefusedError(f"the {what} `{printable(path)}` was changed after it was packed")


def _all_named(name: str, told: Mapping[str, str], payload: Mapping[str, bytes]) -> None:
    for path in payload:
        if path not in told:
            raise RefusedError(f"`{printable(path)}` was added: {name} does not name it")


def _check_info(raw: bytes | None, payload: Mapping[str, bytes]) -> None:
    if raw is None:
        return
    if b"\0" in raw:
        raise RefusedError("bag-info.txt holds a sign that is no letter")
    labels: list[tuple[str, list[str]]] = []
    for number, line in enumerate(_lines("bag-info.txt", raw, MOST_ABOUT), start=1):
        if line[:1] in (" ", "\t") and labels:
            labels[-1][1].append(line.strip())
        elif line.strip():
            if not _LABEL.match(line):
                raise RefusedError(f"bag-info.txt, line {number}: this is no label with its value")
            label, _, value = line.partition(":")
            labels.append((label.casefold(), [value.strip()]))
    oxums = [" ".join(value) for label, value in labels if label == "payload-oxum"]
    if len(oxums) > 1:
        raise RefusedError("bag-info.txt says twice how much is in the bag")
    there = f"{sum(map(len, payload.values()))}.{len(payload)}"
    if oxums and oxums[0] != there:
        raise RefusedError(
            f"bag-info.txt says {printable(oxums[0])} for bytes and files, and {there} are there"
        )


def _lines(name: str, raw: bytes, most: int) -> list[str]:
    if len(raw) > most:
        raise RefusedError(f"{name} has {len(raw):,} bytes, more than {most:,}")
    return _LINE_END.split(_read(name, raw))


def _read(name: str, raw: bytes) -> str:
    try:
        return raw.decode("utf-8")
    except UnicodeDecodeError:
        raise RefusedError(f"{name} is not written in UTF-8") from None
