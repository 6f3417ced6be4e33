"""Every link of the bank opened from a folder leads somewhere within it."""

from __future__ import annotations

import posixpath
from collections.abc import Iterable
from functools import cache
from pathlib import Path
from urllib.parse import unquote, urlsplit

from tests.support.banks import LOOKED_AT
from tests.support.built_sites import html_pages
from tests.support.markup import Tag, ids, references, tags


def broken_links(folder: Path, paths: Iterable[str]) -> list[str]:
    """Every link and every loaded address of the pages that leads nowhere, by its page."""

    @cache
    def read(path: str) -> list[Tag]:
        return tags((folder / path).read_text(encoding="utf-8"))

    @cache
    def places(path: str) -> frozenset[str]:
        return frozenset(ids(read(path)))

    broken = []
    for path in paths:
        for tag, address in references(read(path)):
            parts = urlsplit(address)
            if parts.scheme == "data":
                continue
            here = posixpath.dirname(path)
            target = posixpath.normpath(posixpath.join(here, unquote(parts.path)))
            target = target if parts.path else path
            place = unquote(parts.fragment)
            if parts.scheme or parts.netloc or parts.path.startswith("/"):
                broken.append(f"{path}: <{tag.name}> leads out of the folder to {address}")
            elif target.startswith("..") or not (folder / target).is_file():
                broken.append(f"{path}: no file for {address}")
            elif place and target.endswith(".html") and place not in places(target):
                broken.append(f"{path}: no such place as {address}")
    return broken


def test_every_link_of_every_page_leads_somewhere(site: Path, thorough: bool) -> None:
    """In the usual run those of the units that are looked at, and of the bank."""
    pages = html_pages(site)
    if not thorough:
        units = [f"units/{slug}/" for slug in LOOKED_AT]
        pages = [one for one in pages if not one.startswith("units/") or one.startswith((*units,))]
    broken = broken_links(site, pages)
    assert not broken, "\n".join(broken)


def test_a_link_that_leads_nowhere_would_be_noticed(tmp_path: Path) -> None:
    (tmp_path / "a.html").write_text(
        '<p id="here"><a href="#here">1</a><a href="#gone">2</a><a href="b.html">3</a>'
        '<a href="../a.html">4</a><a href="https://example.org/">5</a>',
        encoding="utf-8",
    )
    assert len(broken_links(tmp_path, ["a.html"])) == 4
