"""GIF and WebP pictures that are broken, huge, or carry what nobody sees, and odd endings."""

# fmt: off

from __future__ import annotations

import gzip
import struct
from typing import Any

from tests.packs.attacks.drawings_that_act import svg
from tests.packs.attacks.packed import Pack
from tests.packs.attacks.photographs import BOMB, JPEG_BASE, LEAK, WEBP_LOSSY, picture
from tests.packs.attacks.pngs import XMP, exif_gps, png, tiff
from tests.packs.attacks.register import Rows, recipe
from tests.packs.attacks.zips import Entry, rng, write_zip


def lzw_flat(n: Any, value: Any = 0, bits: Any = 2) -> Any:
    """n pixels of one value, the code table cleared often, so that each code has bits+1 bits."""
    clear, end, width = 1 << bits, (1 << bits) + 1, bits + 1
    out, acc, have = bytearray(), 0, 0

    def put(code: Any) -> None:
        nonlocal acc, have
        acc |= code << have
        have += width
        while have >= 8:
            out.append(acc & 255)
            acc >>= 8
            have -= 8
    for i in range(n):
        if i % ((1 << bits) - 2) == 0:
            put(clear)
        put(value)
    put(end)
    if have:
        out.append(acc & 255)
    return bytes([bits]) + b"".join(bytes([len(out[i:i + 255])]) + out[i:i + 255] for i in range(0,
        len(out), 255)) + b"\0"


def gif(frames: Any = 1, w: Any = 32, h: Any = 20, canvas: Any = None, extra: Any = b"", tail: Any =
    b"", delay: Any = 1, size: Any = None, data: Any = None, loop: Any = True, disposal: Any =
    1) -> Any:
    cw, ch = canvas or (w, h)
    out = b"GIF89a" + struct.pack("<HHBBB", cw, ch, 0x81, 0,
        0) + b"\xff\0\0\xff\xff\xff\0\0\xff\0\0\0"
    if loop:
        out += b"!\xff\x0bNETSCAPE2.0\3\1\0\0\0"
    out += extra
    flat = [lzw_flat(w * h, v) for v in (0, 1)]
    fw, fh = size or (w, h)
    body = []
    for i in range(frames):
        body.append(b"!\xf9\4" + bytes([disposal << 2]) + struct.pack("<H", delay) + b"\0\0" + b","
            + struct.pack("<HHHHB", 0, 0, fw, fh, 0) + (data or flat[i % 2]))
    return out + b"".join(body) + b";" + tail


PICTURES_2: Rows = (("canvas-65535", "a canvas of 65,535 by 65,535, a frame of 32 by 20", "refuse",
    lambda: gif(canvas=(65535, 65535))),
    ("canvas-zero", "a canvas of 0 by 0", "refuse", lambda: gif(canvas=(0, 0))),
    ("frame-larger", "a frame of 65,535 by 65,535 on a canvas of 32 by 20", "refuse", lambda: gif(
    size=(65535, 65535))),
    ("frames-20000", "20,000 frames of a canvas of 1,000 by 1,000", "refuse", lambda: gif(20_000,
    canvas=(1000, 1000))),
    ("frames-5000-huge-canvas", "5,000 frames on 20,000 by 20,000, each to be disposed of",
    "refuse", lambda: gif(5000, canvas=(20_000, 20_000), disposal=2)),
    ("flash", "flashes red and white 50 times a second", "refuse", lambda: gif(2, 32, 20, delay=2)),
    ("animated-calm", "two frames, three seconds each", "harmless", lambda: gif(2, delay=300)),
    ("single", "one frame: lawful", "harmless", lambda: gif(loop=False)),
    ("true-1500", "a true 1,500 by 1,500 frame", "harmless", lambda: gif(1, 1500, 1500,
    loop=False)),
    ("no-frame", "no frame", "refuse", lambda: gif(0)),
    ("cut", "cut in the middle", "refuse", lambda: gif()[:60]),
    ("no-trailer", "no trailer", "refuse", lambda: gif()[:-1]),
    ("lzw-short", "an LZW stream that ends at once", "refuse", lambda: gif(data=b"\2\1\x2c\0")),
    ("lzw-bits-255", "an LZW code size of 255", "refuse", lambda: gif(data=b"\xff\1\0\0")),
    ("lzw-garbage", "LZW codes that do not exist", "refuse", lambda: gif(data=b"\2\x10" + b"\xff" *
    16 + b"\0")),
    ("blocks-3mb", "a comment of 3 MB in blocks of one byte", "harmless", lambda: gif(extra=b"!\xfe"
    + b"\1a" * 1_500_000 + b"\0")),
    ("extensions-300000", "300,000 empty extensions", "harmless", lambda: gif(extra=b"!\xfe\0" *
    300_000)),
    ("comment-personal", "a comment with a name and a place", "harmless", lambda: gif(
    extra=b"!\xfe\x16Ann Body 51.5 N 0.1 W\n\0")),
    ("xmp", "XMP with a place", "harmless", lambda: gif(extra=b"!\xff\x0bXMP DataXMP" + XMP + b"\1"
    + bytes(range(255, -1, -1)) + b"\0")),
    ("script", "a comment with a script", "harmless", lambda: gif(
    extra=b"!\xfe\x1f<script>alert(document)</script\0")),
    ("polyglot-js", "GIF89a/*…*/=alert(1): a script that is a picture", "refuse", lambda:
    b"GIF89a/*" + bytes(40) + b"*/=1;alert(1);" ),
    ("appended", "a zip after the trailer", "refuse", lambda: gif(tail=write_zip([Entry("evil.exe",
    b"MZ")]))),
    ("gif87-animated", "GIF87a with extensions", "harmless", lambda: b"GIF87a" + gif(2)[6:]),
    ("plain-text", "a plain text extension", "harmless", lambda: gif(extra=b"!\x01\x0c" + bytes(12)
    + b"\4text\0")),
    ("palette-none", "no palette at all", "harmless", lambda: b"GIF89a" + struct.pack("<HHBBB", 8,
    8, 0, 0, 0) + b"," + struct.pack("<HHHHB", 0, 0, 8, 8, 0) + lzw_flat(64) + b";"),
    )
