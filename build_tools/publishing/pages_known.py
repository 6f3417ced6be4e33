"""Which pages a published folder has, or had: each has an address that never changes."""

from __future__ import annotations

from pathlib import Path

from build_tools.publishing.digests import files_in, read_manifest
from build_tools.publishing.edition_folders import EDITIONS, editions_in, gone_in
from build_tools.publishing.entry_pages import entries_in, pages_listed
from build_tools.publishing.signposts import pages_gone


def edition_pages(target: Path, name: str) -> tuple[str, ...]:
    """The pages of an edition: by its list of files, or by its files where that is lost."""
    folder = target / EDITIONS / name
    return pages_listed(read_manifest(folder) or files_in(folder))


def pages_ever(target: Path) -> set[str]:
    """The pages of every edition that is or was here."""
    kept = {page for name in editions_in(target) for page in edition_pages(target, name)}
    return kept | {
        page for name in gone_in(target) for page in pages_gone(target / EDITIONS / name)
    }


def known_pages(target: Path) -> set[str]:
    """Every page that has an entry page, or had one."""
    return {*entries_in(target)} | pages_ever(target)
