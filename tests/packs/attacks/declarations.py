"""Bags whose declaration or kinds of sums are wrong."""

# fmt: off

from __future__ import annotations

import hashlib
import re
from typing import Any

from tests.packs.attacks.packed import Pack, enc
from tests.packs.attacks.register import Made, Maker, Rows, recipe
from tests.packs.attacks.zips import MB


def bag(name: str, what: str, expected: str, make: Maker, must_not: str = "", sound: bool =
    False) -> None:
    recipe(name, "bag", what, expected, make, must_not, sound)


def tagged(name: str, data: Any, what: str, expected: str, aname: str, must_not: str = "") -> None:
    """A tag file with these bytes, the tag manifest made anew so that it fits."""
    bag(aname, what, expected, lambda p: (p.rehash().put(name, data(p.rehash().files.get(name, b""))
        if callable(data) else data), p.retag().zip())[1], must_not)


def manifest(aname: str, what: str, expected: str, edit: Any, must_not: str = "", keep_as: Any =
    "manifest-sha512.txt") -> Any:
    """edit(list of (digest, path), pack) -> text or bytes of the manifest."""
    def make(p: Pack) -> Made:
        p.rehash()
        rows = [tuple(one.split("  ", 1)) for one in p.text("manifest-sha512.txt").splitlines()]
        new = edit(rows, p)
        p.put(keep_as, new)
        return p.retag().zip()
    bag(aname, what, expected, make, must_not)


def lines(rows: Any, sep: Any = "  ", end: Any = "\n") -> Any:
    return "".join(f"{d}{sep}{n}{end}" for d, n in rows)


OK_BAGIT = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"
BAGIT_1: Rows = (("missing-lines", "bagit.txt is empty", "refuse", ""),
    ("only-version", "no encoding line", "refuse", "BagIt-Version: 1.0\n"),
    ("version-097", "version 0.97 (lawful, older rules)", "harmless", OK_BAGIT.replace("1.0",
    "0.97")),
    ("version-11", "version 1.1 (not known)", "refuse", OK_BAGIT.replace("1.0", "1.1")),
    ("version-huge", "a version of 5,000 digits (Python's int() raises above 4,300)", "refuse",
    OK_BAGIT.replace("1.0", "9" * 5000 + ".0")),
    ("version-arabic-digits", "the version in Arabic digits", "refuse", OK_BAGIT.replace("1.0",
    "١.٠")),
    ("version-padded", "spaces round the version", "refuse", OK_BAGIT.replace(": 1.0",
    ":   1.0   ")),
    ("version-no-space", "no space after the colon", "refuse", OK_BAGIT.replace(": ", ":")),
    ("version-1-0-0", "version 1.0.0", "refuse", OK_BAGIT.replace("1.0", "1.0.0")),
    ("version-minus", "version -1.0", "refuse", OK_BAGIT.replace("1.0", "-1.0")),
    ("bom", "a byte order mark in front (forbidden by 2.1.1)", "refuse", "\ufeff" + OK_BAGIT),
    ("utf16", "the file itself in UTF-16", "refuse", OK_BAGIT.encode("utf-16")),
    ("says-utf16", "it says that tag files are UTF-16; they are not", "refuse", OK_BAGIT.replace(
    "UTF-8", "UTF-16")),
    ("says-latin1", "it says ISO-8859-1: all tag files are ASCII, so this is lawful", "harmless",
    OK_BAGIT.replace("UTF-8", "ISO-8859-1")),
    ("says-utf7", "it says UTF-7 (a name +AC8- would be a slash)", "refuse", OK_BAGIT.replace(
    "UTF-8", "UTF-7")),
    ("says-unicode-escape", "it says unicode_escape, a Python codec", "refuse", OK_BAGIT.replace(
    "UTF-8", "unicode_escape")),
    ("says-zlib", "it says zlib_codec (bytes to bytes: LookupError)", "refuse", OK_BAGIT.replace(
    "UTF-8", "zlib_codec")),
    ("says-rot13", "it says rot13 (text to text)", "refuse", OK_BAGIT.replace("UTF-8", "rot13")),
    ("says-idna", "it says idna (UnicodeError that is not a DecodeError)", "refuse",
    OK_BAGIT.replace("UTF-8", "idna")),
    ("says-punycode", "it says punycode (slow, and it gives other names)", "refuse",
    OK_BAGIT.replace("UTF-8", "punycode")),
    ("says-undefined", "it says undefined (a codec that always raises)", "refuse", OK_BAGIT.replace(
    "UTF-8", "undefined")),
    ("says-mbcs", "it says mbcs (only on Windows)", "refuse", OK_BAGIT.replace("UTF-8", "mbcs")),
    ("says-nul", "a NUL in the encoding's name (ValueError: embedded null character)", "refuse",
    OK_BAGIT.replace("UTF-8", "UTF-8\0x")),
    ("says-surrogate", "an encoding name outside ASCII", "refuse", OK_BAGIT.replace("UTF-8",
    "ＵＴＦ－８")),
    ("says-1mb", "an encoding's name of 1 MB", "refuse", OK_BAGIT.replace("UTF-8", "u" * MB)),
    ("says-path", "an encoding's name that is a module path (encodings are imported by name)",
    "refuse", OK_BAGIT.replace("UTF-8", "..os.path")),
    ("crlf", "CRLF line ends: lawful", "harmless", OK_BAGIT.replace("\n", "\r\n")),
    ("cr", "CR line ends: lawful in 1.0", "harmless", OK_BAGIT.replace("\n", "\r")),
    ("no-last-newline", "no newline at the end", "harmless", OK_BAGIT.rstrip("\n")),
    ("swapped", "the two lines in the other order", "refuse", "".join(OK_BAGIT.splitlines(True)[
    ::-1])),
    ("three-lines", "a third line", "refuse", OK_BAGIT + "X-Run: yes\n"),
    ("twice", "the version twice, 0.93 last", "refuse", OK_BAGIT + "BagIt-Version: 0.93\n"),
    ("lower-case", "labels in lower case", "refuse", OK_BAGIT.lower()),
    ("nel", "U+0085 and U+2028 as line ends", "refuse", OK_BAGIT.replace("\n", "\u2028")),
    ("invalid-utf8", "bytes that are no UTF-8", "refuse", OK_BAGIT.encode() + b"\xff\xfe\xfd"),
    ("10mb", "10 MB of the second line", "refuse", OK_BAGIT + "Tag-File-Character-Encoding: UTF-8\n"
    * 250_000),
    )