for _n, _what, _exp, _d in PICTURES_2:
    picture("gif-" + _n, "GIF: " + _what, _exp, _d, ".gif", LEAK if "personal" in _n or "xmp" in _n
        else BOMB if _exp == "harmless" else "")


def riff(*chunks: Any, size: Any = None, kind: Any = b"WEBP") -> Any:
    body = kind + b"".join(k + struct.pack("<I", len(d) if one is None else one) + d + b"\0" * (len(
        d) & 1) for k, d, one in (((*c, None))[:3] for c in chunks))
    return b"RIFF" + struct.pack("<I", len(body) if size is None else size) + body


def vp8l_flat(w: Any, h: Any) -> Any:
    """A true lossless picture of one colour: 16,384 by 16,384 takes 30 bytes."""
    bits: list[int] = []

    def put(v: Any, n: Any) -> None:
        bits.extend((v >> i) & 1 for i in range(n))
    for value, width in ((w - 1, 14), (h - 1, 14), (0, 1), (0, 3), (0, 1), (0, 1), (0, 1)):
        put(value, width)
    for s in (120, 60, 30, 255, 0):
        for value, width in ((1, 1), (0, 1), (1, 1), (s, 8)):
            put(value, width)
    bits += [0] * (-len(bits) % 8 + 32)
    return b"\x2f" + bytes(sum(b << i for i, b in enumerate(bits[k:k + 8])) for k in range(0, len(
        bits), 8))


def vp8x(flags: Any, w: Any, h: Any) -> Any:
    return b"VP8X", bytes([flags, 0, 0, 0]) + (w - 1).to_bytes(3, "little") + (h - 1).to_bytes(3,
        "little")


def anmf(w: Any, h: Any, ms: Any = 20) -> Any:
    d = vp8l_flat(w, h)
    return b"ANMF", bytes(6) + (w - 1).to_bytes(3, "little") + (h - 1).to_bytes(3,
        "little") + ms.to_bytes(3, "little") + b"\0" + b"VP8L" + struct.pack("<I", len(
        d)) + d + b"\0" * (len(d) & 1)


def vp8(b: Any = None) -> Any:
    b = b or WEBP_LOSSY
    at = b.index(b"VP8 ")
    n = struct.unpack("<I", b[at + 4:at + 8])[0]
    return b[at + 8:at + 8 + n]


