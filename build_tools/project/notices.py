"""What the project bundles and what its software uses: name, version, licence, digest.

Read from the locks, not from the machine, so that every system writes the same `NOTICES.json`.
"""

from __future__ import annotations

import hashlib
import json
import re
import tomllib
from dataclasses import asdict, dataclass
from importlib.metadata import PackageMetadata, distribution, metadata
from pathlib import Path

from build_tools.disk.places import PROJECT

FONT = "@fontsource/atkinson-hyperlegible-next"
FONT_NAME = "Atkinson Hyperlegible Next"
FONT_FOLDER = Path("site_overrides/frame/fonts")
LICENCE_FOLDER = Path("build_tools/packs/licence_texts")
LICENCE_SOURCE = ("spdx-license-list", "6.12.0", "CC0-1.0")
"""Where the licences' texts were taken from: the npm package's name, version and licence."""
PIN = re.compile(r"^(?P<name>[a-z0-9.-]+)==(?P<version>[^\s;]+)(?: *; *(?P<marker>[^\\]+?))? *\\?$")
HASH = re.compile(r"--hash=(?P<hash>sha256:[0-9a-f]{64})")
COMMENT = "    # "
LONGEST_LICENCE_NAME = 60


@dataclass(frozen=True, slots=True)
class Pin:
    """One package of the lock; `parents` are the packages that ask for it."""

    name: str
    version: str
    marker: str
    digest: str
    parents: frozenset[str]


@dataclass(frozen=True, slots=True)
class UsedPart:
    """One part that is bundled, or that the software uses."""

    name: str
    version: str
    licence: str
    digest: str
    role: str


def normal(name: str) -> str:
    """A package's name as the lock spells it."""
    return re.sub(r"[-_.]+", "-", name).lower()


def read_lock(text: str) -> dict[str, Pin]:
    """The packages of requirements.lock by name."""
    blocks = re.split(r"\n(?=[a-z0-9])", text.strip())
    pins = (read_block(block) for block in blocks)
    return {pin.name: pin for pin in pins}


def read_block(block: str) -> Pin:
    """One package of the lock: its first line, its hashes, and the `# via` lines after them."""
    lines = block.splitlines()
    pin = PIN.match(lines[0])
    digest = HASH.search(block)
    if pin is None or digest is None:
        raise ValueError(f"requirements.lock has a line of another form: {lines[0]}")
    said = (line.removeprefix(COMMENT) for line in lines if line.startswith(COMMENT))
    parents = frozenset(normal(words[0]) for line in said if (words := parent_words(line)))
    marker = (pin["marker"] or "").strip()
    return Pin(pin["name"], pin["version"], marker, digest["hash"], parents)


def parent_words(comment: str) -> list[str]:
    """The words after `via`: the asking package, and for the project itself its file."""
    return comment.removeprefix("via").split()


def run_time_names(pyproject: str) -> list[str]:
    """The packages that `[project].dependencies` names."""
    wanted = tomllib.loads(pyproject)["project"]["dependencies"]
    return [normal(re.split(r"[^A-Za-z0-9._-]", line, maxsplit=1)[0]) for line in wanted]


def closure(pins: dict[str, Pin], names: list[str]) -> list[Pin]:
    """Those packages and all that they ask for, sorted by name."""
    found = set(names)
    while more := {pin.name for pin in pins.values() if pin.parents & found} - found:
        found |= more
    return [pins[name] for name in sorted(found)]


def licence_of(about: PackageMetadata, text: str = "") -> str:
    """A package's licence: its expression, else its classifiers, else its short licence text.

    Else what the file of its licence says, `text`, where that is the MIT licence word for word.
    """
    if "License-Expression" in about:
        return about["License-Expression"]
    named = [
        line.rsplit(" :: ", 1)[1]
        for line in about.get_all("Classifier") or []
        if line.startswith("License :: ") and not line.endswith("OSI Approved")
    ]
    if named:
        return " and ".join(named)
    short = about["License"].strip() if "License" in about else ""
    if short and "\n" not in short and len(short) <= LONGEST_LICENCE_NAME:
        return short
    if permission(text) == permission((PROJECT / "LICENSE").read_text(encoding="utf-8")):
        return "MIT"
    raise ValueError(f"{about['Name']} states no licence: look it up and leave the package out")


def permission(licence: str) -> str:
    """What a licence says after who holds the rights, without its line ends."""
    return " ".join(licence.partition("Permission is hereby granted")[2].split())


def licence_file(name: str) -> str:
    """The file of its licence that a package brings; empty where it brings none."""
    for file in distribution(name).files or ():
        if file.name.startswith("LICENSE") and ".dist-info" in file.parts[0]:
            return file.read_text(encoding="utf-8")
    return ""


def package_notice(pin: Pin) -> UsedPart:
    """The notice of one package that the software uses."""
    role = "used by the software; nothing of it is published"
    if pin.marker:
        # Not installed on every system, so its own words cannot be read everywhere alike.
        licence = f"see the package, which is installed where {pin.marker}"
    else:
        licence = licence_of(metadata(pin.name), licence_file(pin.name))
    return UsedPart(pin.name, pin.version, licence, pin.digest, role)


def font_notices(root: Path) -> list[UsedPart]:
    """A notice for each font file that the site bundles."""
    lock = json.loads((root / "package-lock.json").read_text(encoding="utf-8"))
    font = lock["packages"][f"node_modules/{FONT}"]
    source = (FONT_NAME, font["version"], font["license"])
    return bundled(root, FONT_FOLDER, source, "bundled: published with every site")


def licence_notices(root: Path) -> list[UsedPart]:
    """A notice for each licence's text that a pack may carry."""
    return bundled(
        root, LICENCE_FOLDER, LICENCE_SOURCE, "bundled: goes with a pack under that licence"
    )


def bundled(root: Path, folder: Path, source: tuple[str, str, str], role: str) -> list[UsedPart]:
    """A notice for each file of `folder`; `source` is what all are from: name, version, licence."""
    name, version, licence = source
    return [
        UsedPart(
            name=f"{name}: {path.relative_to(root).as_posix()}",
            version=version,
            licence=licence,
            digest=f"sha256:{hashlib.sha256(path.read_bytes()).hexdigest()}",
            role=role,
        )
        for path in sorted(path for path in (root / folder).rglob("*") if path.is_file())
    ]


def notices_text(root: Path) -> str:
    """What NOTICES.json holds for this checkout."""
    pins = read_lock((root / "requirements.lock").read_text(encoding="utf-8"))
    names = run_time_names((root / "pyproject.toml").read_text(encoding="utf-8"))
    found = {
        "bundled": [asdict(one) for one in (*font_notices(root), *licence_notices(root))],
        "packages": [asdict(package_notice(pin)) for pin in closure(pins, names)],
    }
    return json.dumps(found, indent=2, ensure_ascii=False) + "\n"


def run(check: bool, root: Path = PROJECT) -> bool:
    """Write NOTICES.json, or with `check` only look at it; says whether it is fresh now."""
    path = root / "NOTICES.json"
    text = notices_text(root)
    if not check:
        path.write_text(text, encoding="utf-8", newline="\n")
        return True
    if path.is_file() and path.read_text(encoding="utf-8") == text:
        return True
    print("NOTICES.json is stale: run `python3 build_tools notices`")
    return False