for _n, _what, _exp, _data, *_mn in BAGIT_1:
    tagged("bagit.txt", _data, "bagit.txt: " + _what, _exp, "bagit-" + _n, *_mn)
bag("bagit-txt-missing", "no bagit.txt", "refuse", lambda p: (p.files.pop("bagit.txt"), p.done())[
    1])


def algorithms(*names: Any, mutate: Any = None, drop512: Any = True) -> Any:
    def make(p: Pack) -> Made:
        p.rehash()
        if drop512:
            p.files.pop("manifest-sha512.txt"), p.files.pop("tagmanifest-sha512.txt")
        for a in names:
            rows = "".join(f"{hashlib.new(a, d).hexdigest()}  {enc(n)}\n" for n, d in sorted(
                p.payload().items()))
            p.put(f"manifest-{a}.txt", rows)
        if mutate:
            mutate(p)
        tags = [a for a in names if hashlib.new(a).digest_size] or ["sha512"]
        return p.retag(tags if drop512 else ["sha512", *tags]).zip()
    return make


bag("alg-md5-only", "only manifest-md5.txt: a changed file with the same MD5 can be made", "refuse",
    algorithms("md5"))
bag("alg-sha1-only", "only manifest-sha1.txt (collisions are known)", "refuse", algorithms("sha1"))
bag("alg-sha256-only", "only manifest-sha256.txt: lawful and strong", "harmless", algorithms(
    "sha256"), "a traceback; a tag manifest of another kind required without saying so")
bag("alg-sha3-blake2",
    "manifest-sha3_512.txt and manifest-blake2b.txt only: unknown to RFC 8493, known to " "Python",
    "refuse", algorithms("sha3_512", "blake2b"))
bag("alg-sha512-and-md5", "SHA-512 and MD5, both right", "harmless", algorithms("md5",
    drop512=False))
bag("alg-sha512-right-md5-wrong", "SHA-512 right, MD5 wrong for one file", "refuse", algorithms(
    "md5", drop512=False, mutate=lambda p: p.put("manifest-md5.txt", re.sub("^.", lambda m: "0" if
    m[0] != "0" else "1", p.text("manifest-md5.txt")))))
bag("alg-sha512-right-sha1-fewer", "SHA-512 lists all, SHA-1 one file less (not allowed in 1.0)",
    "refuse", algorithms("sha1", drop512=False, mutate=lambda p: p.put("manifest-sha1.txt",
    "\n".join(p.text("manifest-sha1.txt").splitlines()[1:]) + "\n")))
bag("alg-split", "half of the files in the SHA-512 manifest, half in the SHA-256 one", "refuse",
    lambda p: _alg_split(p))


def _alg_split(p: Pack) -> Any:
    p.rehash()
    names = sorted(p.payload())
    p.put("manifest-sha512.txt", "".join(f"{hashlib.sha512(p.files[n]).hexdigest()}  {n}\n" for n in
        names[::2]))
    p.put("manifest-sha256.txt", "".join(f"{hashlib.sha256(p.files[n]).hexdigest()}  {n}\n" for n in
        names[1::2]))
    return p.retag().zip()


WHICH_ALGORITHMS_1: Rows = (("shake", "shake_128",
    "hexdigest() of SHAKE needs a length: TypeError"),
    ("shake-256", "shake_256", "the same, longer"),
    ("none", "none", "no such algorithm"),
    ("empty", "", "manifest-.txt"),
    ("upper", "SHA512", "SHA512 in capitals"),
    ("hyphen", "sha-512", "sha-512 with a hyphen"),
    ("md5-sha1", "md5-sha1", "OpenSSL's double digest"),
    ("crc32", "crc32", "a checksum, no digest"),
    ("dot", "sha512.txt", "manifest-sha512.txt.txt"),
    ("blake2b-salted", "blake2b", "BLAKE2"),
    ("sm3", "sm3", "known to some OpenSSL only"),
    ("unicode", "ｓｈａ512", "fullwidth letters that normalise to sha512"),
    ("512-224", "sha512_224", "a cut SHA-512"),
    ("long", "a" * 200, "200 letters")
    )
for _n, _alg, _what in WHICH_ALGORITHMS_1:
    bag("alg-unknown-" + _n,
        f"beside the sound manifest one called manifest-{_alg[:20]}.txt of 64-digit nonse"
        f"nse ({_what})", "refuse", lambda p, a=_alg: (p.rehash().put(f"manifest-{a}.txt", "".join(
        f"{'0' * 64}  {n}\n" for n in sorted(p.payload()))), p.retag().zip())[1])
bag("alg-only-shake", "the only manifest is manifest-shake_256.txt with empty digests", "refuse",
    lambda p: (p.rehash(), p.files.pop("manifest-sha512.txt"), p.files.pop(
    "tagmanifest-sha512.txt"), p.put("manifest-shake_256.txt", "".join(f"  {n}\n" for n in sorted(
    p.payload()))), p.zip())[-1])
