"""Paths that lead elsewhere, clash or cannot be seen."""

# fmt: off

from __future__ import annotations

from typing import Any

from tests.packs.attacks.overlaps import archive, entries_of, listed, plus
from tests.packs.attacks.packed import Pack
from tests.packs.attacks.register import Made, Rows
from tests.packs.attacks.zips import Entry, write_zip

_NAMES = [("absolute", "/etc/cron.d/x"), ("absolute-in-root", "{r}//etc/cron.d/x"), ("parent",
    "{r}/../../evil.txt"), ("parent-backslash", "{r}\\..\\..\\evil.txt"), ("parent-mixed",
    "{r}/data\\..\\..\\..\\evil.txt"), ("parent-inside", "{r}/data/unit/../evil.txt"), (
    "parent-of-data-to-same-root", "{r}/data/../data/unit/x.md"), ("drive",
    "C:\\Windows\\evil.txt"), ("drive-slash", "C:/Windows/evil.txt"), ("drive-relative",
    "C:evil.txt"), ("drive-in-path", "{r}/data/unit/C:/evil.txt"), ("unc", "\\\\host\\share\\x"), (
    "unc-slash", "//host/share/x"), ("device-path", "\\\\?\\C:\\x"), ("dot-dot-space",
    "{r}/data/.. /x.txt"), ("three-dots", "{r}/data/.../x.txt"), ("empty", ""), ("slash-only", "/"),
    ("dot", "."), ("dot-dot", ".."), ("tilde", "~/.ssh/authorized_keys"), ("dash-rf", "-rf"), (
    "other-root", "other/data/x.txt"), ("root-case-differs", "{R}/data/x.txt"), ("percent-parent",
    "{r}/%2e%2e/%2e%2e/x.txt"),]
for _n, _name_ in _NAMES:
    archive(f"name-{_n}", f"an entry named {_name_!r}", "refuse", plus(lambda p, t=_name_: Entry(
        t.replace("{r}", p.root).replace("{R}", p.root.upper()), b"evil\n")))
_PATHS = [("device-con", "data/unit/media/CON"), ("device-aux-svg", "data/unit/media/aux.svg"), (
    "device-com1-superscript", "data/unit/media/com¹.svg"), ("device-conin",
    "data/unit/media/CONIN$"), ("device-nul-double", "data/unit/media/nul.tar.svg"), (
    "device-space", "data/unit/media/con .svg"), ("device-lpt9", "data/unit/LPT9/x.svg"), (
    "device-lpt0-superscript2", "data/unit/media/LPT².png"), ("stream",
    "data/unit/media/a.svg:evil.exe"), ("stream-data", "data/about.json::$DATA"), ("stream-index",
    "data/unit/media::$INDEX_ALLOCATION/x.svg"), ("end-dot", "data/unit/unit.md."), ("end-space",
    "data/unit/unit.md "), ("folder-end-dot", "data/unit./x.md"), ("folder-end-space",
    "data/unit /x.md"), ("short-8-3", "data/unit/LESSON~1.MD"), ("newline",
    "data/unit/media/a\nb.svg"), ("carriage-return", "data/unit/media/a\rb.svg"), ("escape",
    "data/unit/media/\x1b[31mred.svg"), ("bell", "data/unit/media/a\x07.svg"), ("del",
    "data/unit/media/a\x7f.svg"), ("c1-csi", "data/unit/media/a\x9b31m.svg"), ("bidi",
    "data/unit/media/\u202egvs.exe"), ("bidi-isolate", "data/unit/media/\u2067abc\u2069.svg"), (
    "zero-width", "data/unit/media/low\u200btide.svg"), ("soft-hyphen",
    "data/unit/media/low\u00adtide.svg"), ("tag-letters", "data/unit/media/a" + "".join(chr(0xE0000
    + ord(c)) for c in "evil") + ".svg"), ("hangul-filler", "data/unit/media/\u3164.svg"), (
    "variation-selector", "data/unit/media/a\ufe01.svg"), ("variation-selector-supplement",
    "data/unit/media/a\U000E0101.svg"), ("braille-blank", "data/unit/media/\u2800.svg"), (
    "line-separator", "data/unit/media/a\u2028b.svg"), ("nel", "data/unit/media/a\x85b.svg"), (
    "vertical-tab", "data/unit/media/a\x0bb.svg"), ("file-separator", "data/unit/media/a\x1cb.svg"),
    ("fullwidth-slash", "data/unit/media/..／..／x.svg"),
    ("division-slash", "data/unit/..∕..∕x.svg"),
    ("fullwidth-dots", "data/unit/．．/x.svg"),
    ("one-dot-leader", "data/unit/\u2024\u2024/x.svg"), (
    "noncharacter", "data/unit/media/a\uffff.svg"), ("private-use", "data/unit/media/a\ue000.svg"),
    ("nfd", "data/unit/media/cafe\u0301.svg"), ("combining-flood", "data/unit/media/a" + "\u0301" *
    100 + ".svg"), ("component-300", "data/unit/media/" + "n" * 300 + ".svg"), (
    "component-255-bytes-of-4", "data/unit/media/" + "𝒂" * 64 + ".svg"), ("path-5000", "data/unit/"
    + "abcdefghi/" * 500 + "x.svg"), ("deep-1000", "data/" + "d/" * 1000 + "x"), ("hidden-git",
    "data/unit/.git/hooks/post-checkout"), ("hidden-part", "data/unit/media/.low-tide.svg.part"), (
    "desktop-ini", "data/unit/desktop.ini"), ("autorun", "data/autorun.inf"), ("ds-store",
    "data/unit/.DS_Store"), ("macosx", "data/__MACOSX/._unit.md"), ("exe-in-media",
    "data/unit/media/show.exe"), ("html-in-media", "data/unit/media/x.html"), ("python-in-unit",
    "data/unit/conftest.py"), ("double-extension", "data/unit/media/low-tide.svg.html"), (
    "upper-extension", "data/unit/media/X.SVG"), ("quote-and-angle",
    "data/unit/media/\"><img src=x onerror=alert(1)>.svg"), ("query-and-hash",
    "data/unit/media/a?b#c.svg"), ("percent", "data/unit/media/%2e%2e%2fx.svg"), ("dollar-shell",
    "data/unit/media/$(id).svg"), ("ampersand-cmd", "data/unit/media/a&calc&.svg"), ("star-glob",
    "data/unit/media/*.svg"), ("bracket-glob", "data/unit/media/[a-z].svg"), ("leading-dash",
    "data/unit/media/--help.svg"), ("brace-format", "data/unit/media/{0.__class__}.svg"), (
    "percent-format", "data/unit/media/%(x)s%n.svg"), ("emoji-family",
    "data/unit/media/👨\u200d👩\u200d👧.svg"), ("unassigned", "data/unit/media/\U000e0fff.svg"), (
    "arabic-digit-lesson", "data/unit/lesson-١.md"),]
