"""A sound unit as one file for another school, with its pages, its credits and its licence."""

from __future__ import annotations

import hashlib
import posixpath
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date
from pathlib import Path

from build_tools.building.assets import asset_files
from build_tools.building.finishing.one_file import one_file
from build_tools.building.finishing.smaller import as_published
from build_tools.building.unit_files import drawn
from build_tools.disk.places import PROJECT
from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.packs.about import about, metadata
from build_tools.packs.bag import bagged
from build_tools.packs.credits import credits_text
from build_tools.packs.licences import licence_text
from build_tools.packs.zipping import zipped
from build_tools.page_words.speaking import speaking
from build_tools.pages.assemble import further_pages
from build_tools.pages.lesson.lesson import lesson_page
from build_tools.pages.pieces.doors import doors
from build_tools.pages.unit.unit import unit_page
from build_tools.pictures.publishable import cleaned
from build_tools.pictures.trouble import PictureError
from build_tools.shapes.schemas import SCHEMA_FOLDER
from build_tools.source.media_files import lies_in
from build_tools.source.shared_spelled import as_it_goes

_SCHEMAS = ("unit", "lesson", "shared")


@dataclass(frozen=True, slots=True)
class PackFile:
    """A finished pack: its file's name and its bytes."""

    name: str
    data: bytes


@dataclass(frozen=True, slots=True)
class PackPage:
    """A page of a pack: its file's name and its bytes."""

    name: str
    data: bytes


def made_pack(bank: Bank, unit: Unit, folder: Path) -> PackFile:
    """The pack of a sound `unit` whose files lie in `folder`; `bank` gives the list of words.

    Raises PictureError where a picture cannot be freed of what it carries unseen.
    """
    sources = {
        name: as_it_goes(folder, name)
        for name in ("unit.md", *(f"lesson-{lesson.number}.md" for lesson in unit.lessons))
    }
    for name in sorted(unit.media):
        try:
            sources[name] = cleaned(name, lies_in(folder, name).read_bytes())
        except PictureError as error:
            raise PictureError(f"{(folder / name).as_posix()}: {error}") from None
    made_with = version()
    payload = {
        **{f"unit/{name}": data for name, data in sources.items()},
        **{f"pages/{page.name}": page.data for page in _pages(bank, unit, sources)},
        "about.json": about(unit, _written_in(unit), made_with),
        **said_beside(unit),
    }
    top = f"{unit.slug}-{unit.edition}"
    info = (
        ("Source-Organization", unit.publisher),
        ("External-Identifier", top),
        ("External-Description", f"{unit.title}. {unit.summary}"),
        ("Bagging-Date", unit.issued),
        ("Bag-Software-Agent", f"dance unit bank {made_with}"),
    )
    data = zipped(top, bagged(payload, info), date.fromisoformat(unit.issued))
    return PackFile(f"{top}.zip", data)


def said_beside(unit: Unit) -> dict[str, bytes]:
    """What goes with a unit in words, and says what the unit says: licence, credits, metadata."""
    return {
        "licence.txt": licence_text(unit.licence).encode(),
        "credits.txt": credits_text(unit).encode(),
        "metadata.jsonld": metadata(unit),
    }


def alone(bank: Bank, unit: Unit) -> Bank:
    """The bank as a pack's pages show it: under the publisher's name, and without its topics."""
    return replace(bank, name=unit.publisher, topics={})


def pages_in_pack(
    files: Mapping[str, bytes], unit: Unit, sources: Mapping[str, bytes]
) -> Iterator[PackPage]:
    """The unit's page and its lessons, each whole in itself, with ways to one another.

    `files` has the pages of the unit `alone` and what they load, by their paths in a site;
    `sources` has the unit's own files.
    """
    folder = f"units/{unit.slug}"
    names = [
        "index.html",
        *(door.href for door in doors(unit)),
        *(f"lesson-{lesson.number}.html" for lesson in unit.lessons),
    ]

    def read(address: str) -> bytes:
        return sources.get(address) or files[posixpath.normpath(posixpath.join(folder, address))]

    for name in names:
        html = one_file(files[f"{folder}/{name}"].decode(), read, names)
        yield PackPage(name, html.encode())


def _pages(bank: Bank, unit: Unit, sources: Mapping[str, bytes]) -> Iterator[PackPage]:
    lonely = alone(bank, unit)
    with speaking(unit.language):
        pages = [
            unit_page(lonely, unit),
            *further_pages(lonely, unit),
            *(lesson_page(lonely, unit, one) for one in unit.lessons),
        ]
    files = {path: as_published(html) for path, html in drawn(pages).items()}
    yield from pages_in_pack({**asset_files(), **files}, unit, sources)


def _written_in(unit: Unit) -> dict[str, object]:
    """The format that the unit is written in, and a digest of the schemas that say so."""
    digest = hashlib.sha512()
    for name in _SCHEMAS:
        text = (SCHEMA_FOLDER / f"{name}.schema.json").read_text(encoding="utf-8")
        digest.update(text.encode())
    return {"format": unit.format, "sha512": digest.hexdigest()}


def version() -> str:
    """This software's version."""
    project = tomllib.loads((PROJECT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    return str(project["version"])
