"""Bags whose tag manifest, bag-info.txt or fetch.txt is wrong."""

# fmt: off

from __future__ import annotations

import re
from typing import Any

from tests.packs.attacks.declarations import bag, tagged
from tests.packs.attacks.packed import Pack
from tests.packs.attacks.register import Made, Rows
from tests.packs.attacks.zips import KB, MB

bag("tagmanifest-missing", "no tag manifest (lawful: it is optional)", "harmless", lambda p: (
    p.rehash().files.pop("tagmanifest-sha512.txt"), p.zip())[1])
bag("tagmanifest-lists-itself", "it lists itself", "refuse", lambda p: (p.rehash().put(
    "tagmanifest-sha512.txt", p.text("tagmanifest-sha512.txt") + "0" * 128 +
    "  tagmanifest-sha512.txt\n"), p.zip())[1])
bag("tagmanifest-lists-payload", "it lists unit.md, digest wrong", "refuse", lambda p: (p.rehash(
    ).put("tagmanifest-sha512.txt", p.text("tagmanifest-sha512.txt") + "0" * 128 +
    "  data/unit/unit.md\n"), p.zip())[1])
bag("tagmanifest-wrong-digest", "one digest wrong", "refuse", lambda p: (p.rehash().put(
    "tagmanifest-sha512.txt", re.sub("^.", "g", p.text("tagmanifest-sha512.txt"))), p.zip())[1])
bag("tagmanifest-lists-missing", "a listed tag file that is not there", "refuse", lambda p: (
    p.rehash().put("tagmanifest-sha512.txt", p.text("tagmanifest-sha512.txt") + "0" * 128 +
    "  notes.txt\n"), p.zip())[1])
bag("tagmanifest-parent-path", "it lists ../../../etc/passwd", "refuse", lambda p: (p.rehash().put(
    "tagmanifest-sha512.txt", p.text("tagmanifest-sha512.txt") + "0" * 128 +
    "  ../../../etc/passwd\n"), p.zip())[1])
bag("tagmanifest-leaves-out-baginfo", "it does not list bag-info.txt, which was changed",
    "harmless", lambda p: (p.rehash().put("tagmanifest-sha512.txt", "\n".join(one for one in p.text(
    "tagmanifest-sha512.txt").splitlines() if "bag-info" not in one) + "\n"), p.put("bag-info.txt",
    p.text("bag-info.txt").replace("The dance unit bank", "Somebody else")), p.zip())[-1],
    "the changed publisher believed or shown as sure")
bag("tagmanifest-md5-only", "the tag manifest is MD5, the payload's SHA-512", "refuse", lambda p: (
    p.rehash().files.pop("tagmanifest-sha512.txt"), p.retag(["md5"]).zip())[1])
bag("tagmanifest-two-disagree", "a right SHA-512 tag manifest and a wrong SHA-256 one", "refuse",
    lambda p: (p.rehash().put("tagmanifest-sha256.txt", "0" * 64 + "  bagit.txt\n"), p.zip())[1])
bag("tagmanifest-shake", "tagmanifest-shake_128.txt beside the right one", "refuse", lambda p: (
    p.rehash().put("tagmanifest-shake_128.txt", "00  bagit.txt\n"), p.zip())[1])
bag("tag-file-html", "a tag file READ-ME-FIRST.html with a script, honestly listed", "refuse",
    lambda p: p.put("READ-ME-FIRST.html", "<script>alert(1)</script>").done(), sound=True)
bag("tag-file-exe-in-folder", "a tag folder tools/ with a program, honestly listed", "refuse",
    lambda p: p.put("tools/setup.exe", b"MZ" + bytes(200)).done(), sound=True)
bag("tag-file-unlisted", "a tag file that no manifest lists (lawful by the RFC)", "refuse", lambda
    p: (p.rehash().put("extra.html", "<script>alert(1)</script>"), p.zip())[1])
bag("tag-file-autorun", "autorun.inf and desktop.ini at the top of the bag", "refuse", lambda p:
    p.put("autorun.inf", "[autorun]\nopen=setup.exe\n").put("desktop.ini",
    "[.ShellClassInfo]\nIconResource=\\\\host\\share\\i.ico\n").done(), sound=True)


