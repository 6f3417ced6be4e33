"""The site of a bank with a question to show, without the page for advisers and with it."""

from __future__ import annotations

import shutil
from pathlib import Path

from build_tools import cli
from tests.support.banks import copy_bank
from tests.support.sound_bank import real_unit


def make(folder: Path) -> None:
    """Build both in `folder`, plain and review."""
    bank = copy_bank(folder)
    lesson = bank / "units" / real_unit().slug / "lesson-1.md"
    text = lesson.read_text(encoding="utf-8")
    lesson.write_text(text.replace("minutes: 45\n", "minutes: 46\n", 1), encoding="utf-8")
    with (bank / "bank.yml").open("a", encoding="utf-8") as file:
        file.write("\ngrades: {minutes-do-not-add-up: question}\n")
    keep_an_earlier_edition(bank)
    for name, extra in (("plain", []), ("review", ["--review"])):
        out = str(folder / name)
        assert cli.main(["site", "--content", str(bank), "--out", out, *extra]) == 0


def keep_an_earlier_edition(bank: Path) -> None:
    """An edition to compare with, and one that cannot be read, so that the page shows both."""
    slug = real_unit().slug
    before = bank / "earlier" / f"{slug}-{real_unit().edition}"
    shutil.copytree(bank / "units" / slug, before)
    lesson = before / "lesson-1.md"
    title = real_unit().lessons[0].title
    lesson.write_text(lesson.read_text("utf-8").replace(title, "Another title", 1), "utf-8")
    (bank / "earlier" / f"{slug}-0.9.0.zip").write_bytes(b"no zip")
