"""All that is published of the bank as a whole: its pages, and what every page loads."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence

from build_tools.building.assets import asset_files
from build_tools.building.finder_files import finder_files
from build_tools.building.finishing.smaller import as_published
from build_tools.building.unit_files import drawn
from build_tools.checking.check_bank import Report
from build_tools.comparing.comparison import SinceLast
from build_tools.disk.places import PROJECT
from build_tools.model.bank import Bank
from build_tools.pages.about.about import Notice
from build_tools.pages.assemble import Listed, shared_pages
from build_tools.pages.review.review import review_page
from build_tools.pages.rules.rules import rule_entries
from build_tools.shapes.schemas import schema

SCHEMAS_SHOWN = (
    "unit", "lesson", "shared", "bank", "topics", "words", "near", "pictures", "safety",
)  # fmt: skip


def shared_files(bank: Bank, units: Sequence[Listed]) -> dict[str, bytes]:
    """Each file by its path in the site; `units` are those that are published."""
    schemas = {name: schema(name) for name in SCHEMAS_SHOWN}
    pages = drawn(shared_pages(bank, units, rule_entries(), notices(), schemas))
    found = finder_files(bank, [one.shelved.found for one in units])
    return {
        **asset_files(),
        **found,
        **{path: as_published(html) for path, html in pages.items()},
    }


def review_files(bank: Bank, report: Report, since: Mapping[str, SinceLast]) -> dict[str, bytes]:
    """The advisers' page; no other page changes.

    `since` is what changed since the edition kept of each unit, by its folder's name.
    """
    pages = drawn([review_page(bank, report, since)])
    return {path: as_published(html) for path, html in pages.items()}


def notices() -> tuple[Notice, ...]:
    """Every part that is bundled or that the software uses, from NOTICES.json."""
    listed = json.loads((PROJECT / "NOTICES.json").read_text(encoding="utf-8"))
    return tuple(Notice(**entry) for entry in (*listed["bundled"], *listed["packages"]))