def info(aname: str, what: str, expected: str, edit: Any, must_not: str = "") -> None:
    tagged("bag-info.txt", edit, "bag-info.txt: " + what, expected, "info-" + aname, must_not)


def oxum(v: Any) -> Any:
    return lambda old: re.sub(rb"Payload-Oxum: .*", lambda _: b"Payload-Oxum: " + (v.encode() if
        isinstance(v, str) else v), old)


bag("info-missing", "no bag-info.txt (lawful: it is optional)", "harmless", lambda p: (p.files.pop(
    "bag-info.txt"), p.rehash(oxum=False).zip())[1])
BAG_2: Rows = (("bytes-one-more", None),
    ("files-one-more", None)
    )
for _n, _v in BAG_2:
    bag("info-oxum-" + _n, "Payload-Oxum one too many", "refuse", lambda p, n=_n: (p.rehash(),
        p.put("bag-info.txt", re.sub(r"Payload-Oxum: (\d+)\.(\d+)", lambda m:
        f"Payload-Oxum: {int(m[1]) + (n[0] == 'b')}.{int(m[2]) + (n[0] == 'f')}", p.text(
        "bag-info.txt"))), p.retag().zip())[-1])
BAG_1: Rows = (("exponent", "9e5.20"),
    ("arabic", "٩٠٦.٢٠"),
    ("digits-6000", "9" * 6000 + ".20"),
    ("negative", "-906068.-20"),
    ("nan", "nan.inf"),
    ("empty", ""),
    ("no-dot", "90606820"),
    ("two-dots", "906.068.20"),
    ("underscores", "906_068.2_0"),
    ("hex", "0xDD354.0x14"),
    ("superscript", "²³.²⁰"),
    ("spaces", " 906068 . 20 "),
    ("leading-zeros", "000906068.00020"),
    ("escape", "\x1b[2J1.1")
    )
for _n, _v in BAG_1:
    info("oxum-" + _n, f"Payload-Oxum: {_v[:20]!r}", "refuse", oxum(_v))
info("oxum-twice", "two Payload-Oxum that disagree", "refuse", lambda o: b"Payload-Oxum: 1.1\n" + o)
info("oxum-lower-case-lies", "payload-oxum in lower case lies, the other is right", "refuse", lambda
    o: o + b"payload-oxum: 1.1\n")
info("oxum-folded", "Payload-Oxum folded over two lines", "harmless", lambda o: re.sub(
    rb"Payload-Oxum: (\d+)", rb"Payload-Oxum:\n \1", o))
info("folded-tabs-3mb", "1,500,000 folded lines of one letter by tabs", "refuse", lambda o: o +
    b"Note: a\n" + b"\ta" * 3 + b"\n" + b"\ta\n" * MB)
info("folded-cr-3mb", "folded lines that end in CR", "refuse", lambda o: o + b"Note: a\r" + b" a\r"
    * MB)
info("folded-blank", "500,000 folded lines of spaces only", "refuse", lambda o: o + b"Note: a\n" +
    b"   \n" * 500_000)
info("folded-first", "the first line is a folded one", "refuse", lambda o:
    b"  continued from nothing\n" + o)
info("labels-300000", "300,000 different labels", "refuse", lambda o: o + b"".join(b"L%d: x\n" % i
    for i in range(300_000)))
info("label-same-300000", "one label 300,000 times", "refuse", lambda o: o + b"Contact-Name: x\n" *
    300_000)
info("line-10mb", "one line of 10 MB", "refuse", lambda o: o + b"Note: " + b"x" * 10 * MB + b"\n")
info("no-colon", "a line without a colon", "refuse", lambda o: o + b"just words\n")
info("only-colons", "200 kB of colons", "refuse", lambda o: o + b":" * 200 * KB + b"\n")
info("empty-label", "an empty label", "refuse", lambda o: o + b": x\n")
info("label-spaces-200k", "a label of 200,000 spaces before its colon", "refuse", lambda o: o + b"A"
    + b" " * 200_000 + b": x\n")
info("value-spaces-300k", "a value of 300,000 spaces and no end", "refuse", lambda o: o + b"A: " +
    b" " * 300_000 + b"\x00\n")
