"""A checked bank to a folder of pages: the full site in batches, or the pages of one unit."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from pathlib import Path

from build_tools.building.assets import copy_assets
from build_tools.building.finishing.bound import bound
from build_tools.building.finishing.one_file import one_file
from build_tools.building.mkdocs_adapter import render
from build_tools.checking.check_bank import Report
from build_tools.comparing.comparison import SinceLast
from build_tools.disk.places import PROJECT
from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.pages.about.about import Notice
from build_tools.pages.assemble import shared_pages, unit_pages
from build_tools.pages.review.review import review_page
from build_tools.pages.rules.rules import rule_entries
from build_tools.pictures.publishable import cleaned
from build_tools.schema_check.schemas import schema

SCHEMAS_SHOWN = ("unit", "lesson", "shared", "bank", "topics", "words", "safety")


def published_units(bank: Bank) -> tuple[Unit, ...]:
    """The units that go into the site: all but drafts."""
    return tuple(unit for unit in bank.units if not unit.draft)


def build_site(bank: Bank, content: Path, out: Path) -> None:
    """Write the whole site below `out`: shared pages in one batch, each unit in its own."""
    shown = published_units(bank)
    copy_assets(out)
    render(shared_pages(bank, rule_entries(), notices(), _schemas()), out)
    for unit in shown:
        build_unit_pages(bank, unit, content, out)


def build_unit_pages(bank: Bank, unit: Unit, content: Path, out: Path) -> None:
    """Write the pages and media of one unit below `out`."""
    render(unit_pages(bank, unit), out)
    for file in sorted(unit.media):
        _publish(content / "units" / unit.slug / file, out / "units" / unit.slug / file)
    _bind(out / "units" / unit.slug, [lesson.number for lesson in unit.lessons])


def _bind(folder: Path, numbers: Iterable[int]) -> None:
    """Write what is made of finished pages: the booklet, and each lesson as one file to keep."""

    def page(name: str) -> str:
        return (folder / name).read_text(encoding="utf-8")

    def write(name: str, html: str) -> None:
        (folder / name).write_text(html, encoding="utf-8", newline="\n")

    write("booklet.html", bound(page("booklet.html"), page))
    for number in numbers:
        kept = one_file(page(f"lesson-{number}.html"), lambda name: (folder / name).read_bytes())
        write(f"lesson-{number}-to-keep.html", kept)


def build_review(bank: Bank, report: Report, since: Mapping[str, SinceLast], out: Path) -> None:
    """Write the advisers' page below `out`; no other page changes.

    `since` is what changed since the edition kept of each unit, by its folder's name.
    """
    render([review_page(bank, report, since)], out)


def notices() -> tuple[Notice, ...]:
    """Every part that is bundled or that the software uses, from NOTICES.json."""
    listed = json.loads((PROJECT / "NOTICES.json").read_text(encoding="utf-8"))
    return tuple(Notice(**entry) for entry in (*listed["bundled"], *listed["packages"]))


def _schemas() -> dict[str, dict[str, object]]:
    return {name: schema(name) for name in SCHEMAS_SHOWN}


def _publish(picture: Path, goal: Path) -> None:
    """Write the picture as it may be shown to anybody; checking has found that it may."""
    goal.parent.mkdir(parents=True, exist_ok=True)
    goal.write_bytes(cleaned(picture.name, picture.read_bytes()))
