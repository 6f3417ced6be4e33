"""Bags whose payload manifest is wrong."""

# fmt: off

from __future__ import annotations

import hashlib

from tests.packs.attacks.declarations import bag, lines, manifest
from tests.packs.attacks.overlaps import listed
from tests.packs.attacks.register import Rows
from tests.packs.attacks.zips import MB

bag("manifest-missing", "no payload manifest", "refuse", lambda p: (p.rehash().files.pop(
    "manifest-sha512.txt"), p.retag().zip())[1])
manifest("manifest-empty", "an empty manifest", "refuse", lambda _r, _p: "")
manifest("manifest-upper-hex", "digests in capitals: lawful", "harmless", lambda r, _p: lines([(
    d.upper(), n) for d, n in r]))
manifest("manifest-one-space", "one space between: lawful", "harmless", lambda r, _p: lines(r, " "))
manifest("manifest-tab", "a tab between: lawful", "harmless", lambda r, _p: lines(r, "\t"))
manifest("manifest-nbsp", "a no-break space between", "refuse", lambda r, _p: lines(r, "\u00a0"))
manifest("manifest-many-spaces", "500,000 spaces between digest and path", "refuse", lambda r, _p:
    lines([r[0]], " " * 500_000) + lines(r[1:]))
manifest("manifest-binary-star", "' *' between, as md5sum writes it", "refuse", lambda r, _p: lines(
    r, " *"))
manifest("manifest-crlf", "CRLF: lawful", "harmless", lambda r, _p: lines(r, end="\r\n"))
manifest("manifest-cr", "CR only: lawful", "harmless", lambda r, _p: lines(r, end="\r"))
manifest("manifest-no-last-newline", "no newline at the end: lawful", "harmless", lambda r, _p:
    lines(r).rstrip("\n"))
manifest("manifest-bom", "a byte order mark in front", "refuse", lambda r, _p: "\ufeff" + lines(r))
manifest("manifest-utf16", "in UTF-16", "refuse", lambda r, _p: lines(r).encode("utf-16"))
manifest("manifest-invalid-utf8", "a line of bytes that are no UTF-8", "refuse", lambda r, _p:
    lines(r).encode() + b"00  data/\xff\xfe\n")
manifest("manifest-blank-lines", "1,000,000 blank lines", "refuse", lambda r, _p: lines(r) + "\n" *
    MB)
manifest("manifest-comment", "a line that starts with #", "refuse", lambda r, _p: "# made by hand\n"
    + lines(r))
manifest("manifest-short-digest", "one digest cut to eight digits",
    "refuse", lambda r, _p: lines([(r[0][0][:8], r[0][1]), *r[1:]]))
manifest("manifest-no-digest", "one digest missing",
    "refuse", lambda r, _p: lines([("", r[0][1]), *r[1:]]))
manifest("manifest-long-digest", "one digest with a right start and 64 more digits", "refuse",
    lambda r, _p: lines([(r[0][0] + "0" * 64, r[0][1]), *r[1:]]))
manifest("manifest-fullwidth-digest", "one digest in fullwidth digits (int(x, 16) reads them)",
    "refuse", lambda r, _p:
    lines([("".join(chr(ord(c) + 65248) for c in r[0][0]), r[0][1]), *r[1:]]))
manifest("manifest-digest-of-empty", "one digest is that of nothing", "refuse", lambda r, _p: lines(
    [(hashlib.sha512().hexdigest(), r[0][1]), *r[1:]]))
manifest("manifest-twice-same", "one file listed twice, the same digest", "refuse", lambda r, _p:
    lines(r + r[:1]))
manifest("manifest-twice-wrong-first", "one file twice: a wrong digest, then the right one",
    "refuse", lambda r, _p: lines([("0" * 128, r[0][1]), *r]))
manifest("manifest-twice-wrong-last", "one file twice: the right digest, then a wrong one",
    "refuse", lambda r, _p: lines([*r, ("0" * 128, r[0][1])]))
manifest("manifest-twice-100000", "one file 25,000 times (each to be hashed again: 4 GB of pages)",
    "refuse", lambda r, _p: lines(r) + lines([next(x for x in r if x[1].endswith("index.html"))]) *
    25_000)
manifest("manifest-twice-dot-slash", "unit.md, and ./data/unit/unit.md with a wrong digest",
    "refuse", lambda r, _p: lines([*r, ("0" * 128, "./data/unit/unit.md")]))
manifest("manifest-twice-by-case", "unit.md, and data/unit/UNIT.MD",
    "refuse", lambda r, _p: lines([*r, (r[-1][0], "data/unit/UNIT.MD")]))
manifest("manifest-missing-file", "a listed file that is not there",
    "refuse", lambda r, _p: lines([*r, ("0" * 128, "data/unit/media/none.svg")]))
manifest("manifest-unlisted-file", "a file in data/ that is not listed", "refuse", lambda r, p: (
    p.put("data/pages/evil.html", "<script>alert(1)</script>"), lines(r))[1])
manifest("manifest-lists-folder", "a folder is listed",
    "refuse", lambda r, _p: lines([*r, ("0" * 128, "data/unit/media/")]))
manifest("manifest-lists-tag-file", "bagit.txt is listed as payload, digest right", "refuse", lambda
    r, p: lines([*r, (hashlib.sha512(p.files["bagit.txt"]).hexdigest(), "bagit.txt")]))
