"""Small sites to publish, and a reader who walks a published folder as a browser would."""

from __future__ import annotations

import hashlib
import json
from dataclasses import dataclass, field
from pathlib import Path

DAY, TITLE = "2026-11-25", "A bank"

FRONT = "index.html"


def page_of(version: int, path: str, links: tuple[str, ...] = ()) -> str:
    """A page that says which version of the site it belongs to, and its own digest."""
    said = f"version {version} of {path}, " + "words " * 200 + ", ".join(links)
    return f"<p>{said}</p><p>{hashlib.sha512(said.encode()).hexdigest()}</p>"


def make_site(folder: Path, version: int, units: int = 6) -> Path:
    """A site of `units` units with two lessons each; one unit comes and goes with the version."""
    pages = [f"units/unit-{n}/{page}.html" for n in range(units) for page in ("index", "lesson-1")]
    if version % 2:
        pages += [f"units/odd-{version}/index.html"]
    for path in pages:
        write(folder / path, page_of(version, path))
    write(folder / FRONT, page_of(version, FRONT, tuple(pages)))
    write(folder / "assets" / "css" / "look.css", f"/* version {version} */")
    return folder


def write(path: Path, text: str) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, encoding="utf-8")


@dataclass
class Walk:
    """What a reader met: how many pages were read, which versions, and everything broken."""

    pages: int = 0
    versions: set[int] = field(default_factory=set)
    broken: list[str] = field(default_factory=list)

    def once(self, target: Path) -> None:
        """Open the folder at its front page, follow the pointer and read every page it lists."""
        try:
            pointer = json.loads(
                (target / "current.js")
                .read_text(encoding="utf-8")
                .removeprefix("window.danceUnitBankEdition = ")
                .removesuffix(";\n")
            )
            edition = target / "editions" / pointer["current"]
            front = self.page(edition / FRONT)
            version = int(front.split()[1])
            self.versions.add(version)
            listed = [word.strip(",") for word in front.split("</p>")[0].split() if "/" in word]
            for path in listed:
                if f"version {version} of {path}," not in self.page(edition / path):
                    self.broken.append(f"{edition.name}/{path} is not of version {version}")
                entry = target / path
                if entry.exists() and "entry page" not in entry.read_text(encoding="utf-8"):
                    self.broken.append(f"{entry} is no whole entry page")
        except (OSError, ValueError, IndexError, KeyError) as error:
            self.broken.append(f"{type(error).__name__}: {error}")

    def page(self, path: Path) -> str:
        """Read one page and compare it with the digest it carries."""
        text = path.read_text(encoding="utf-8")
        said, _, digest = text.removeprefix("<p>").partition("</p><p>")
        if hashlib.sha512(said.encode()).hexdigest() != digest.removesuffix("</p>"):
            self.broken.append(f"{path} was read half")
        self.pages += 1
        return said


def walked(target: Path) -> Walk:
    walk = Walk()
    walk.once(target)
    assert walk.broken == []
    return walk
