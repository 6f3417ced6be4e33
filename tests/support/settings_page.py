"""A page of nothing but what keeps a teacher's settings, opened in a third of a lesson's time."""

from __future__ import annotations

import shutil
from pathlib import Path

from build_tools.disk.places import OVERRIDES
from build_tools.pages.page_scripts import PAGE_SCRIPTS

UNIT = "rock-pool"
PAGE = f"units/{UNIT}/lesson-3.html"
"""Named as a lesson's page is, since settings know by the address which lesson is open."""
_SETTINGS = "sums/settings.js"
_NEEDED = ("pieces/page-words.js", "sums/school-year.js", _SETTINGS)


def settings_page(folder: Path) -> Path:
    """The folder, which has the page `PAGE` with the scripts as they are written."""
    (folder / PAGE).parent.mkdir(parents=True)
    loaded = PAGE_SCRIPTS["lesson.js"]
    scripts = [name for name in loaded[: loaded.index(_SETTINGS) + 1] if name in _NEEDED]
    assert len(scripts) == len(_NEEDED)
    for name in scripts:
        shutil.copyfile(OVERRIDES / name, (folder / PAGE).with_name(name.rpartition("/")[2]))
    tags = "".join(f'<script src="{name.rpartition("/")[2]}"></script>' for name in scripts)
    links = "".join(f'<a data-carry href="lesson-{n}.html">{n}</a>' for n in (2, 4, 5))
    (folder / PAGE).write_text(
        f'<!doctype html><html lang="en-GB"><meta charset="utf-8"><title>A lesson</title>'
        f'<article data-unit="{UNIT}" data-lesson="3">{links}</article>{tags}</html>',
        encoding="utf-8",
    )
    return folder
