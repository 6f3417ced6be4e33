"""Packs that mean harm or are broken, each made by code, with the words that refuse it.

Where the ideas come from: PKWARE APPNOTE (what a zip can say), OWASP's lists for archives and for
SVG (from memory), Microsoft's "Naming Files, Paths, and Namespaces", RFC 8493.
"""

from __future__ import annotations

import io
import struct
import zipfile
import zlib
from collections.abc import Callable

from tests.support import packs
from tests.support.packs import about, bag, in_top, manifest, pack, payload, with_files, zipped

Maker = Callable[[], bytes]
UNIT = "data/unit/"


def _extra(name: str, data: bytes = b"x") -> Maker:
    """A pack with one more file in its zip, at a path as it stands."""
    return lambda: zipped({**in_top(bag()), name: data})


def _entry(change: Callable[[zipfile.ZipInfo], None], name: str = f"{packs.TOP}/extra") -> Maker:
    """A pack with one more entry, changed by `change`."""

    def made() -> bytes:
        out = io.BytesIO()
        with zipfile.ZipFile(out, "w") as archive:
            for path, data in in_top(bag()).items():
                archive.writestr(zipfile.ZipInfo(path), data)
            entry = zipfile.ZipInfo(name)
            change(entry)
            archive.writestr(entry, b"x")
        return out.getvalue()

    return made


def _mode(kind: int) -> Maker:
    def change(entry: zipfile.ZipInfo) -> None:
        entry.create_system = 3
        entry.external_attr = (kind | 0o644) << 16

    return _entry(change)


def _changed(where: bytes, at: int, value: bytes, nth: int = 0) -> Maker:
    """A sound pack with bytes set from `at` behind the start of the nth signature `where`."""

    def made() -> bytes:
        data = bytearray(pack())
        place = -1
        for _ in range(nth + 1):
            place = data.index(where, place + 1)
        data[place + at : place + at + len(value)] = value
        return bytes(data)

    return made


def _own(name: str, data: bytes) -> Maker:
    return lambda: pack(with_files({name: data}))


def _svg(inside: str, head: str = "") -> Maker:
    drawing = f'<svg xmlns="http://www.w3.org/2000/svg"{head}>{inside}</svg>'
    return _own("unit/media/low-tide.svg", drawing.encode())


def _page(inside: str) -> Maker:
    return _own("pages/index.html", f"<!doctype html>\n<title>A</title>\n{inside}".encode())


def _line(field: bytes, other: bytes) -> Maker:
    return lambda: pack(
        with_files({"unit/unit.md": packs.unit_files()["unit.md"].replace(field, other, 1)})
    )


def _notes(words: str) -> Maker:
    return lambda: pack(
        with_files({"unit/unit.md": packs.unit_files()["unit.md"] + f"\n{words}\n".encode()})
    )


def _bomb() -> bytes:
    return zipped(in_top(bag(with_files({"credits.txt": b" " * 5_000_000}))), zipfile.ZIP_DEFLATED)


def _liar() -> bytes:
    """A file of a megabyte that says it has a thousand bytes."""
    data = bytearray(zipped(in_top(bag(with_files({"credits.txt": b"ab" * 500_000}))), 8))
    size = struct.pack("<I", 1_000_000)
    for _ in range(2):
        at = data.index(size)
        data[at : at + 4] = struct.pack("<I", 1000)
    return bytes(data)


def _many() -> bytes:
    return zipped({f"{packs.TOP}/{n}": b"" for n in range(401)})


def _overlap() -> bytes:
    """Two names in the list for the same bytes."""
    data = bytearray(pack())
    first = data.index(b"PK\x01\x02")
    second = data.index(b"PK\x01\x02", first + 4)
    data[second + 42 : second + 46] = data[first + 42 : first + 46]
    return bytes(data)


def _gap() -> bytes:
    """A thousand bytes that no entry has, between the last file and the list."""
    data = pack()
    end = len(data) - 22
    (start,) = struct.unpack_from("<I", data, end + 16)
    moved = data[end : end + 16] + struct.pack("<I", start + 1000) + data[end + 20 :]
    return data[:start] + b"\0" * 1000 + data[start:end] + moved


