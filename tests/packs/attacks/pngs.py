"""PNG pictures that are broken, huge, or carry what nobody sees."""

# fmt: off

from __future__ import annotations

import struct
import zlib
from typing import Any

from tests.packs.attacks.drawings_that_act import svg
from tests.packs.attacks.photographs import BOMB, JPEG_BASE, LEAK, picture
from tests.packs.attacks.register import Rows
from tests.packs.attacks.zips import MB, Entry, rng, write_zip

XMP = (b'<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/2'
    b'2-rdf-syntax-ns#"><rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" '
    b'exif:GPSLatitude="51,30.0N" exif:GPSLongitude="0,7.5W" '
    b'xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:creator>Ann '
    b'Body</dc:creator></rdf:Description></rdf:RDF></x:xmpmeta>')


def chunk(kind: bytes, data: bytes, crc: Any = None, length: Any = None) -> bytes:
    return struct.pack(">I", len(data) if length is None else length) + kind + data + struct.pack(
        ">I", zlib.crc32(kind + data) if crc is None else crc)


SIG = b"\x89PNG\r\n\x1a\n"


def ihdr(w: Any, h: Any, depth: Any = 8, colour: Any = 2, comp: Any = 0, filt: Any = 0, lace: Any =
    0) -> Any:
    return chunk(b"IHDR", struct.pack(">IIBBBBB", w, h, depth, colour, comp, filt, lace))


def pixels(w: Any, h: Any, seed: Any = "png") -> Any:
    r = rng(seed)
    return b"".join(b"\0" + bytes((x * 3 + r.randrange(9)) % 256 if c == 0 else (y * 5) % 256 if c
        == 1 else 90 for x in range(w) for c in range(3)) for y in range(h))


def png(w: Any = 96, h: Any = 60, before: Any = b"", after: Any = b"", tail: Any = b"", idat: Any =
    None, head: Any = None, end: Any = True, **kw: Any) -> Any:
    data = zlib.compress(pixels(w, h), 9) if idat is None else idat
    return SIG + (head if head is not None else ihdr(w, h, **kw)) + before + chunk(b"IDAT",
        data) + after + (chunk(b"IEND", b"") if end else b"") + tail


def zeros(n: Any) -> bytes:
    c = zlib.compressobj(9)
    out = []
    block = bytes(1 << 20)
    while n > 0:
        out.append(c.compress(block[:min(n, 1 << 20)]))
        n -= 1 << 20
    return b"".join(out) + c.flush()


