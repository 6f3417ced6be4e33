"""The small pages at addresses that never change: each leads to its page in the current edition."""

from __future__ import annotations

import html
from collections.abc import Iterable
from pathlib import Path

from build_tools.disk.stray_files import is_beside
from build_tools.publishing.edition_folders import EDITIONS
from build_tools.publishing.pointer import POINTER
from build_tools.publishing.shared_folder import HeldFolder, read_file

GO = "go.js"
PLAIN = "current.html"
_MARK = "<!-- entry page -->"
_START = f"<!doctype html>\n{_MARK}\n".encode()
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
  } else if ([...edition.missing, ...(edition.coming || [])].includes(page)) {
    say("This page is not in the current edition. The link below leads to what is.");
  } else {
    const to = new URL(`editions/${edition.current}/${page}`, root);
    location.replace(to.href + location.search + location.hash);
  }
})();
"""


def entry_page(page: str, title: str, inside: str = "") -> bytes:
    """The entry page for `page`, a path with `/`; it holds nothing of any one edition.

    `inside` is the folder, ending in `/`, in which the page stands where that is not the top: an
    edition that was taken out keeps its addresses so.
    """
    up = "../" * f"{inside}{page}".count("/")
    scripts = (
        f'<script src="{up}{POINTER}"></script>\n'
        f'<script src="{up}{GO}" data-page="{html.escape(page)}"></script>\n'
    )
    body = (
        "<p data-say>This page leads to the current edition.</p>\n"
        f'<p><a href="{up}{PLAIN}">Go to the current edition</a></p>'
    )
    return _filled(title, scripts, body)


def go_script() -> bytes:
    """The script that the entry pages share."""
    return _SCRIPT.encode()


def plain_page(edition: str, title: str) -> bytes:
    """The page that leads readers without script to the current edition's front page."""
    body = f'<p><a href="{EDITIONS}/{html.escape(edition)}/index.html">Open the units</a></p>'
    return _filled(title, "", body)


def is_entry_page(path: Path) -> bool:
    """Whether the file at `path` is an entry page of ours, whole, cut short or empty."""
    data = read_file(path)
    return data is not None and (data.startswith(_START) or _START.startswith(data))


def pages_of(edition: Path) -> tuple[str, ...]:
    """The pages of an edition that have an entry page: all its HTML files."""
    pages = (path.relative_to(edition).as_posix() for path in edition.rglob("*.html"))
    return tuple(sorted(page for page in pages if not is_beside(page)))


def pages_listed(files: Iterable[str]) -> tuple[str, ...]:
    """The pages among the files of an edition."""
    return tuple(sorted(name for name in files if name.endswith(".html")))


def entries_in(target: Path) -> tuple[str, ...]:
    """The pages that have an entry page in a published folder."""
    found = []
    for top in target.iterdir():
        # The editions hold thousands of pages, and none of them is an entry page.
        if top.name != EDITIONS:
            found += [path for path in (top, *top.rglob("*.html")) if path.suffix == ".html"]
    names = (path.relative_to(target).as_posix() for path in found if is_entry_page(path))
    return tuple(sorted(name for name in names if name != PLAIN))


def stable_files(pages: Iterable[str], edition: str, title: str) -> dict[str, bytes]:
    """All that stands at addresses that never change, but the pointer: each file with its bytes."""
    return {
        GO: go_script(),
        PLAIN: plain_page(edition, title),
        **{page: entry_page(page, title) for page in sorted(pages)},
    }


def write_entries(target: HeldFolder, pages: Iterable[str], title: str) -> None:
    """Write the entry pages that are not there yet or differ, and the script they share."""
    target.write_new(GO, go_script())
    for page in sorted(pages):
        target.write_new(page, entry_page(page, title))


def write_plain(target: HeldFolder, edition: str, title: str) -> None:
    """Write the page for readers without script."""
    target.write_new(PLAIN, plain_page(edition, title))


def _filled(title: str, scripts: str, body: str) -> bytes:
    page = _PAGE.format(
        mark=_MARK, policy=_POLICY, title=html.escape(title), scripts=scripts, body=body
    )
    return page.encode()
