"""Editions that were taken out: their pages stay as signposts, so that no bookmark ends nowhere.

A page that somebody left open, or a bookmark of an edition's own address, leads to the same page of
the current edition. The work can be cut off anywhere: each page is the old one or its signpost, and
the next run finishes it.
"""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from build_tools.publishing.digests import MANIFEST, files_in, is_inside, read_list, read_manifest
from build_tools.publishing.edition_folders import EDITIONS, GONE, MANIFESTS, gone_in
from build_tools.publishing.entry_pages import entry_page, pages_listed
from build_tools.publishing.shared_folder import HeldFolder, read_file


def take_out(target: HeldFolder, names: Iterable[str], title: str) -> tuple[str, ...]:
    """Turn editions into signposts; gives those that went.

    Where a reader's computer holds a file, it goes the next time.
    """
    gone = []
    for name in names:
        folder = target.path / EDITIONS / name
        listed = read_manifest(folder) or read_list(target.path / MANIFESTS / f"{name}.txt")
        pages = pages_listed(listed or files_in(folder))
        target.write(f"{EDITIONS}/{name}/{GONE}", gone_list(pages))
        try:
            finish(target, name, title)
        except PermissionError:
            continue
        gone.append(name)
    return tuple(gone)


def finish(target: HeldFolder, name: str, title: str) -> list[str]:
    """Put a signpost at each page of a gone edition and take its other files away.

    Gives what was done, a line each.
    """
    folder = target.path / EDITIONS / name
    pages = pages_gone(folder)
    inside = f"{EDITIONS}/{name}/"
    signposts = {page: entry_page(page, title, inside) for page in pages}
    under_way = (folder / MANIFEST).exists()
    done = [
        f"{inside}{page} leads to the current edition again"
        for page, data in signposts.items()
        if target.write_new(f"{inside}{page}", data)
    ]
    if target.write_new(f"{inside}{GONE}", gone_list(pages)):
        done.append(f"{inside}{GONE}, the list of its pages, was written anew")
    for file in files_in(folder):
        if file not in pages and file != GONE:
            target.sure()
            (folder / file).unlink()
            if not under_way:
                done.append(f"{inside}{file} was no part of it and was taken away")
    # The list of files goes last: as long as it is there, the work is not done.
    (folder / MANIFEST).unlink(missing_ok=True)
    (target.path / MANIFESTS / f"{name}.txt").unlink(missing_ok=True)
    for path in sorted(folder.rglob("*"), reverse=True):
        if path.is_dir() and not any(path.iterdir()):
            path.rmdir()
    return done


def pages_gone(folder: Path) -> tuple[str, ...]:
    """The pages of a gone edition: those that its list names and those that are there."""
    raw = read_file(folder / GONE) or b""
    try:
        lines = raw.decode("utf-8").split("\n")[:-1]
    except UnicodeDecodeError:
        lines = []
    named = {name for name in pages_listed(lines) if is_inside(name)}
    return tuple(sorted(named | {*pages_listed(files_in(folder))}))


def faults_gone(target: Path, title: str) -> list[str]:
    """What is wrong with the signposts of gone editions; empty where each is whole."""
    found = []
    for name in gone_in(target):
        folder = target / EDITIONS / name
        if (folder / MANIFEST).exists():
            # It is being taken out: each page is the old one or its signpost, and can be read.
            continue
        pages = pages_gone(folder)
        inside = f"{EDITIONS}/{name}/"
        if read_file(folder / GONE) != gone_list(pages):
            found.append(f"{name}/{GONE} was changed")
        found += [
            f"{name}/{page} does not lead to the current edition"
            for page in pages
            if read_file(folder / page) != entry_page(page, title, inside)
        ]
        others = set(files_in(folder)) - {*pages, GONE}
        found += [f"{name}/{file} was added" for file in sorted(others)]
    return found


def gone_list(pages: Iterable[str]) -> bytes:
    """The list of a gone edition's pages, as it is written."""
    return "".join(f"{page}\n" for page in sorted(pages)).encode()