for _n, _path in _PATHS:
    archive(f"path-{_n}", f"a listed file at {_path[:70]!r}", "refuse", listed(_path,
        b"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'/>"), sound=True)


def clash(a: Any, b: Any) -> Any:
    def make(p: Pack) -> Made:
        return p.put(a, b"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><path d='M0 "
            b"0h9'/></svg>").put(b,
            b"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><path d='M0 "
            b"0h8'/></svg>").done()
    return make


NAMES_1: Rows = (("case-drawing", "a.svg", "A.svg"),
    ("nfc-nfd", "caf\u00e9.svg", "cafe\u0301.svg"),
    ("sharp-s", "stra\u00dfe.svg", "strasse.svg"),
    ("long-s", "\u017fea.svg", "sea.svg"),
    ("kelvin", "\u212a.svg", "k.svg"),
    ("dotted-i", "\u0130.svg", "i\u0307.svg"),
    ("dotless-i", "I.svg", "\u0131.svg"),
    ("ligature-fi", "\ufb01n.svg", "fin.svg"),
    ("zero-width-joiner", "a\u200d.svg", "a.svg"),
    ("final-sigma", "\u03c2.svg", "\u03c3.svg"),
    ("angstrom", "\u212b.svg", "\u00c5.svg"),
    ("cherokee", "\u13a0.svg", "\uab70.svg"),
    ("hangul", "\uac00.svg", "\u1100\u1161.svg"),
    ("fullwidth-a", "\uff41.svg", "a.svg"),
    ("folder-case", "Sub/a.svg", "sub/b.svg"),
    ("georgian-mtavruli", "\u1c90.svg", "\u10d0.svg"),
    ("nfd-order", "a\u0323\u0307.svg", "a\u0307\u0323.svg")
    )
for _n, _a, _b in NAMES_1:
    archive(f"clash-{_n}",
        f"two listed drawings, {_a!r} and {_b!r}, that are one file on some discs", "refuse", clash(
        f"data/unit/media/{_a}", f"data/unit/media/{_b}"), sound=True)
