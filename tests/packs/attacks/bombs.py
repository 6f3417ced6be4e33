"""Small packs that would be large, and packs of very many files."""

# fmt: off

from __future__ import annotations

import re
from typing import Any

from tests.packs.attacks.overlaps import archive, entries_of
from tests.packs.attacks.packed import Bomb, Pack, with_bombs
from tests.packs.attacks.zips import DEFLATED, MB, Entry, write_zip

archive("bomb-svg-250mb", "a listed drawing of 250 MB of spaces (250 kB packed), all sizes honest",
    "refuse", lambda p: with_bombs(p, {"data/unit/media/big.svg": Bomb(
    b"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'>", b" ", 250 * MB, b"</svg>")}),
    sound=True)
archive("bomb-svg-95mb", "a listed drawing of 95 MB, just below the disk limit", "refuse", lambda p:
    with_bombs(p, {"data/unit/media/big.svg": Bomb(
    b"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'>", b"<g/>", 95 * MB, b"</svg>")}),
    sound=True)
archive("bomb-html-60mb", "a listed page of 60 MB of paragraphs", "refuse", lambda p: with_bombs(p,
    {"data/pages/lesson-1.html": Bomb(p.files["data/pages/lesson-1.html"].split(b"<main")[0],
    b"<p>a</p>\n", 60 * MB, b"</body></html>")}), sound=True)
archive("bomb-unit-md-80mb", "unit.md of 80 MB of blank lines after the front matter", "refuse",
    lambda p: with_bombs(p, {"data/unit/unit.md": Bomb(p.files["data/unit/unit.md"], b"\n", 80 *
    MB)}), sound=True)
archive("bomb-about-json-80mb", "about.json of 80 MB of spaces", "refuse", lambda p: with_bombs(p, {
    "data/about.json": Bomb(p.files["data/about.json"], b" ", 80 * MB)}), sound=True)
archive("bomb-about-json-brackets", "about.json of 50 MB of [", "refuse", lambda p: with_bombs(p, {
    "data/about.json": Bomb(b"", b"[", 50 * MB)}), sound=True)
archive("bomb-manifest-90mb", "manifest-sha512.txt with 90 MB of blank lines at its end", "refuse",
    lambda p: with_bombs(p.rehash(), {"manifest-sha512.txt": Bomb(p.rehash().files[
    "manifest-sha512.txt"], b"\n", 90 * MB)}), sound=True)
archive("bomb-tag-file-2gb", "a tag file of 300 MB, honestly listed in the tag manifest", "refuse",
    lambda p: with_bombs(p, {"notes.txt": Bomb(b"", b"\0", 300 * MB)}), sound=True)
archive("bomb-bagit-txt", "bagit.txt with 90 MB of spaces", "refuse", lambda p: with_bombs(p, {
    "bagit.txt": Bomb(p.files["bagit.txt"], b" ", 90 * MB)}), sound=True)
archive("bomb-licence-90mb", "licence.txt of 90 MB", "refuse", lambda p: with_bombs(p, {
    "data/licence.txt": Bomb(p.files["data/licence.txt"], b"a", 90 * MB)}), sound=True)
archive("bomb-jsonld-80mb-numbers",
    "metadata.jsonld of 80 MB of [1,1,1… (each number an object in memory)", "refuse", lambda p:
    with_bombs(p, {"data/metadata.jsonld": Bomb(b'{"a":[1', b",1", 80 * MB, b"]}")}), sound=True)
archive("bomb-nested-lookalike",
    "a drawing that is a zip that is a zip … 30 deep, and 1 GB at the end", "refuse", lambda p:
    p.put("data/unit/media/inner.zip", _nested_zip(30)).done(), sound=True)
archive("bomb-nested-as-svg", "the same, called .svg", "refuse", lambda p: p.set_drawing(
    _nested_zip(5)).done(), sound=True)


def _nested_zip(depth: Any) -> Any:
    b = Bomb(b"", b"\0", 200 * MB)
    z = write_zip([b.entry("a")])
    for i in range(depth):
        z = write_zip([Entry(f"{i}-{k}.zip", z, DEFLATED, level=9) for k in range(2)])
        if len(z) > 2 * MB:
            break
    return z


archive("many-65534-empty", "65,534 more empty listed files (5 MB of manifest, deflated)", "refuse",
    lambda p: _many(p, 65_000), sound=True)
archive("many-70000-count-wraps",
    "70,000 entries with a 16 bit count that has wrapped round and no zip64 end", "refuse", lambda
    p: _many(p, 70_000), sound=False)
archive("many-120000-zip64", "120,000 entries and a zip64 end, none listed", "refuse", lambda p:
    write_zip(entries_of(p) + [Entry(f"x/{i}", b"") for i in range(120_000)], zip64=True))
archive("many-20000-svg", "20,000 listed small drawings (each to be parsed)", "refuse", lambda p:
    _many(p, 20_000, b"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><path d='M0 "
    b"0h9v9'/></svg>"), sound=True)
archive("many-3000-lessons", "3,000 listed lessons, each the first one with its number", "refuse",
    lambda p: _lessons(p, 3000), sound=True)
archive("many-400-lessons", "400 listed lessons", "refuse", lambda p: _lessons(p, 400), sound=True)
archive("many-4096-byte-waste",
    "24,000 listed files of one byte: 24 kB, but 98 MB on a disc of 4 kB blocks", "refuse", lambda
    p: _many(p, 24_000, b"x"), sound=True)
archive("many-dirs-by-files", "5,000 listed files, each in its own folder 10 deep (50,000 folders)",
    "refuse", lambda p: _deep_many(p), sound=True)


def _many(p: Pack, n: Any, data: Any = b"", where: Any = "data/unit/media/m{:06}.svg") -> Any:
    for i in range(n):
        p.files[where.format(i)] = data
    p.rehash()
    es = p.entries()
    for e in es:
        if len(e.data) > 100_000:
            e.method = DEFLATED
    return write_zip(es)


def _lessons(p: Pack, n: Any) -> Any:
    first = p.text(p.lessons()[0])
    for i in range(1, n + 1):
        p.put(f"data/unit/lesson-{i}.md", re.sub(r"^lesson: \d+", f"lesson: {i}", first, count=1,
            flags=re.M))
    return p.done(DEFLATED)


def _deep_many(p: Pack) -> Any:
    for i in range(5000):
        p.files[f"data/unit/media/{i}/" + "a/" * 9 + "x.svg"] = b""
    return p.done(DEFLATED)


archive("matryoshka-self",
    "the pack holds itself (as far as it can) as a drawing, a page and a tag file", "refuse", lambda
    p: (lambda z: p.put("data/unit/media/self.zip", z).put("data/pages/self.html", z).done(
    DEFLATED))(p.copy().done(DEFLATED)), sound=True)