def _two_names() -> bytes:
    """One name where the file stands, another in the list."""
    data = bytearray(pack())
    at = data.index(b"credits.txt")
    data[at : at + 11] = b"pardons.txt"
    return bytes(data)


def _folder(size: int) -> Maker:
    """A folder in the zip that has bytes of its own."""
    return lambda: zipped({**in_top(bag()), f"{packs.TOP}/data/more/": b"x" * size}, 8)


def _comment() -> bytes:
    """A thousand bytes of remarks on one file, in the list of them."""
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w") as archive:
        for path, data in in_top(bag()).items():
            entry = zipfile.ZipInfo(path)
            entry.comment = b"x" * 1000 if path.endswith("bagit.txt") else b""
            archive.writestr(entry, data)
    return made.getvalue()


def _noted(kind: int, size: int) -> Maker:
    def change(entry: zipfile.ZipInfo) -> None:
        entry.extra = struct.pack("<2H", kind, size) + b"x" * size

    return _entry(change)


def _second_name() -> Maker:
    def change(entry: zipfile.ZipInfo) -> None:
        name = b"/etc/passwd"
        body = struct.pack("<BI", 1, zlib.crc32(entry.filename.encode())) + name
        entry.extra = struct.pack("<2H", 0x7075, len(body)) + body

    return _entry(change)


def _fetch() -> bytes:
    return pack(None, fetch=b"https://example.org/a - data/a\n")


def _clash(first: str, second: str) -> Maker:
    return lambda: zipped(in_top({**bag(), first: b"a", second: b"b"}))


def _twice() -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        for path, data in [*in_top(bag()).items(), (f"{packs.TOP}/bagit.txt", b"other")]:
            entry = zipfile.ZipInfo(path)
            archive.fp.seek(0, 2) if archive.fp else None
            archive.NameToInfo.pop(path, None)
            archive.writestr(entry, data)
    return out.getvalue()


def _without_manifest_of(name: str) -> bytes:
    files = {k: v for k, v in bag().items() if k.startswith("data/")}
    listed = {k: v for k, v in files.items() if k != name}
    return pack(None, manifest_sha512=manifest(listed))


def _lines(change: Callable[[bytes], bytes]) -> Maker:
    def made() -> bytes:
        files = {k: v for k, v in bag().items() if k.startswith("data/")}
        return pack(None, manifest_sha512=change(manifest(files)))

    return made


def _text_tag(name: str, data: bytes) -> Maker:
    return lambda: pack(None, **{name: data})


