"""The plain peer of a lesson page: the same words on the publisher's own theme, nothing changed."""

from __future__ import annotations

import logging
import os
from pathlib import Path

from mkdocs.commands.build import build
from mkdocs.config import load_config
from playwright.sync_api import Browser

SETTINGS = """\
site_name: The same words
theme:
  name: material
  font: false
use_directory_urls: false
plugins: []
"""


def build_plain(words: str, folder: Path) -> Path:
    """Build a site of one page with `words`, a paragraph to a line, and return the page."""
    docs = folder / "docs"
    docs.mkdir(parents=True)
    paragraphs = [line.strip() for line in words.splitlines() if line.strip()]
    (docs / "index.md").write_text("\n\n".join(map(_as_text, paragraphs)), encoding="utf-8")
    (folder / "mkdocs.yml").write_text(SETTINGS, encoding="utf-8")
    os.environ.setdefault("NO_MKDOCS_2_WARNING", "true")
    logging.getLogger("mkdocs").setLevel(logging.ERROR)
    build(load_config(str(folder / "mkdocs.yml"), site_dir=str(folder / "site")))
    return folder / "site" / "index.html"


def _as_text(line: str) -> str:
    """A line whose signs Markdown leaves as they are."""
    return "".join(f"\\{sign}" if sign in "\\`*_{}[]<>()#+-.!|" else sign for sign in line)


def words_of(browser: Browser, page: Path) -> str:
    """Every word of a page's main part, what is folded away too."""
    tab = browser.new_page()
    try:
        tab.goto(page.resolve().as_uri())
        tab.evaluate("for (const one of document.querySelectorAll('details')) one.open = true")
        return tab.locator("main").inner_text()
    finally:
        tab.close()