PICTURES_1: Rows = (("bomb-lossless-16384",
    "a true picture of 16,384 by 16,384 in 40 bytes (1 GiB of pixels)", "refuse", lambda: riff((
    b"VP8L", vp8l_flat(16384, 16384)))),
    ("bomb-lossless-12000", "a true picture of 12,000 by 12,000 in 40 bytes", "refuse", lambda:
    riff((b"VP8L", vp8l_flat(12_000, 12_000)))),
    ("bomb-lossless-9400", "a true picture of 9,400 by 9,400, below Pillow's warning", "refuse",
    lambda: riff((b"VP8L", vp8l_flat(9400, 9400)))),
    ("lossless-flat", "a true picture of 96 by 60, one colour: lawful", "harmless", lambda: riff((
    b"VP8L", vp8l_flat(96, 60)))),
    ("bomb-animation", "1,000 frames of 16,000 by 16,000", "refuse", lambda: riff(vp8x(2, 16000,
    16000), (b"ANIM", bytes(6)), *[anmf(16000, 16000)] * 1000)),
    ("animation-30000", "30,000 small frames without end", "refuse", lambda: riff(vp8x(2, 96, 60), (
    b"ANIM", bytes(6)), *[anmf(96, 60)] * 30_000)),
    ("canvas-2-24", "a canvas of 2^24 by 2^24 with a small picture", "refuse", lambda: riff(vp8x(0,
    1 << 24, 1 << 24), (b"VP8L", vp8l_flat(96, 60)))),
    ("canvas-smaller", "a canvas of 1 by 1, the picture 16,384 by 16,384", "refuse", lambda: riff(
    vp8x(0, 1, 1), (b"VP8L", vp8l_flat(16384, 16384)))),
    ("lossy-lying-16383", "lossy: says 16,383 by 16,383, holds 96 by 60", "refuse", lambda: riff((
    b"VP8 ", vp8()[:6] + struct.pack("<HH", 16383, 16383) + vp8()[10:]))),
    ("lossy-zero", "lossy: 0 by 0", "refuse", lambda: riff((b"VP8 ", vp8()[:6] + bytes(4) + vp8()[
    10:]))),
    ("header-only", "RIFF, WEBP and nothing", "refuse", lambda: riff()),
    ("vp8-empty", "an empty VP8 chunk", "refuse", lambda: riff((b"VP8 ", b""))),
    ("vp8x-only", "VP8X and no picture", "refuse", lambda: riff(vp8x(0, 96, 60))),
    ("vp8x-twice", "two VP8X of different size", "refuse", lambda: riff(vp8x(0, 96, 60), vp8x(0,
    16384, 16384), (b"VP8L", vp8l_flat(96, 60)))),
    ("cut", "cut in the middle", "refuse", lambda: WEBP_LOSSY[:len(WEBP_LOSSY) // 2]),
    ("not-a-key-frame", "a frame that is no key frame", "refuse", lambda: riff((b"VP8 ", bytes([vp8(
    )[0] | 1]) + vp8()[1:]))),
    ("start-code-wrong", "a wrong start code", "refuse", lambda: riff((b"VP8 ", vp8()[:3] + b"abc" +
    vp8()[6:]))),
    ("size-lies", "RIFF says 4 GB", "refuse", lambda: riff((b"VP8L", vp8l_flat(96, 60)),
    size=0xFFFFFFFE)),
    ("size-zero", "RIFF says 0 bytes", "refuse", lambda: riff((b"VP8L", vp8l_flat(96, 60)),
    size=0)),
    ("chunk-past-end", "a chunk that says 2^32-1 bytes", "refuse", lambda: riff((b"VP8L", vp8l_flat(
    96, 60), 0xFFFFFFFF))),
    ("chunks-500000", "500,000 empty unknown chunks", "harmless", lambda: riff(vp8x(0, 96, 60), (
    b"VP8L", vp8l_flat(96, 60)), *[(b"abcd", b"")] * 500_000)),
    ("exif-gps", "EXIF with a place", "harmless", lambda: riff(vp8x(8, 96, 60), (b"VP8L", vp8l_flat(
    96, 60)), (b"EXIF", exif_gps()))),
    ("exif-no-flag", "EXIF with a place, not announced in VP8X", "harmless", lambda: riff(vp8x(0,
    96, 60), (b"VP8L", vp8l_flat(96, 60)), (b"EXIF", exif_gps()))),
    ("exif-no-vp8x", "EXIF after a simple picture without VP8X", "harmless", lambda: riff((b"VP8L",
    vp8l_flat(96, 60)), (b"EXIF", exif_gps()))),
    ("exif-first", "EXIF before the picture", "harmless", lambda: riff(vp8x(8, 96, 60), (b"EXIF",
    exif_gps()), (b"VP8L", vp8l_flat(96, 60)))),
    ("exif-twice-and-prefix", "two EXIF chunks, one with 'Exif' before its TIFF", "harmless",
    lambda: riff(vp8x(8, 96, 60), (b"VP8L", vp8l_flat(96, 60)), (b"EXIF", tiff([])), (b"EXIF",
    b"Exif\0\0" + exif_gps()))),
    ("xmp", "XMP with a place and a name", "harmless", lambda: riff(vp8x(4, 96, 60), (b"VP8L",
    vp8l_flat(96, 60)), (b"XMP ", XMP))),
    ("xmp-odd-name", "XMP in 'XMP\\0' (written so by some tools)", "harmless", lambda: riff(vp8x(4,
    96, 60), (b"VP8L", vp8l_flat(96, 60)), (b"XMP\0", XMP))),
    ("unknown-personal", "a name in an unknown chunk", "harmless", lambda: riff(vp8x(0, 96, 60), (
    b"VP8L", vp8l_flat(96, 60)), (b"NAME", b"Ann Body, 51.5 N 0.1 W"))),
    ("iccp-garbage", "a colour profile of rubbish", "harmless", lambda: riff(vp8x(32, 96, 60), (
    b"ICCP", b"rubbish" * 9), (b"VP8L", vp8l_flat(96, 60)))),
    ("after-riff", "a place after the RIFF's end", "refuse", lambda: WEBP_LOSSY + b"EXIF" +
    struct.pack("<I", len(exif_gps())) + exif_gps()),
    ("appended-zip", "a zip after the RIFF's end", "refuse", lambda: WEBP_LOSSY + write_zip([Entry(
    "evil.exe", b"MZ")])),
    ("alpha-bomb", "ALPH of another size than the picture", "harmless", lambda: riff(vp8x(16, 96,
    60), (b"ALPH", b"\1" + vp8l_flat(16384, 16384)[5:]), (b"VP8 ", vp8()))),
    ("huffman-overflow",
    "a lossless picture whose Huffman tables are overfull (CVE-2023-4863's shape)", "refuse",
    lambda: riff((b"VP8L", b"\x2f" + struct.pack("<I", 95 | 59 << 14) + b"\0" + rng(
    "vp8l").randbytes(900)))),
    ("is-wav", "a WAVE sound called .webp", "refuse", lambda: riff((b"fmt ", bytes(16)), (b"data",
    bytes(100)), kind=b"WAVE")),
    ("is-avif", "AVIF called .webp", "refuse", lambda: b"\0\0\0\x1cftypavif\0\0\0\0avifmif1" +
    bytes(300)),
    )
for _n, _what, _exp, _d in PICTURES_1:
    picture("webp-" + _n, "WebP: " + _what, _exp, _d, ".webp", LEAK if any(w in _n for w in ("exif",
        "xmp", "personal")) else BOMB if _exp == "harmless" else "")


ENDINGS_1: Rows = (("upper", ".PNG", lambda: png(), "harmless", None),
    ("jpe", ".jpe", lambda: JPEG_BASE, "harmless", "image/jpeg"),
    ("none", "", lambda: png(), "refuse", None),
    ("bmp", ".bmp", lambda: b"BM" + bytes(90), "refuse", None),
    ("tiff", ".tiff", lambda: exif_gps(), "refuse", None),
    ("avif", ".avif", lambda: b"\0\0\0\x1cftypavif\0\0\0\0avifmif1" + bytes(300), "refuse", None),
    ("ico", ".ico", lambda: bytes(40), "refuse", None),
    ("html", ".png.html", lambda: png(), "refuse", None),
    ("js", ".js", lambda: b"alert(1)", "refuse", None),
    ("mp3", ".mp3", lambda: b"ID3\4\0\0\0\0\0\0" + b"\xff\xfb\x90\0" * 100, "harmless",
    "audio/mpeg"),
    ("mp4", ".mp4", lambda: b"\0\0\0\x18ftypmp42" + bytes(900), "harmless", "video/mp4"),
    ("pdf", ".pdf", lambda:
    b"%PDF-1.7\n1 0 obj<</OpenAction<</S/JavaScript/JS(app.alert(1))>>>>endobj\n", "refuse",
    "application/pdf"),
    ("exe", ".exe", lambda: b"MZ" + bytes(300), "refuse", None),
    ("svgz", ".svgz", lambda: gzip.compress(svg().encode(), mtime=0), "refuse", None),
    ("xhtml", ".xhtml", lambda:
    b"<html xmlns='http://www.w3.org/1999/xhtml'><script>alert(1)</script></html>", "refuse", None),
    ("txt", ".txt", lambda: b"text", "refuse", None),
    ("docm", ".docm", lambda: write_zip([Entry("word/vbaProject.bin", b"x")]), "refuse", None)
    )
for _n, _end, _d, _exp, _mime in ENDINGS_1:
    picture("ending-" + _n, f"the shown file ends in {_end!r}", _exp, _d, _end,
        "a file that no browser shows believed, or run", _mime)
picture("ending-twins",
    "low-tide.png and low-tide.jpg of the same stem: made into one name on the site?", "harmless",
    lambda: png(), ".png", "one shown in place of the other")


def _twins(p: Pack) -> Any:
    d = p.drawing()
    return p.put(d[:-4] + ".jpg", JPEG_BASE).put(d[:-4] + ".SVG", svg())


recipe("ending-twins-of-a-stem", "pictures",
    "low-tide.svg, low-tide.jpg and low-tide.SVG: made into one name somewhere?", "refuse", _twins)
