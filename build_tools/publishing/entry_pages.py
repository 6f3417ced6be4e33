"""The small pages at addresses that never change: each leads to its page in the current edition."""

from __future__ import annotations

import html
from pathlib import Path

from build_tools.publishing.pointer import POINTER
from build_tools.stray_files import is_beside
from build_tools.sure_files import write_whole

GO = "go.js"
PLAIN = "current.html"
EDITIONS = "editions"
_MARK = "<!-- entry page -->"
_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src data:; "
    "base-uri 'none'; form-action 'none'"
)
_PAGE = """<!doctype html>
{mark}
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="{policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>{title}</title>
<link rel="icon" href="data:,">
{scripts}</head>
<body>
<main>
<h1>{title}</h1>
{body}
</main>
</body>
</html>
"""
_SCRIPT = """\
// Leads from an entry page to the same page of the current edition, with what the address carries.
(() => {
  const here = document.currentScript;
  const page = here.dataset.page;
  const edition = window.danceUnitBankEdition;
  const root = new URL(".", here.src);
  const say = (words) => addEventListener("DOMContentLoaded", () => {
    document.querySelector("[data-say]").textContent = words;
  });
  if (!edition) {
    say("The current edition could not be read. Try again in a minute.");
  } else if (edition.missing.includes(page)) {
    say("This page is not in the current edition. The link below leads to what is.");
  } else {
    const to = new URL(`editions/${edition.current}/${page}`, root);
    location.replace(to.href + location.search + location.hash);
  }
})();
"""


def entry_page(page: str, title: str) -> bytes:
    """The entry page for `page`, a path with `/`; it holds nothing of any one edition."""
    up = "../" * page.count("/")
    scripts = (
        f'<script src="{up}{POINTER}"></script>\n'
        f'<script src="{up}{GO}" data-page="{html.escape(page)}"></script>\n'
    )
    body = (
        "<p data-say>This page leads to the current edition.</p>\n"
        f'<p><a href="{up}{PLAIN}">Go to the current edition</a></p>'
    )
    return _filled(title, scripts, body)


def plain_page(edition: str, title: str) -> bytes:
    """The page that leads readers without script to the current edition's front page."""
    body = f'<p><a href="editions/{html.escape(edition)}/index.html">Open the units</a></p>'
    return _filled(title, "", body)


def is_entry_page(path: Path) -> bool:
    """Whether the file at `path` is an entry page of ours, and not somebody else's page."""
    try:
        with path.open("rb") as file:
            return _MARK.encode() in file.read(200)
    except OSError:
        return False


def pages_of(edition: Path) -> tuple[str, ...]:
    """The pages of an edition that have an entry page: all its HTML files."""
    pages = (path.relative_to(edition).as_posix() for path in edition.rglob("*.html"))
    return tuple(sorted(page for page in pages if not is_beside(page)))


def entries_in(target: Path) -> tuple[str, ...]:
    """The pages that have an entry page in a published folder."""
    found = []
    for top in target.iterdir():
        # The editions hold thousands of pages, and none of them is an entry page.
        if top.name != EDITIONS:
            found += [path for path in (top, *top.rglob("*.html")) if path.suffix == ".html"]
    names = (path.relative_to(target).as_posix() for path in found if is_entry_page(path))
    return tuple(sorted(name for name in names if name != PLAIN))


def write_entries(target: Path, pages: tuple[str, ...], title: str) -> None:
    """Write the entry pages that are not there yet or differ, and the script they share."""
    _write_new(target / GO, _SCRIPT.encode())
    for page in pages:
        path = target / page
        path.parent.mkdir(parents=True, exist_ok=True)
        _write_new(path, entry_page(page, title))


def write_plain(target: Path, edition: str, title: str) -> None:
    """Write the page for readers without script."""
    _write_new(target / PLAIN, plain_page(edition, title))


def _write_new(path: Path, data: bytes) -> None:
    if not path.is_file() or path.read_bytes() != data:
        write_whole(path, data)


def _filled(title: str, scripts: str, body: str) -> bytes:
    page = _PAGE.format(
        mark=_MARK, policy=_POLICY, title=html.escape(title), scripts=scripts, body=body
    )
    return page.encode()