manifest("manifest-lists-itself", "it lists itself",
    "refuse", lambda r, _p: lines([*r, ("0" * 128, "manifest-sha512.txt")]))
THE_PAYLOAD_MANIFEST_2: Rows = (("parent", "../../etc/passwd"),
    ("parent-in-data", "data/../../../etc/passwd"),
    ("absolute", "/etc/passwd"),
    ("backslash", "data\\..\\..\\x"),
    ("drive", "C:/Windows/win.ini"),
    ("home", "~/x"),
    ("file-url", "file:///etc/passwd"),
    ("proc", "/dev/zero"),
    ("encoded-parent", "data/%2e%2e/%2e%2e/x"),
    ("encoded-slash", "data%2Funit%2Funit.md"),
    ("encoded-nul", "data/unit/unit.md%00"),
    ("encoded-newline-lower", "data/a%0ab"),
    ("bad-percent", "data/100%.txt"),
    ("percent-u", "data/%u002e%u002e/x"),
    ("encoded-twice", "data/a%250Ab")
    )
for _n, _path in THE_PAYLOAD_MANIFEST_2:
    manifest("manifest-path-" + _n, f"a line for {_path!r}", "refuse", lambda r, _p, q=_path: lines(
        [*r, ("0" * 128, q)]))
bag("manifest-percent-in-name", "a file really named 'a%0Ab.svg', written %250A as the RFC asks",
    "refuse", listed("data/unit/media/a%0Ab.svg",
    b"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'/>"), sound=True)
manifest("manifest-percent-written-raw",
    "that file written without its %25, as Python's bagit did for long", "refuse", lambda r, p: (
    p.put("data/unit/media/a%0Ab.svg", b"x"),
    lines([*r, (hashlib.sha512(b"x").hexdigest(), "data/unit/media/a%0Ab.svg")]))[1])
THE_PAYLOAD_MANIFEST_1: Rows = (("u2028", "\u2028"),
    ("vt", "\x0b"),
    ("ff", "\x0c"),
    ("fs", "\x1c"),
    ("nel", "\x85")
    )
for _n, _c in THE_PAYLOAD_MANIFEST_1:
    manifest("manifest-line-break-" + _n,
        f"two lines joined by U+{ord(_c):04X}, which Python's splitlines() takes for a li"
        "ne end and the RFC does not", "refuse", lambda r, _p, c=_c: lines(r[:-2]) + c.join(
        f"{d}  {n}" for d, n in r[-2:]) + "\n")
manifest("manifest-nfd", "a file in NFC, listed in NFD", "refuse", lambda r, p: (p.put(
    "data/unit/media/café.svg", b"x"),
    lines([*r, (hashlib.sha512(b"x").hexdigest(), "data/unit/media/café.svg")]))[1])
manifest("manifest-line-8mb", "one line of 8 MB",
    "refuse", lambda r, _p: lines([*r, ("0" * 128, "data/" + "x" * 8 * MB)]))
manifest("manifest-100000-lines", "100,000 lines for files that are not there", "refuse", lambda r,
    _p: lines(r + [(f"{i:0128x}", f"data/{i}") for i in range(100_000)]))
manifest("manifest-leading-spaces", "spaces before each digest", "refuse", lambda r, _p: lines([(
    "   " + d, n) for d, n in r]))
manifest("manifest-trailing-spaces", "spaces after each path (they belong to the path)", "refuse",
    lambda r, _p: lines([(d, n + "  ") for d, n in r]))
manifest("manifest-quoted-path", "paths in quotes", "refuse", lambda r, _p: lines([(d, f'"{n}"') for
    d, n in r]))
manifest("manifest-bsd-style", "SHA512 (path) = digest", "refuse", lambda r, _p: "".join(
    f"SHA512 ({n}) = {d}\n" for d, n in r))
manifest("manifest-nul", "a NUL between digest and path", "refuse", lambda r, _p: lines(r, "\0"))
manifest("manifest-escape-in-error",
    "a wrong line that holds terminal codes (shown in the refusal?)", "refuse", lambda r, _p: lines(
    [*r, ("0" * 128, "data/\x1b]0;owned\x07\x1b[2J\u202eevil")]))
bag("payload-changed-after", "one letter of unit.md changed, nothing hashed anew", "refuse", lambda
    p: (p.rehash().sub("data/unit/unit.md", "^title: ", "title:  "), p.zip())[1])
bag("payload-changed-tag-manifest-old",
    "one letter changed, the payload manifest anew, the tag manifest as before", "refuse", lambda p:
    (lambda old: (p.sub("data/unit/unit.md", "^title: ", "title:  ").rehash().put(
    "tagmanifest-sha512.txt", old), p.zip())[1])(p.rehash().files["tagmanifest-sha512.txt"]))
bag("payload-none", "no data/ at all, an empty manifest", "refuse", lambda p: ([p.files.pop(n) for n
    in list(p.files) if n.startswith("data/")], p.done())[1], sound=True)
bag("payload-data-is-a-file", "data is a file", "refuse", lambda p: ([p.files.pop(n) for n in list(
    p.files) if n.startswith("data/")], p.put("data", b"x").rehash().zip())[1])
