"""The site of a bank with a question to show, without the page for advisers and with it."""

from __future__ import annotations

import shutil
from pathlib import Path

from build_tools import cli
from tests.support.banks import CONTENT, change
from tests.support.sound_bank import unit_named

SMALL = unit_named("kite-and-string")
"""The unit of the bank; what is asked of the page does not hang on how much there is of it."""


def make(folder: Path) -> None:
    """Build both in `folder`, plain and review."""
    bank, minutes = folder / "content", SMALL.lessons[0].minutes
    shutil.copytree(CONTENT, bank, ignore=shutil.ignore_patterns("units"))
    shutil.copytree(CONTENT / "units" / SMALL.slug, bank / "units" / SMALL.slug)
    lesson = bank / "units" / SMALL.slug / "lesson-1.md"
    change(lesson, f"\nminutes: {minutes}\n", f"\nminutes: {minutes + 1}\n")
    with (bank / "bank.yml").open("a", encoding="utf-8") as file:
        file.write("\ngrades: {minutes-do-not-add-up: question}\n")
    keep_an_earlier_edition(bank)
    for name, extra in (("plain", []), ("review", ["--review"])):
        out = str(folder / name)
        assert cli.main(["site", "--content", str(bank), "--out", out, *extra]) == 0


def keep_an_earlier_edition(bank: Path) -> None:
    """An edition to compare with, and one that cannot be read, so that the page shows both."""
    slug = SMALL.slug
    before = bank / "earlier" / f"{slug}-{SMALL.edition}"
    shutil.copytree(bank / "units" / slug, before)
    lesson = before / "lesson-1.md"
    title = SMALL.lessons[0].title
    lesson.write_text(lesson.read_text("utf-8").replace(title, "Another title", 1), "utf-8")
    (bank / "earlier" / f"{slug}-0.9.0.zip").write_bytes(b"no zip")
