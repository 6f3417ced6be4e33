"""Some pages of a site with all that pages load, where a test asks nothing of the others.

They are made by what `site` makes them by, in a small part of the time that all pages take.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path

from build_tools.building.finder_files import card_files, finder_files
from build_tools.building.finishing.smaller import as_published
from build_tools.building.unit_files import assets_once, drawn
from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.pages.assemble import listed
from build_tools.pages.front.front import front_page
from build_tools.pages.page import Page


def with_pages(folder: Path, pages: Iterable[Page]) -> Path:
    """The folder, which has these pages and all that pages load."""
    html = {path: as_published(text) for path, text in drawn(pages).items()}
    return with_files(folder, {**assets_once(), **html})


def with_front(folder: Path, bank: Bank, units: Sequence[Unit], content: Path) -> Path:
    """The folder, which has the front page of a bank of these units, and its finder.

    `content` has a folder for each unit, of the unit's name.
    """
    said = [listed(bank, unit).shelved for unit in units]
    with_pages(folder, [front_page(bank, said)])
    with_files(folder, finder_files(bank, [one.found for one in said]))
    for unit in units:
        with_files(folder, card_files(bank, unit, content))
    return folder


def with_files(folder: Path, files: Mapping[str, bytes]) -> Path:
    """The folder, which has these files, each by its path."""
    for path, data in files.items():
        (folder / path).parent.mkdir(parents=True, exist_ok=True)
        (folder / path).write_bytes(data)
    return folder