PATHS: dict[str, tuple[Maker, str]] = {
    "up and out": (_extra(f"{packs.TOP}/../../evil"), "leads up and out"),
    "top of the disk": (_extra("/etc/evil"), "starts at the top of a disk"),
    "a drive": (_extra("C:/evil"), "names a drive"),
    "a drive without a slash": (_extra("C:evil"), "`C:evil` names a drive"),
    "a share": (_extra("//server/share/evil"), "names a share on a network"),
    "a share the Windows way": (_extra("\\\\server\\evil"), "`\\\\server\\evil` names a share"),
    "a backslash": (_extra(f"{packs.TOP}\\..\\evil"), "has a backslash"),
    "a home folder": (_extra("~/evil"), "somebody's home folder"),
    "a hidden file": (_extra(f"{packs.TOP}/.profile"), "starts with a dot"),
    "here": (_extra(f"{packs.TOP}/./evil"), "`paper-boats-1.0.0/./evil` has a name that starts"),
    "an empty name": (_extra(f"{packs.TOP}//evil"), "has an empty name"),
    "a device": (_extra(f"{packs.TOP}/con.txt"), "the name of a device"),
    "a device with a number": (
        _extra(f"{packs.TOP}/Lpt1"),
        "-1.0.0/Lpt1` has the name",
    ),
    "a stream": (_extra(f"{packs.TOP}/a:b"), "Windows cannot hold"),
    "a question mark": (_extra(f"{packs.TOP}/a?"), "`paper-boats-1.0.0/a?` has one of"),
    "a dot at the end": (_extra(f"{packs.TOP}/a."), "ends with a dot or a space"),
    "a space at the end": (
        _extra(f"{packs.TOP}/a "),
        "-1.0.0/a ` has a name that ends",
    ),
    "a control": (_extra(f"{packs.TOP}/a\x07"), "a letter in it that nobody sees"),
    "right to left": (_extra(f"{packs.TOP}/\u202egnp.md"), "`paper-boats-1.0.0/?gnp.md` has a"),
    "pieces of letters": (_extra(f"{packs.TOP}/e\u0301"), "put together from pieces"),
    "a long path": (_extra(f"{packs.TOP}/{'a/' * 5}{'b' * 79}{'c' * 79}"), "more than 160"),
    "a long name": (_extra(f"{packs.TOP}/{'b' * 90}"), "a name of 90 letters"),
    "deep folders": (_extra(f"{packs.TOP}/1/2/3/4/5/6/7"), "folders deep"),
    "small and large letters": (
        _clash("Credits", "credits"),
        "on some computers they are one file",
    ),
    "sharp s": (_clash("gr\u00fc\u00dfe", "gr\u00fcsse"), "beside `paper-boats-1.0.0/gr"),
    "a file that is a folder": (_clash("a", "a/b"), "a folder too"),
    "a folder that is a file": (
        lambda: zipped(in_top({**bag(), "b/": b"", "b": b"b"})),
        "`paper-boats-1.0.0/b` is a file and",
    ),
    "a folder twice": (
        _clash("Notes/a", "notes/b"),
        "`paper-boats-1.0.0/notes` is there beside `paper-boats-1.0.0/Notes`",
    ),
    "a folder in another size": (
        lambda: zipped(in_top({**bag(), "Data/a": b""})),
        "`paper-boats-1.0.0/Data` is there beside",
    ),
    "letters of one form": (_clash("\ufb01ne", "fine"), "`paper-boats-1.0.0/fine` is there beside"),
    "wide letters": (_clash("abc", "\uff41bc"), "beside `paper-boats-1.0.0/abc`"),
    "a long s": (_clash("\u017f", "s"), "beside `paper-boats-1.0.0/\u017f`"),
    "an i without its dot": (_clash("\u0131d", "id"), "beside `paper-boats-1.0.0/\u0131d`"),
    "a line of its own": (_extra(f"{packs.TOP}/a\u2028b"), "`paper-boats-1.0.0/a?b` has a letter"),
    "a mark for pictures": (_extra(f"{packs.TOP}/a\ufe0f"), "boats-1.0.0/a\ufe0f` has a letter"),
    "a letter that fills": (
        _extra(f"{packs.TOP}/\u3164"),
        "-1.0.0/\u3164` has a letter",
    ),
    "an odd space": (_extra(f"{packs.TOP}/a\u2003b"), "a letter in it that nobody sees"),
    "a space first": (_extra(f"{packs.TOP}/ a"), "starts with a space"),
    "a short name": (_extra(f"{packs.TOP}/MANIFE~1.TXT"), "such as Windows gives"),
    "many bytes": (_extra(f"{packs.TOP}/{chr(0x20000) * 70}"), "a name of 280 bytes"),
}
ZIPS: dict[str, tuple[Maker, str]] = {
    "no zip": (lambda: b"GIF89a" + b"\0" * 100, "it is not a zip file"),
    "empty": (lambda: b"", "it is not a zip file"),
    "a program before it": (lambda: b"MZ" + pack(), "it is not a zip file"),
    "words after it": (lambda: pack() + b"more", "something was added after its end"),
    "cut off": (lambda: pack()[:-100], "it ends in the middle"),
    "no files": (lambda: zipped({}), "it is not a bag"),
    "a link": (_mode(0o120000), "is a link"),
    "a device file": (_mode(0o060000), "is a device"),
    "a terminal": (_mode(0o020000), "`paper-boats-1.0.0/extra` is a device"),
    "a pipe": (_mode(0o010000), "is a pipe"),
    "a socket": (_mode(0o140000), "is a socket"),
    "locked": (_changed(b"PK\x01\x02", 8, b"\x01\x00"), "locked with a password"),
    "another way to pack": (_changed(b"PK\x01\x02", 10, b"\x63\x00"), "method 99"),
    "a bomb": (_bomb, "more than 50 times as many"),
    "a liar about its size": (_liar, "holds more than it says"),
    "a folder with bytes": (_folder(50), "is a folder and has bytes of its own"),
    "a bomb in a folder": (
        _folder(3_000_000),
        "-1.0.0/data/more/` is a folder and has",
    ),
    "remarks on a file": (_comment, "comes with words that nobody is shown"),
    "bytes beside a name": (_noted(0x4242, 8), "comes with bytes that nobody is shown"),
    "bytes in place of times": (_noted(0x5455, 800), "`paper-boats-1.0.0/extra` comes with bytes"),
    "too many folders": (
        lambda: zipped({f"{packs.TOP}/{n}/": b"" for n in range(500)}),
        "500 files, more than 400",
    ),
    "too many files": (_many, "401 files, more than 400"),
    "a huge file": (
        _changed(b"PK\x01\x02", 24, struct.pack("<I", 3_000_000_000)),
        "more than 20,0",
    ),
    "shared bytes": (_overlap, "share bytes"),
    "bytes between": (_gap, "between its files and the list"),
    "two names": (_two_names, "described in two ways"),
    "a second name": (_second_name(), "has a second name"),
    "one of several": (_changed(b"PK\x05\x06", 4, b"\x01\x00"), "one part of several"),
    "huge by its own word": (_changed(b"PK\x05\x06", 16, b"\xff" * 4), "four thousand million"),
    "a list elsewhere": (_changed(b"PK\x05\x06", 16, b"\x01\x00\x00\x00"), "not where it says"),
    "a damaged list": (_changed(b"PK\x01\x02", 28, b"\xff\xff"), "list of its files is damaged"),
    "a damaged file": (_changed(b"words\n", 0, b"swords"), "is damaged: ask for the pack again"),
    "a name twice": (_twice, "is there twice"),
    "a name in no known letters": (_changed(b"bagit.txt", 0, b"\xff\xfe"), "not written in UTF-8"),
}
BAGS: dict[str, tuple[Maker, str]] = {
    "no bag": (lambda: zipped({"a/b.txt": b"x"}), "no bagit.txt is in it"),
    "files beside the bag": (lambda: zipped({**in_top(bag()), "b/c": b""}), "do not lie in one"),
    "no folder": (lambda: zipped(bag()), "do not lie in one folder"),
    "an unknown version": (
        _text_tag("bagit", packs.DECLARATION.replace(b"1.0", b"2.0")),
        "a bag of version 2.0",
    ),
    "no version": (_text_tag("bagit", b"A bag\n"), "does not say which bag this is"),
    "a mark first": (_text_tag("bagit", b"\xef\xbb\xbf" + packs.DECLARATION), "byte order mark"),
    "other letters": (
        _text_tag("bagit", packs.DECLARATION.replace(b"UTF-8", b"UTF-16")),
        "written in UTF-16",
    ),
    "a third line": (_text_tag("bagit", packs.DECLARATION + b"More: x\n"), "in its two lines"),
    "files to fetch": (_fetch, "fetched from elsewhere"),
    "no manifest": (_text_tag("manifest_sha512", None), "it has no manifest"),  # type: ignore[arg-type]
    "an unknown manifest": (_text_tag("manifest_crc7", b""), "of a kind that is not known"),
    "only a weak manifest": (
        lambda: pack(
            None,
            manifest_sha512=None,
            manifest_md5=manifest({k: v for k, v in bag().items() if k[:5] == "data/"}, "md5"),
        ),
        "can be forged",
    ),
    "no payload": (
        lambda: zipped(in_top({"bagit.txt": packs.DECLARATION})),
        "nothing in its folder",
    ),
    "a file more": (lambda: _without_manifest_of("data/credits.txt"), "was added: manifest"),
    "a file less": (_lines(lambda m: m + m[:130] + b"data/gone.md\n"), "`data/gone.md` is missing"),
    "a changed file": (_lines(lambda m: m.replace(m[:8], b"00000000")), "was changed after"),
    "a file named twice": (_lines(lambda m: m + m.splitlines()[0] + b"\n"), "is named twice"),
    "no digest": (_lines(lambda m: m + b"hello\n"), "this is no digest with a path"),
    "a short digest": (_lines(lambda m: m + b"abcd  data/x\n"), "no digest with a path"),
    "a way out in the manifest": (_lines(lambda m: m + m[:130] + b"data/../x\n"), "up and out"),
    "a tag in the manifest": (_lines(lambda m: m + m[:130] + b"bagit.txt\n"), "lies outside the"),
    "payload among tags": (
        lambda: pack(None, tagmanifest_sha512=manifest({"data/credits.txt": b"words\n"})),
        "lies in the folder data",
    ),
    "a changed tag": (
        lambda: pack(None, tagmanifest_sha512=manifest({"bagit.txt": b"other"})),
        "the tag file `bagit.txt` was changed",
    ),
    "a tag less": (
        lambda: pack(None, tagmanifest_sha512=manifest({"bag-info.txt": b""})),
        "the tag file `bag-info.txt` is missing",
    ),
    "a tag manifest of itself": (
        lambda: pack(None, tagmanifest_sha512=manifest({"tagmanifest-sha512.txt": b""})),
        "a manifest of its own kind",
    ),
    "a wrong sum": (_text_tag("bag_info", b"Payload-Oxum: 1.1\n"), "says 1.1 for bytes"),
    "two sums": (
        _text_tag("bag_info", b"Payload-Oxum: 1.1\nPayload-Oxum: 1.1\n"),
        "says twice how much",
    ),
    "a long list": (_lines(lambda m: m * 400), "manifest-sha512.txt has"),
    "long remarks": (_text_tag("bag_info", b"A: b\n" + b" c\n" * 100_000), "bag-info.txt has"),
    "a long first word": (_text_tag("bagit", b" " * 1_000), "bagit.txt does not say"),
    "no label": (_text_tag("bag_info", b"hello\n"), "no label with its value"),
    "tags in other letters": (
        _text_tag("bag_info", b"A: \xff\n"),
        "bag-info.txt is not written in",
    ),
}
UNITS: dict[str, tuple[Maker, str]] = {
    "no unit": (lambda: pack({"notes.txt": b"x"}), "no unit is in it"),
    "a file with no place": (_own("setup.exe", b"MZ"), "has no place in a unit's pack"),
    "a file with no place in the unit": (_own("unit/run.sh", b"x"), "is not a file of a unit"),
    "a program as a drawing": (_own("unit/media/low-tide.svg", b"MZ\x90"), "not an SVG drawing"),
    "a page as a picture": (_own("unit/media/a.png", b"<html>"), "not a PNG picture"),
    "a picture as text": (_own("unit/lesson-1.md", b"\x89PNG\xff"), "lesson-1.md is not text"),
    "a nought in text": (_own("unit/lesson-1.md", b"a\0"), "a sign that is no letter"),
    "a script in a drawing": (_svg("<script>1</script>"), "low-tide.svg:1: the drawing has a part"),
    "a page in a drawing": (_svg("<foreignObject/>"), "`foreignObject`"),
    "movement in a drawing": (_svg('<animate attributeName="x"/>'), "`animate`"),
    "a handler in a drawing": (_svg("", ' onload="a()"'), "runs something by `onload`"),
    "a link in a drawing": (_svg('<use href="https://example.org/#a"/>'), "leads to `https:"),
    "a script as a link": (
        _svg('<path xmlns:l="http://www.w3.org/1999/xlink" l:href="java&#10;script:a()"/>'),
        "leads to `javascript:",
    ),
    "a style from elsewhere": (
        _svg("<style>@import 'https://example.org/a.css';</style>"),
        "styles ask for something",
    ),
    "a fill from elsewhere": (_svg('<path fill="url(https://example.org/#a)"/>'), "by `fill`"),
    "a document type": (
        _own("unit/media/low-tide.svg", b'<?xml version="1.0"?><!DOCTYPE svg><svg/>'),
        "a document type",
    ),
    "laughter": (
        _own(
            "unit/media/low-tide.svg",
            b'<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY a "ha"><!ENTITY b "&a;&a;">]>'
            b'<svg xmlns="http://www.w3.org/2000/svg">&b;</svg>',
        ),
        "low-tide.svg:1: it declares a document type",
    ),
    "shown again without end": (_svg('<use href="#a"/>' * 101), "more than 100 times"),
    "broken XML": (_svg("<g>"), "not sound XML"),
    "a script in a page": (
        _page("<script src=a.js></script>"),
        "index.html:3: the page has a part",
    ),
    "a frame in a page": (_page("<iframe></iframe>"), "`iframe`"),
    "a handler in a page": (_page('<p onclick="a()">'), "runs something by `onclick`"),
    "a script link in a page": (_page('<a href=" java\nscript:a()">'), "the page leads to `javas"),
    "a page of parts": (_page("<p>" * 100_001), "has more than 100,000 parts"),
    "a page of one part": (_page("<p" + " a" * 501 + ">"), "more than 500 attributes"),
    "a file beside the bag": (_extra(f"{packs.TOP}/read-me.html"), "read-me.html` has no place"),
    "a zip of the future": (_changed(b"PK\x01\x02", 6, b"\xff\x00"), "a newer kind of zip"),
    "a nought among the remarks": (_text_tag("bag_info", b"A: \0\n"), "holds a sign that is"),
    "a page that leads on": (_page('<meta http-equiv=Refresh content="0;url=a">'), "by itself"),
    "no word of which unit": (
        lambda: pack(payload(about_DOT_json=None)),
        "does not say which unit",
    ),
    "another format": (_own("about.json", about(format=2)), "format 2; 1 is read"),
    "a folder outside": (_own("about.json", about(unit="../evil")), "a unit cannot have"),
    "no edition": (_own("about.json", about(edition="new")), "says no edition"),
    "much about itself": (_own("about.json", b" " * 300_000), "about.json does not say which"),
    "long credits": (_own("credits.txt", b"a\n" * 140_000), "credits.txt has 280,000 bytes"),
    "pictures without end": (
        lambda: pack(with_files({f"unit/media/a-{n}.png": b"x" * 4_000_000 for n in range(4)})),
        "pictures have 16,0",
    ),
    "a true format": (_own("about.json", about(format=True)), "says no such format"),
    "deep words": (_own("about.json", b"[" * 100_000), "about.json does not say"),
    "another edition": (
        _own("about.json", about(edition="9.0.0")),
        "about.json says edition 9.0.0",
    ),
    "HTML in the notes": (_notes("<b>bold</b>"), "raw-html"),
    "an unsafe link": (_notes("[here](javascript:alert)"), "unsafe-link"),
    "a link to a file": (_notes("[here](file:///etc/passwd)"), "link to `file:"),
    "HTML in a field": (_line(b"summary: ", b"summary: <i>a</i> "), "`<i>"),
    "a tag that makes an object": (
        _line(b"title: ", b"title: !!python/object/apply:os.system "),
        "unit.md",
    ),
    "an anchor that laughs": (_line(b"title: ", b"title: &a "), "unit.md"),
    "no sound fields": (_own("unit/unit.md", b"---\ntitle: [\n---\n"), "its unit cannot be read"),
    "words that other programs do not read": (
        _line(b"summary: ", b"summary: A dance of the pools #1 of all, "),
        "other programs read other words",
    ),
}
EVERY: dict[str, tuple[Maker, str]] = {**PATHS, **ZIPS, **BAGS, **UNITS}