info("escape-codes",
    "terminal codes, bidi marks and a fake line of the program's in the description", "harmless",
    lambda o: re.sub(rb"External-Description: .*",
    "External-Description: \x1b[2J\x1b[1;1H\u202eOK: taken in\x9b0m\x08\x08".encode(), o),
    "any of it on the terminal")
info("identifier-path", "External-Identifier: ../../../evil", "harmless", lambda o: re.sub(
    rb"External-Identifier: .*", b"External-Identifier: ../../../evil", o),
    "a folder made by that name")
info("identifier-other", "External-Identifier of another unit and edition", "harmless", lambda o:
    re.sub(rb"External-Identifier: .*", b"External-Identifier: weaving-shed-9.9.9", o),
    "the unit taken for another")
info("organisation-other", "Source-Organization differs from the publisher in about.json",
    "harmless", lambda o: re.sub(rb"Source-Organization: .*",
    b"Source-Organization: A ministry of schools", o), "that name shown as the source")
info("organisation-twice", "Source-Organization twice, with two names", "harmless", lambda o: o +
    b"Source-Organization: A ministry of schools\n", "that name shown as the source")
info("date-impossible", "Bagging-Date: 2026-02-31T99:99:99Z", "harmless", lambda o: re.sub(
    rb"Bagging-Date: .*", b"Bagging-Date: 2026-02-31T99:99:99Z", o), "a traceback")
info("bag-count", "Bag-Count: 1 of 1000 (a part of more)", "harmless", lambda o: o +
    b"Bag-Count: 1 of 1000\nBag-Group-Identifier: x\n")
info("bom", "a byte order mark in front (the first label is then unknown)", "refuse", lambda o:
    b"\xef\xbb\xbf" + o)
info("utf16", "in UTF-16", "refuse", lambda o: o.decode().encode("utf-16"))
info("invalid-utf8", "bytes that are no UTF-8", "refuse", lambda o: o + b"Note: \xff\xfe\n")
info("nul", "NULs in a value", "refuse", lambda o: o + b"Note: \0\0\0\n")
info("profile-url", "BagIt-Profile-Identifier that a reader is to fetch", "harmless", lambda o: o +
    b"BagIt-Profile-Identifier: http://127.0.0.1:9/profile.json\n", "a request")


def fetch(aname: str, what: str, lines_: Any, drop: Any = None, listed_: Any = True, expected: str =
    "refuse") -> Any:
    def make(p: Pack) -> Made:
        p.rehash()
        body = lines_ if isinstance(lines_, bytes) else lines_.replace("{d}", p.drawing()).encode()
        p.put("fetch.txt", body)
        if drop:
            p.files.pop(p.drawing())
        if listed_:
            p.retag()
        return p.zip()
    bag("fetch-" + aname, "fetch.txt: " + what, expected, make)


fetch("http", "a drawing is left out and to be had over HTTP", "http://127.0.0.1:9/x.svg 100 {d}\n",
    True)
fetch("file", "a drawing is to be had from file:///etc/passwd", "file:///etc/passwd - {d}\n", True)
fetch("present", "it lists a file that is there", "http://127.0.0.1:9/x.svg - {d}\n")
fetch("empty", "empty", "")
fetch("blank", "a single newline", "\n")
fetch("parent", "it would write to ../../evil", "http://127.0.0.1:9/x - ../../evil\n")
fetch("not-listed", "no manifest names it", "http://127.0.0.1:9/x.svg - {d}\n", None, False)
fetch("500000-lines", "500,000 lines", b"http://127.0.0.1:9/ - data/x\n" * 500_000)
fetch("data-url", "a data: address", "data:image/svg+xml,<svg/> 6 {d}\n", True)
fetch("unc", "a Windows share (a password hash leaves when it is opened)",
    "\\\\127.0.0.1\\share\\x 6 {d}\n", True)
fetch("crlf-injection", "an address with %0d%0a in it", "http://127.0.0.1:9/%0d%0aX:1 6 {d}\n",
    True)
fetch("size-huge", "a size of 6,000 digits", "http://127.0.0.1:9/x " + "9" * 6000 + " {d}\n", True)
bag("fetch-case", "FETCH.TXT", "refuse", lambda p: p.put("FETCH.TXT",
    "http://127.0.0.1:9/x - data/x\n").done(), sound=True)