archive("clash-unit-md-case", "UNIT.MD beside unit.md, other text", "refuse", lambda p: p.put(
    "data/unit/UNIT.MD", p.unit.replace("title:", "title: Other,", 1)).done(), sound=True)
archive("clash-data-case", "Data/ beside data/", "refuse", plus(lambda p: Entry(
    f"{p.root}/Data/unit/unit.md", b"x")))
archive("clash-bagit-case", "BAGIT.TXT beside bagit.txt", "refuse", lambda p: p.put("BAGIT.TXT",
    "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-16\n").done(), sound=True)
archive("nul-in-name", "'unit.md NUL .svg': Python cuts a name at NUL, other readers do not",
    "refuse", plus(lambda p: Entry(f"{p.root}/data/unit/media/x.svg".encode() +
    b"\0/../../../evil.exe", b"x")))
archive("nul-makes-a-second-unit", "'unit.md NUL x' is a second unit.md once it is cut", "refuse",
    plus(lambda p: Entry(f"{p.root}/data/unit/unit.md".encode() + b"\0x", b"second")))
archive("utf8-flag-invalid", "the flag says UTF-8, the bytes are not (FF FE)", "refuse", plus(lambda
    p: Entry(f"{p.root}/data/unit/media/".encode() + b"\xff\xfe.svg", b"x", flags=0x800)))
archive("utf8-overlong-parent", "overlong UTF-8 for ../", "refuse", plus(lambda p: Entry(
    f"{p.root}/data/".encode() + b"\xc0\xae\xc0\xae/x", b"x", flags=0x800)))
archive("utf8-surrogate-bytes", "UTF-8 bytes of a lone surrogate", "refuse", plus(lambda p: Entry(
    f"{p.root}/data/unit/media/".encode() + b"\xed\xa0\x80.svg", b"x", flags=0x800)))
archive("cp437-high", "high bytes without the UTF-8 flag (cp437 or cp1252 or UTF-8?)", "refuse",
    plus(lambda p: Entry(f"{p.root}/data/unit/media/".encode() + b"caf\x82.svg", b"x")))
archive("utf8-without-flag", "a listed UTF-8 name, flag not set: readers see different names",
    "refuse", lambda p: (lambda es: write_zip([Entry(e.name.encode(), e.data) for e in es]))(
    entries_of(p.put("data/unit/media/café.svg", b"<svg xmlns='http://www.w3.org/2000/svg'/>"))))
archive("flag-differs-local-central", "UTF-8 flag only in the central list", "refuse", lambda p: (
    lambda es: write_zip([Entry(e.name.encode(), e.data, flags=0, cflags=0x800) for e in es]))(
    entries_of(p.put("data/unit/media/café.svg", b"<svg xmlns='http://www.w3.org/2000/svg'/>"))))
archive("all-backslashes", "every name written with backslashes (an old Windows tool)", "refuse",
    lambda p: write_zip([Entry(e.name.replace("/", "\\"), e.data) for e in entries_of(p)]))
archive("root-none", "the bag at the top, without its folder", "refuse", lambda p: write_zip([Entry(
    n, d) for n, d in sorted(p.rehash().files.items())]))
archive("root-dot-dot", "the bag's folder is called ..", "refuse", lambda p: p.in_root("..").done())
archive("root-dot", "the bag's folder is called .", "refuse", lambda p: p.in_root(".").done())
archive("root-nested", "the bag is one folder further down", "refuse", lambda p: p.in_root("a/" +
    p.root).done())
archive("root-other-unit", "the folder is called after another unit and edition", "harmless", lambda
    p: p.in_root("weaving-shed-9.9.9").done(), "the unit stored or shown under the folder's name",
    True)
archive("root-escape", "the folder's name holds terminal codes", "refuse", lambda p: p.in_root(
    "\x1b[2Jrock").done(), sound=True)
archive("root-device", "the folder is called CON", "harmless", lambda p: p.in_root("CON").done(),
    "a folder CON written", True)
archive("root-two-bags", "two sound bags in one zip", "refuse", lambda p: write_zip(entries_of(
    p.copy()) + entries_of(p.set_edition("1.0.1"))))
archive("root-60000-bytes", "the folder's name is 60,000 letters long", "refuse", lambda p:
    p.in_root("r" * 60_000).done(), sound=True)
archive("name-65535", "one entry whose name is 65,535 bytes", "refuse", plus(lambda p: Entry(
    f"{p.root}/data/unit/media/".ljust(65535, "n"), b"x")))
