"""JPEG photographs that are broken, huge, or carry what nobody sees."""

# fmt: off

from __future__ import annotations

import struct
from typing import Any

from tests.packs.attacks.photographs import BOMB, JPEG_BASE, JPEG_CMYK, JPEG_PROG, LEAK, picture
from tests.packs.attacks.pngs import XMP, exif_gps, icc, png, tiff
from tests.packs.attacks.register import Rows
from tests.packs.attacks.zips import MB, Entry, rng, write_zip


def segment(marker: Any, data: Any, length: Any = None) -> Any:
    return bytes([0xFF, marker]) + struct.pack(">H", len(data) + 2 if length is None else
        length) + data


def jpeg_with(exif: Any = b"", extra: Any = b"", base: Any = None, tail: Any = b"") -> Any:
    b = base or JPEG_BASE
    return b[:2] + (segment(0xE1, b"Exif\0\0" + exif) if exif else b"") + extra + b[2:] + tail


def sof(b: Any, w: Any, h: Any, marker: Any = b"\xff\xc0") -> Any:
    at = b.index(marker)
    return b[:at + 5] + struct.pack(">HH", h, w) + b[at + 9:]


def jpeg_grey(w: Any, h: Any, progressive: Any = 0) -> Any:
    """A grey JPEG of two bits a block, so that a huge true picture is small."""
    out = b"\xff\xd8" + segment(0xDB, b"\0" + b"\1" * 64)
    out += segment(0xC2 if progressive else 0xC0, struct.pack(">BHHB", 8, h, w, 1) + b"\1\x11\0")
    out += segment(0xC4, b"\0" + b"\1" + bytes(15) + b"\0") + segment(0xC4, b"\x10" + b"\1" + bytes(
        15) + b"\0")
    blocks = ((w + 7) // 8) * ((h + 7) // 8)
    if not progressive:
        return out + segment(0xDA, b"\1\1\0\0\x3f\0") + bytes((2 * blocks + 7) // 8) + b"\xff\xd9"
    out += segment(0xDA, b"\1\1\0\0\0\0") + bytes((blocks + 7) // 8)

    out += segment(0xC4, b"\x10" + b"\1" + bytes(15) + b"\xe0")
    runs = -(-blocks // 32767)
    bits = "".join("0" + "1" * 14 for _ in range(runs))
    bits += "1" * (-len(bits) % 8)
    ac = int(bits, 2).to_bytes(len(bits) // 8, "big").replace(b"\xff", b"\xff\0")
    return out + (segment(0xDA, b"\1\1\0\1\x3f\0") + ac) * progressive + b"\xff\xd9"


PICTURES_3: Rows = (("two-markers", "start and end only", "refuse", lambda: b"\xff\xd8\xff\xd9"),
    ("no-sof", "no frame header", "refuse", lambda: b"\xff\xd8" + segment(0xDB, b"\0" + b"\1" * 64)
    + b"\xff\xd9"),
    ("no-sos", "a frame header and no scan", "refuse", lambda: JPEG_BASE[:JPEG_BASE.index(
    b"\xff\xda")] + b"\xff\xd9"),
    ("no-eoi", "no end marker", "refuse", lambda: JPEG_BASE[:-2]),
    ("cut-half", "cut in the middle", "refuse", lambda: JPEG_BASE[:len(JPEG_BASE) * 3 // 4]),
    ("scan-empty", "a scan without data", "refuse", lambda: JPEG_BASE[:JPEG_BASE.index(b"\xff\xda")
    + 14] + b"\xff\xd9"),
    ("zero-size", "0 by 0", "refuse", lambda: sof(JPEG_BASE, 0, 0)),
    ("height-0-dnl", "height 0, to be told by DNL later", "refuse", lambda: sof(JPEG_BASE, 96, 0)[
    :-2] + segment(0xDC, struct.pack(">H", 60)) + b"\xff\xd9"),
    ("lying-65535", "says 65,535 by 65,535, holds 96 by 60", "refuse", lambda: sof(JPEG_BASE, 65535,
    65535)),
    ("lying-10000", "says 10,000 by 10,000, holds 96 by 60", "refuse", lambda: sof(JPEG_BASE,
    10_000, 10_000)),
    ("sof-twice", "two frame headers: small, then 65,500 by 65,500", "refuse", lambda: (lambda a:
    JPEG_BASE[:a] + segment(0xC0, struct.pack(">BHHB", 8, 60, 96, 1) + b"\1\x11\0") + sof(JPEG_BASE,
    65500, 65500)[a:])(JPEG_BASE.index(b"\xff\xc0"))),
    ("bomb-true-40000", "a true grey picture of 40,000 by 40,000 (6 MB, 20 kB in the zip)",
    "refuse", lambda: jpeg_grey(40_000, 40_000)),
    ("bomb-true-9400", "a true grey picture of 9,400 by 9,400, below Pillow's warning", "refuse",
    lambda: jpeg_grey(9400, 9400)),
    ("bomb-thin", "65,500 by 1", "harmless", lambda: jpeg_grey(65500, 1)),
    ("bomb-tall", "1 by 65,500", "harmless", lambda: jpeg_grey(1, 65500)),
    ("bomb-scans", "progressive, 10,000 by 10,000, 2,000 scans (minutes of decoding)", "refuse",
    lambda: jpeg_grey(10_000, 10_000, 2000)),
    ("bomb-scans-small", "progressive, 3,000 by 2,000, 400 scans", "refuse", lambda: jpeg_grey(3000,
    2000, 400)),
    ("bomb-sampling", "65,500 by 65,500 with sampling 4 by 4", "refuse", lambda: sof(JPEG_BASE,
    65500, 65500).replace(b"\1\x22\0", b"\1\x44\0", 1)),
    ("sof-arithmetic", "arithmetic coding (SOF9): browsers do not show it", "refuse", lambda:
    JPEG_BASE.replace(b"\xff\xc0", b"\xff\xc9", 1)),
    ("sof-lossless", "lossless (SOF3)", "refuse", lambda: JPEG_BASE.replace(b"\xff\xc0",
    b"\xff\xc3", 1)),
    ("sof-12-bit", "12 bits a sample", "refuse", lambda: (lambda a: JPEG_BASE[:a + 4] + b"\x0c" +
    JPEG_BASE[a + 5:])(JPEG_BASE.index(b"\xff\xc0"))),
    ("components-200", "200 components", "refuse", lambda: (lambda a: JPEG_BASE[:a + 9] + b"\xc8" +
    JPEG_BASE[a + 10:])(JPEG_BASE.index(b"\xff\xc0"))),
    ("cmyk", "four colours: lawful, colours may be turned round", "harmless", lambda: JPEG_CMYK),
    ("huffman-bad", "a Huffman table with more codes than there are", "refuse", lambda: jpeg_with(
    extra=segment(0xC4, b"\0" + b"\xff" * 16 + bytes(50)))),
    ("quant-short", "a quantisation table that is cut", "refuse", lambda: jpeg_with(extra=segment(
    0xDB, b"\0abc"))),
    ("restart-65535", "restart intervals and 100,000 restart markers", "harmless", lambda:
    jpeg_with(extra=segment(0xDD, b"\0\1"))[:-2] + b"\xff\xd0" * 100_000 + b"\xff\xd9"),
    ("segment-length-0", "a segment of length 0 (an endless loop)", "refuse", lambda: jpeg_with(
    extra=b"\xff\xe2\0\0" * 10)),
    ("segment-length-1", "a segment of length 1", "refuse", lambda: jpeg_with(
    extra=b"\xff\xe2\0\1")),
    ("segment-past-end", "a segment of 65,535 bytes that are not there", "refuse", lambda:
    b"\xff\xd8\xff\xe1\xff\xff" + b"Exif\0\0" + exif_gps()),
    ("segments-100000", "100,000 empty comments", "harmless", lambda: jpeg_with(extra=segment(0xFE,
    b"") * 100_000)),
    ("fill-bytes-15mb", "15 MB of fill bytes FF between the segments", "harmless", lambda:
    jpeg_with(extra=b"\xff" * 15 * MB)),
    ("markers-bare-5m", "5 million TEM markers without a length", "harmless", lambda: jpeg_with(
    extra=b"\xff\x01" * 5_000_000)),
    ("junk-between", "20 kB of junk between the segments", "harmless", lambda: jpeg_with(
    extra=b"Ann Body " * 2000)),
    ("exif-gps-le", "a place, a name and a school in Exif", "harmless", lambda: jpeg_with(exif_gps(
    ))),
    ("exif-gps-be", "the same, the other byte order", "harmless", lambda: jpeg_with(exif_gps(">"))),
    ("exif-second-app1", "the first APP1 is sound and empty, the second has the place", "harmless",
    lambda: jpeg_with(tiff([]), segment(0xE1, b"Exif\0\0" + exif_gps()))),
    ("exif-after-sos", "Exif between two scans of a progressive picture", "harmless", lambda:
    exif_late()),
    ("exif-after-eoi", "Exif after the end", "refuse", lambda: jpeg_with(tail=segment(0xE1,
    b"Exif\0\0" + exif_gps()))),
    ("exif-lower-case", "'exif' in small letters (some readers take it)", "harmless", lambda:
    jpeg_with(extra=segment(0xE1, b"exif\0\0" + exif_gps()))),
    ("exif-in-app13", "IPTC with a name and a town", "harmless", lambda: jpeg_with(extra=segment(
    0xED, b"Photoshop 3.0\x008BIM\4\4\0\0\0\0\0\x1c" + b"\x1c\2\x50\0\x08Ann Body" +
    b"\x1c\2\x5a\0\x06London"))),
    ("xmp", "XMP with a place and a name", "harmless", lambda: jpeg_with(extra=segment(0xE1,
    b"http://ns.adobe.com/xap/1.0/\0" + XMP))),
    ("xmp-extended", "extended XMP in pieces", "harmless", lambda: jpeg_with(extra=segment(0xE1,
    b"http://ns.adobe.com/xmp/extension/\0" + b"A" * 32 + struct.pack(">II", len(XMP), 0) + XMP))),
    ("comment-personal", "a comment with a name and a place", "harmless", lambda: jpeg_with(
    extra=segment(0xFE, b"Ann Body, 51.5 N 0.1 W"))),
    ("app-all", "a name in APP2 to APP15", "harmless", lambda: jpeg_with(extra=b"".join(segment(0xE0
    + i, b"Ann Body %d" % i) for i in range(2, 16)))),
    ("thumbnail-uncropped", "an Exif thumbnail that shows what was cut off", "harmless", lambda:
    jpeg_with(exif_thumb())),
    ("jfif-thumbnail", "a JFIF extension thumbnail", "harmless", lambda: jpeg_with(extra=segment(
    0xE0, b"JFXX\0\x10" + JPEG_BASE[:400]))),
    ("mpf", "MPF: a second, larger picture after the first (phones do this)", "harmless", lambda:
    jpeg_with(extra=segment(0xE2, b"MPF\0" + tiff([(0xB000, 7, 4, b"0100"), (0xB001, 4, 1,
    struct.pack("<I", 2))])), tail=jpeg_with(exif_gps()))),
    ("motion-photo", "a video after the end (motion photo)", "harmless", lambda: jpeg_with(
    tail=b"\0\0\0\x18ftypmp42" + bytes(5000))),
    ("exif-ifd-loop", "Exif whose next directory is itself", "harmless", lambda: jpeg_with(
    b"II*\0\x08\0\0\0" + struct.pack("<H", 0) + struct.pack("<I", 8))),
    ("exif-subifd-loop", "an Exif sub-directory that points to its parent", "harmless", lambda:
    jpeg_with(tiff([(0x8769, 4, 1, struct.pack("<I", 8)), (0x8825, 4, 1, struct.pack("<I", 8))]))),
    ("exif-count-2-32", "an Exif tag of 2^32-1 values", "harmless", lambda: jpeg_with(tiff([(0x0112,
    3, 0xFFFFFFFF, struct.pack("<I", 8))]))),
    ("exif-offset-far", "Exif that starts at 2^31", "harmless", lambda: jpeg_with(
    b"II*\0\0\0\0\x80")),
    ("exif-65535-tags", "Exif of 65,535 tags that are not there", "harmless", lambda: jpeg_with(
    b"II*\0\x08\0\0\0\xff\xff" + bytes(40))),
    ("exif-rational-zero", "a resolution of 1/0 (ZeroDivisionError)", "harmless", lambda: jpeg_with(
    exif_gps(extra=[(0x011A, 5, 1, struct.pack("<II", 1, 0)), (0x011B, 5, 1, struct.pack("<II", 0,
    0))]))),
    ("exif-orientation-9", "orientation 9", "harmless", lambda: jpeg_with(exif_gps(orientation=9))),
    ("exif-orientation-8", "orientation 8: taking Exif away must not turn the picture", "harmless",
    lambda: jpeg_with(tiff([(0x0112, 3, 1, struct.pack("<H", 8))]))),
    ("exif-text-codes", "a camera name of terminal codes and markup", "harmless", lambda: jpeg_with(
    tiff([(0x010F, 2, 40, b"\x1b[2J\x1b]0;x\x07<script>alert(1)</script>\0\0\0")]))),
    ("icc-pieces", "a colour profile in 255 pieces, some missing", "harmless", lambda: jpeg_with(
    extra=b"".join(segment(0xE2, b"ICC_PROFILE\0" + bytes([i, 255]) + bytes(200)) for i in (1, 3,
    255, 2, 0)))),
    ("icc-owner", "a colour profile that names a person", "harmless", lambda: jpeg_with(
    extra=segment(0xE2, b"ICC_PROFILE\0\1\1" + icc(b"Copyright Ann Body jane@example.org")))),
    ("script-in-comment", "a comment with a script and the start of a page", "harmless", lambda:
    jpeg_with(extra=segment(0xFE, b"<html><script>alert(1)</script>"))),
    ("polyglot-js", "a picture that is a script too: FF D8 FF E0 2F 2A", "harmless", lambda:
    b"\xff\xd8\xff\xe0\x2f\x2a" + bytes(0x2f2a - 2 - 12) + b"*/=alert(1)/*"[:12] + JPEG_BASE[2:]),
    ("polyglot-pdf", "a PDF in a comment", "harmless", lambda: jpeg_with(extra=segment(0xFE,
    b"%PDF-1.4\n1 0 obj<<>>endobj\n"))),
    ("polyglot-zip", "a zip after the end", "refuse", lambda: jpeg_with(tail=write_zip([Entry(
    "evil.exe", b"MZ")]))),
    ("polyglot-phar", "a PHP archive in a comment", "harmless", lambda: jpeg_with(extra=segment(
    0xFE, b"<?php __HALT_COMPILER(); ?>" + bytes(90)))),
    ("eoi-early", "an end marker, then the real scan", "refuse", lambda: (lambda a: JPEG_BASE[:a] +
    b"\xff\xd9" + JPEG_BASE[a:])(JPEG_BASE.index(b"\xff\xda"))),
    ("two-pictures", "two pictures one after the other", "refuse", lambda: JPEG_BASE + JPEG_BASE),
    ("leading-junk", "a byte before the start", "refuse", lambda: b"\n" + JPEG_BASE),
    ("is-png", "a PNG called .jpg", "refuse", lambda: png()),
    ("is-heic", "a HEIC called .jpg", "refuse", lambda: b"\0\0\0\x18ftypheic\0\0\0\0mif1heic" +
    bytes(500)),
    ("is-jp2", "JPEG 2000 called .jpg", "refuse", lambda: b"\0\0\0\x0cjP  \r\n\x87\n" + bytes(300)),
    ("is-jxl", "JPEG XL called .jpg", "refuse", lambda: b"\xff\x0a" + bytes(300)),
    ("is-ps", "PostScript called .jpg (ImageMagick runs it)", "refuse", lambda:
    b"%!PS\n(x) = quit\n"),
    ("is-mvg", "ImageMagick's push graphic-context", "refuse", lambda:
    b"push graphic-context\nviewbox 0 0 9 9\nfill 'url(http://127.0.0.1:9/x.jpg\"|id\")'"
    b"\npop graphic-context\n"),
    ("empty", "0 bytes", "refuse", lambda: b""),
    ("noise", "a JPEG signature and noise", "refuse", lambda: b"\xff\xd8\xff\xe0" + rng(
    "j").randbytes(5000)),
    ("flips", "100 bytes of the scan changed", "harmless", lambda: JPEG_BASE[:700] + bytes(b ^ 0x10
    if i % 3 == 0 and b != 255 else b for i, b in enumerate(JPEG_BASE[700:-2])) + b"\xff\xd9"),
    )
for _n, _what, _exp, _d in PICTURES_3:
    picture("jpeg-" + _n, "JPEG: " + _what, _exp, _d, ".jpg", LEAK if any(w in _n for w in (
        "exif-gps", "exif-second", "exif-after", "exif-lower", "exif-in", "xmp", "personal",
        "app-all", "thumb", "mpf", "motion", "owner", "junk")) and _exp == "harmless" else BOMB if
        _exp == "harmless" else "")


def exif_late() -> Any:
    at = JPEG_PROG.index(b"\xff\xda", JPEG_PROG.index(b"\xff\xda") + 2)
    prev = JPEG_PROG.rfind(b"\xff\xc4", 0, at)
    at = prev if prev > JPEG_PROG.index(b"\xff\xda") else at
    return JPEG_PROG[:at] + segment(0xE1, b"Exif\0\0" + exif_gps()) + JPEG_PROG[at:]


def exif_thumb() -> Any:
    t = tiff([(0x0112, 3, 1, b"\1\0")])
    ifd1 = struct.pack("<H", 3) + struct.pack("<HHII", 0x0103, 3, 1, 6) + struct.pack("<HHII",
        0x0201, 4, 1, len(t) + 2 + 36 + 4) + struct.pack("<HHII", 0x0202, 4, 1, len(
        JPEG_BASE)) + struct.pack("<I", 0)
    return t[:8] + t[8:10] + t[10:22] + struct.pack("<I", len(t)) + t[26:] + ifd1 + JPEG_BASE