def png_bomb(w: Any, h: Any, depth: Any = 1, colour: Any = 0, **kw: Any) -> Any:
    bits = {0: 1, 2: 3, 3: 1, 4: 2, 6: 4}[colour] * depth
    return png(w, h, idat=zeros(h * (1 + (w * bits + 7) // 8)), depth=depth, colour=colour, **kw)


PICTURES_4: Rows = (("header-only", "signature and nothing more", "refuse", lambda: SIG),
    ("no-ihdr", "no IHDR", "refuse", lambda: png(head=b"")),
    ("ihdr-second", "IHDR is not first", "refuse", lambda: png(head=chunk(b"tEXt", b"a\0b") + ihdr(
    96, 60))),
    ("ihdr-twice", "two IHDR: 96 by 60, then 60,000 by 60,000", "refuse", lambda: png(before=ihdr(
    60_000, 60_000))),
    ("ihdr-long", "an IHDR of 200 bytes", "refuse", lambda: png(head=chunk(b"IHDR", struct.pack(
    ">IIBBBBB", 96, 60, 8, 2, 0, 0, 0) + bytes(187)))),
    ("ihdr-short", "an IHDR of 5 bytes", "refuse", lambda: png(head=chunk(b"IHDR",
    b"\0\0\0\x60\0"))),
    ("crc-ihdr", "IHDR with a wrong CRC", "refuse", lambda: png(head=chunk(b"IHDR", struct.pack(
    ">IIBBBBB", 96, 60, 8, 2, 0, 0, 0), crc=1))),
    ("crc-idat", "IDAT with a wrong CRC", "refuse", lambda: png().replace(b"IDAT", b"IDAT", 1)[:-20]
    + b"\0\0\0\0" + png()[-16:]),
    ("zero-wide", "0 by 60", "refuse", lambda: png(head=ihdr(0, 60))),
    ("zero-high", "96 by 0", "refuse", lambda: png(head=ihdr(96, 0))),
    ("wide-2-31", "2^31-1 wide, a kilobyte of data", "refuse", lambda: png(head=ihdr(2**31 - 1,
    1))),
    ("wide-2-32", "2^32-1 by 2^32-1", "refuse", lambda: png(head=ihdr(2**32 - 1, 2**32 - 1))),
    ("lying-larger", "says 4,000 by 3,000; holds 96 by 60", "refuse", lambda: png(head=ihdr(4000,
    3000))),
    ("lying-smaller", "says 96 by 60; the stream holds 500 MB more", "refuse", lambda: png(
    idat=zeros(500 * MB))),
    ("bomb-30000-1bit", "30,000 by 30,000, one bit (112 MB raw, 900 million pixels)", "refuse",
    lambda: png_bomb(30_000, 30_000)),
    ("bomb-60000-1bit", "60,000 by 60,000, one bit (440 kB)", "refuse", lambda: png_bomb(60_000,
    60_000)),
    ("bomb-16bit-rgba", "8,000 by 8,000 of 16 bits RGBA (512 MB raw, 500 kB)", "refuse", lambda:
    png_bomb(8000, 8000, 16, 6)),
    ("bomb-89-megapixel", "9,400 by 9,400: just below Pillow's warning", "refuse", lambda: png_bomb(
    9400, 9400, 8, 2)),
    ("bomb-170-megapixel", "13,300 by 13,300: between Pillow's warning and its error", "refuse",
    lambda: png_bomb(13_300, 13_300, 8, 2)),
    ("bomb-thin", "2,000,000 by 1 (most limits are on the area)", "refuse", lambda: png_bomb(
    2_000_000, 1)),
    ("bomb-tall", "1 by 4,000,000 (a page kilometres tall)", "refuse", lambda: png_bomb(1,
    4_000_000)),
    ("bomb-interlaced", "20,000 by 20,000, interlaced", "refuse", lambda: png_bomb(20_000, 20_000,
    lace=1)),
    ("bad-depth", "3 bits of RGB", "refuse", lambda: png(head=ihdr(96, 60, 3, 2))),
    ("bad-colour", "colour type 5", "refuse", lambda: png(head=ihdr(96, 60, 8, 5))),
    ("bad-compression", "compression method 9", "refuse", lambda: png(head=ihdr(96, 60, comp=9))),
    ("bad-interlace", "interlace 7", "refuse", lambda: png(head=ihdr(96, 60, lace=7))),
    ("bad-filter-row", "a row of filter 200", "refuse", lambda: png(idat=zlib.compress(b"\xc8" +
    pixels(96, 60)[1:]))),
    ("palette-missing", "palette colours, no PLTE", "refuse", lambda: png(head=ihdr(96, 60, 8, 3),
    idat=zlib.compress(bytes(97 * 60)))),
    ("palette-out", "palette of 1 colour, pixels ask for 255", "harmless", lambda: png(head=ihdr(96,
    60, 8, 3), before=chunk(b"PLTE", b"abc"), idat=zlib.compress((b"\0" + b"\xff" * 96) * 60))),
    ("palette-not-3", "a PLTE of 100 bytes", "refuse", lambda: png(before=chunk(b"PLTE", bytes(
    100)))),
    ("depth-16", "16 bits RGB: lawful", "harmless", lambda: png(head=ihdr(48, 60, 16, 2),
    idat=zlib.compress((b"\0" + bytes(288)) * 60))),
    ("grey-1-bit", "one bit grey: lawful", "harmless", lambda: png_bomb(96, 60)),
    ("no-idat", "no IDAT", "refuse", lambda: SIG + ihdr(96, 60) + chunk(b"IEND", b"")),
    ("no-iend", "no IEND", "refuse", lambda: png(end=False)),
    ("cut-half", "cut in the middle", "refuse", lambda: png()[:len(png()) // 2]),
    ("cut-last-byte", "the last byte is missing", "refuse", lambda: png()[:-1]),
    ("idat-garbage", "IDAT is no zlib", "refuse", lambda: png(idat=b"garbage" * 50)),
    ("idat-short", "IDAT ends after 10 rows", "refuse", lambda: png(idat=zlib.compress(pixels(96,
    10)))),
    ("idat-adler", "IDAT with a wrong Adler-32", "refuse", lambda: png(idat=zlib.compress(pixels(96,
    60))[:-4] + b"\0\0\0\0")),
    ("idat-dictionary", "IDAT that asks for a preset dictionary", "refuse", lambda: png(
    idat=b"\x78\xbb" + b"\0\0\0\1" + zlib.compress(pixels(96, 60))[2:])),
    ("idat-split-gap", "two IDAT with a text between", "refuse", lambda: (lambda z: SIG + ihdr(96,
    60) + chunk(b"IDAT", z[:50]) + chunk(b"tEXt", b"a\0b") + chunk(b"IDAT", z[50:]) + chunk(b"IEND",
    b""))(zlib.compress(pixels(96, 60)))),
    ("idat-empty-million", "600,000 empty IDAT chunks", "harmless", lambda: png(before=chunk(
    b"IDAT", b"") * 600_000)),
    ("chunk-length-2-31", "a chunk that says 2^31 bytes", "refuse", lambda: png(before=chunk(
    b"teXt", b"abc", length=2**31))),
    ("chunk-length-2-32", "a chunk that says 2^32-1 bytes", "refuse", lambda: png(before=chunk(
    b"teXt", b"abc", length=2**32 - 1))),
    ("chunk-length-back", "a chunk whose length, signed, points back (an endless loop)", "refuse",
    lambda: png(before=chunk(b"teXt", b"", length=2**32 - 12))),
    ("chunk-critical-unknown", "an unknown critical chunk", "refuse", lambda: png(before=chunk(
    b"EVIL", b"x"))),
    ("chunk-name-odd", "chunks whose names are no letters", "refuse", lambda: png(before=chunk(
    b"\x1b[2J", b"x"))),
    ("text-script", "tEXt with a script", "harmless", lambda: png(before=chunk(b"tEXt",
    b"Comment\0<script>alert(1)</script>"))),
    ("text-personal", "tEXt Author and iTXt XMP with a name and a place", "harmless", lambda: png(
    before=chunk(b"tEXt", b"Author\0Ann Body jane@example.org") + chunk(b"iTXt",
    b"XML:com.adobe.xmp\0\0\0\0\0" + XMP))),
    ("text-after-idat", "the same after the picture data", "harmless", lambda: png(after=chunk(
    b"tEXt", b"Author\0Ann Body jane@example.org") + chunk(b"eXIf", exif_gps()))),
    ("text-after-iend", "the same after IEND", "refuse", lambda: png(tail=chunk(b"tEXt",
    b"Author\0Ann Body jane@example.org"))),
    ("exif-gps", "eXIf with a place", "harmless", lambda: png(before=chunk(b"eXIf", exif_gps()))),
    ("exif-raw-profile", "a place in 'Raw profile type exif' (ImageMagick's hexadecimal text)",
    "harmless", lambda: png(before=chunk(b"zTXt", b"Raw profile type exif\0\0" + zlib.compress(
    b"\nexif\n%8d\n" % len(exif_gps()) + exif_gps().hex().encode() + b"\n")))),
    ("private-chunk", "a name in a private chunk", "harmless", lambda: png(before=chunk(b"prVt",
    b"Ann Body, 51.5 N 0.1 W"))),
    ("time-phys", "tIME of month 99 and pHYs of 0", "harmless", lambda: png(before=chunk(b"tIME",
    b"\xff\xff\x63\x63\x63\x63\x63") + chunk(b"pHYs", bytes(9)))),
    ("ztxt-bomb", "zTXt of 500 MB", "harmless", lambda: png(before=chunk(b"zTXt", b"a\0\0" + zeros(
    500 * MB)))),
    ("itxt-bomb", "iTXt of 500 MB", "harmless", lambda: png(before=chunk(b"iTXt", b"a\0\1\0\0\0" +
    zeros(500 * MB)))),
    ("iccp-bomb", "a colour profile of 500 MB", "harmless", lambda: png(before=chunk(b"iCCP",
    b"a\0\0" + zeros(500 * MB)))),
    ("iccp-garbage", "a colour profile of rubbish", "harmless", lambda: png(before=chunk(b"iCCP",
    b"a\0\0" + zlib.compress(b"rubbish" * 30)))),
    ("iccp-owner", "a colour profile whose text names a person", "harmless", lambda: png(
    before=chunk(b"iCCP", b"Ann Body\0\0" + zlib.compress(icc(
    b"Copyright Ann Body jane@example.org"))))),
    ("texts-100000", "100,000 tEXt chunks", "harmless", lambda: png(before=chunk(b"tEXt", b"a\0b") *
    100_000)),
    ("apng-30000-frames", "an animated PNG of 30,000 frames, 1 ms each", "refuse", lambda: apng(
    30_000)),
    ("apng-flash", "an animated PNG that flashes red and white 20 times a second", "refuse", lambda:
    apng(2, flash=True)),
    ("apng-frame-outside", "a frame outside the picture", "refuse", lambda: apng(2, x=2**31 - 1)),
    ("apng-hidden-first", "the first picture is not part of the animation: another is shown",
    "harmless", lambda: apng(2, hidden=True)),
    ("polyglot-html", "HTML with a script in the first text", "harmless", lambda: png(before=chunk(
    b"tEXt", b"a\0<html><script>alert(1)</script><!--"))),
    ("appended-zip", "a zip after the picture", "refuse", lambda: png(tail=write_zip([Entry(
    "evil.exe", b"MZ")]))),
    ("appended-10mb", "10 MB of noise after the picture", "refuse", lambda: png(tail=rng(
    "t").randbytes(10 * MB))),
    ("appended-other-picture", "a second PNG after the first (the uncropped one)", "refuse", lambda:
    png(tail=png(97, 61))),
    ("acropalypse", "a cropped picture with the rest of the old one behind it", "refuse", lambda:
    png(60, 40, tail=png()[200:])),
    ("idat-hidden-rows", "120 rows in the data, 60 in the header: the cropped part is still there",
    "harmless", lambda: png(idat=zlib.compress(pixels(96, 120)))),
    ("zlib-trailing", "20 kB behind the zlib stream in IDAT", "harmless", lambda: png(
    idat=zlib.compress(pixels(96, 60)) + b"Ann Body " * 2000)),
    ("transparent-all", "wholly transparent, colours beneath", "harmless", lambda: png_bomb(96, 60,
    8, 6)),
    ("size-15mb", "an honest noisy PNG of 15 MB", "harmless", lambda: png(3000, 1667,
    idat=zlib.compress(noise_rows(3000, 1667), 0))),
    ("cgbi", "Apple's CgBI PNG, which browsers do not show", "refuse", lambda: png(head=chunk(
    b"CgBI", b"\x50\0\x20\x06") + ihdr(96, 60))),
    ("mng", "an MNG called .png", "refuse", lambda: b"\x8aMNG\r\n\x1a\n" + png()[8:]),
    ("is-jpeg", "a JPEG called .png", "refuse", lambda: JPEG_BASE),
    ("is-svg", "a drawing with a script called .png", "refuse", lambda: svg(
    "<script>alert(1)</script>").encode()),
    ("is-html", "a page called .png", "refuse", lambda:
    b"<!doctype html><script>alert(1)</script>"),
    ("is-tiff", "a TIFF called .png", "refuse", lambda: exif_gps()),
    ("is-bmp", "a BMP called .png", "refuse", lambda: b"BM" + struct.pack("<IHHIIiiHHIIiiII", 58, 0,
    0, 54, 40, 1, 1, 1, 24, 0, 4, 0, 0, 0, 0) + bytes(4)),
    ("is-ico", "an icon called .png", "refuse", lambda: struct.pack("<HHHBBBBHHII", 0, 1, 1, 0, 0,
    0, 0, 1, 32, len(png()), 22) + png()),
    ("empty", "0 bytes", "refuse", lambda: b""),
    ("newlines-changed", "CR LF made LF (sent as text)", "refuse", lambda: png().replace(b"\r\n",
    b"\n")),
    )
for _n, _what, _exp, _d in PICTURES_4:
    picture("png-" + _n, "PNG: " + _what, _exp, _d, ".png", LEAK if any(w in _n for w in (
        "personal", "exif", "text-", "private", "owner", "hidden-rows", "zlib-trailing")) else BOMB
        if _exp == "harmless" else "")


def noise_rows(w: Any, h: Any) -> Any:
    r = rng("noise")
    return b"".join(b"\0" + r.randbytes(3 * w) for _ in range(h))


def apng(frames: Any, flash: Any = False, x: Any = 0, hidden: Any = False) -> Any:
    w, h = 96, 60
    data = [zlib.compress((b"\0" + c * w) * h, 9) for c in (b"\xff\0\0", b"\xff\xff\xff")]
    seq = 0
    out = [SIG, ihdr(w, h), chunk(b"acTL", struct.pack(">II", frames, 0))]
    if hidden:
        out.append(chunk(b"IDAT", data[1]))
    for i in range(frames):
        out.append(chunk(b"fcTL", struct.pack(">IIIIIHHBB", seq, w, h, x if i else 0, 0, 1, 20 if
            flash else 1000, 0, 0)))
        seq += 1
        if i == 0 and not hidden:
            out.append(chunk(b"IDAT", data[0]))
        else:
            out.append(chunk(b"fdAT", struct.pack(">I", seq) + data[i % 2]))
            seq += 1
    return b"".join(out) + chunk(b"IEND", b"")


def icc(text: Any) -> Any:
    desc = b"text\0\0\0\0" + text + b"\0"
    body = struct.pack(">I4sII", 1, b"cprt", 144, len(desc)) + desc
    head = struct.pack(">I4sI4s4s4s", 128 + len(body), b"lcms", 0x02100000, b"mntr", b"RGB ",
        b"XYZ ") + bytes(12) + b"acsp"
    return head.ljust(128, b"\0") + body


def tiff(tags: Any, order: Any = "<", gps: Any = ()) -> Any:
    """A TIFF block: tags are (tag, type, count, 4 bytes or longer data)."""
    def ifd(rows: Any, at: Any, nxt: Any = 0) -> Any:
        head, rest = struct.pack(order + "H", len(rows)), b""
        base = at + 2 + 12 * len(rows) + 4
        for tag, kind, count, data in rows:
            if len(data) <= 4:
                value = data.ljust(4, b"\0")
            else:
                value = struct.pack(order + "I", base + len(rest))
                rest += data
            head += struct.pack(order + "HHI", tag, kind, count) + value
        return head + struct.pack(order + "I", nxt) + rest
    rows = sorted(tags)
    if gps:
        size = len(ifd([*rows, (34853, 4, 1, b"0000")], 8))
        rows = sorted([*rows, (34853, 4, 1, struct.pack(order + "I", 8 + size))])
    out = (b"II*\0" if order == "<" else b"MM\0*") + struct.pack(order + "I", 8) + ifd(rows, 8)
    return out + (ifd(list(gps), len(out)) if gps else b"")


def exif_gps(order: Any = "<", orientation: Any = 6, extra: Any = ()) -> Any:
    def rat(*v: Any) -> Any:
        return b"".join(struct.pack(order + "II", x, 1) for x in v)
    return tiff([(0x0112, 3, 1, struct.pack(order + "H", orientation)), (0x013B, 2, 9,
        b"Ann Body\0"), (0x010E, 2, 22, b"Class 3, Other School\0"), *extra], order, [(1, 2, 2,
        b"N\0"), (2, 5, 3, rat(51, 30, 0)), (3, 2, 2, b"W\0"), (4, 5, 3, rat(0, 7, 30))])
