"""Photographs lose what they carry unseen, and look the same to another reader (Pillow)."""

from __future__ import annotations

import io
import struct
import zlib
from collections.abc import Callable
from functools import cache

import pytest
from PIL import Image, ImageChops, ImageCms, ImageOps, ImageSequence, ImageStat, PngImagePlugin

from build_tools.pictures.limits import MOST_PIECES, MOST_POINTS
from build_tools.pictures.publishable import cleaned
from build_tools.pictures.trouble import PictureError

PLACE = b"fifty degrees north"
EXIF_ORIENTATION, EXIF_MAKER = 0x0112, 0x010F


def drawn(mode: str = "RGB") -> Image.Image:
    """Sixty by forty points of many colours."""
    wide = Image.linear_gradient("L").resize((60, 40))
    tall = wide.transpose(Image.Transpose.FLIP_TOP_BOTTOM)
    grey = Image.radial_gradient("L").resize((60, 40))
    return Image.merge("RGBA", (wide, tall, grey, grey)).convert(mode)


def exif(orientation: int = 1) -> Image.Exif:
    found = Image.Exif()
    found[EXIF_MAKER] = PLACE.decode()
    found[EXIF_ORIENTATION] = orientation
    return found


def saved(kind: str, mode: str = "RGB", **options: object) -> bytes:
    made = io.BytesIO()
    drawn(mode).save(made, kind, **options)
    return made.getvalue()


@cache
def icc() -> bytes:
    """A profile; one that is made later says so, to the second."""
    return ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()


def png_text() -> PngImagePlugin.PngInfo:
    told = PngImagePlugin.PngInfo()
    told.add_text("Comment", PLACE.decode())
    told.add_itxt("XML:com.adobe.xmp", PLACE.decode())
    return told


def with_time(png: bytes) -> bytes:
    """A PNG that also says when it was changed, and has a stranger's words at its end."""
    body = struct.pack(">HBBBBB", 2026, 1, 2, 3, 4, 5)
    chunk = struct.pack(">I", 7) + b"tIME" + body + struct.pack(">I", zlib.crc32(b"tIME" + body))
    return png[:33] + chunk + png[33:] + PLACE


HIDING: dict[str, Callable[[], bytes]] = {
    "plain.jpg": lambda: saved("JPEG", exif=exif(), comment=PLACE, icc_profile=icc()),
    "in-steps.jpg": lambda: saved("JPEG", exif=exif(), progressive=True, xmp=PLACE),
    "print-colours.jpg": lambda: saved("JPEG", "CMYK", comment=PLACE),
    "grey.jpg": lambda: saved("JPEG", "L", comment=PLACE),
    "restarts.jpg": lambda: saved("JPEG", comment=PLACE, restart_marker_blocks=2) + PLACE,
    "plain.png": lambda: with_time(saved("PNG", exif=exif(), pnginfo=png_text())),
    "clear.png": lambda: saved("PNG", "RGBA", pnginfo=png_text(), icc_profile=icc()),
    "few-colours.png": lambda: saved("PNG", "P", pnginfo=png_text(), transparency=3),
    "plain.webp": lambda: saved("WEBP", exif=exif(), xmp=PLACE, icc_profile=icc()) + PLACE,
    "exact.webp": lambda: saved("WEBP", "RGBA", exif=exif(), xmp=PLACE, lossless=True),
}


@pytest.mark.parametrize("name", HIDING)
def test_what_is_hidden_goes_and_what_is_seen_stays(name: str) -> None:
    data = HIDING[name]()
    assert PLACE in data
    clean = cleaned(name, data)
    assert PLACE not in clean
    before, after = Image.open(io.BytesIO(data)), Image.open(io.BytesIO(clean))
    assert (after.mode, after.size) == (before.mode, before.size)
    assert after.info.get("icc_profile") == before.info.get("icc_profile")
    assert after.info.get("transparency") == before.info.get("transparency")
    assert ImageChops.difference(before, after).getbbox(alpha_only=False) is None
    assert dict(after.getexif()) == {}
    assert not {"exif", "xmp", "comment", "Comment", "XML:com.adobe.xmp"} & after.info.keys()
    assert cleaned(name, clean) == clean


def with_words_in_frames(webp: bytes) -> bytes:
    """A moving WebP picture, each of whose frames holds a chunk that no reader knows."""
    hidden = b"note" + struct.pack("<I", len(PLACE)) + PLACE + b"\0" * (len(PLACE) % 2)
    made, at = b"", 12
    while at < len(webp):
        size = struct.unpack("<I", webp[at + 4 : at + 8])[0]
        after = at + 8 + size + size % 2
        chunk = webp[at:after]
        if chunk[:4] == b"ANMF":
            chunk = b"ANMF" + struct.pack("<I", size + size % 2 + len(hidden)) + chunk[8:] + hidden
        made, at = made + chunk, after
    return b"RIFF" + struct.pack("<I", len(made) + 4) + b"WEBP" + made


def test_a_moving_picture_keeps_its_frames_and_loses_what_is_hidden_in_them() -> None:
    """The frame's layout is that of RFC 9649, section 2.7.1.1."""
    frames = [drawn(), drawn().transpose(Image.Transpose.ROTATE_180), drawn()]
    made = io.BytesIO()
    frames[0].save(made, "WEBP", save_all=True, append_images=frames[1:], duration=400)
    plain = made.getvalue()
    data = with_words_in_frames(plain)
    assert data.count(PLACE) == len(frames)
    clean = cleaned("moving.webp", data)
    assert PLACE not in clean
    assert cleaned("moving.webp", clean) == clean == cleaned("moving.webp", plain)
    assert shown(clean) == shown(plain)
    assert len(shown(clean)) == len(frames)


def shown(webp: bytes) -> list[bytes]:
    """The points of each frame, as another reader shows them."""
    picture = Image.open(io.BytesIO(webp))
    return [frame.convert("RGB").tobytes() for frame in ImageSequence.Iterator(picture)]


@pytest.mark.parametrize("orientation", range(1, 9))
@pytest.mark.parametrize(("kind", "ending"), [("JPEG", "jpg"), ("PNG", "png"), ("WEBP", "webp")])
def test_a_photograph_that_lies_on_its_side_is_turned_upright(
    kind: str, ending: str, orientation: int
) -> None:
    """Exif 2.32, 4.6.4: what orientation says; Pillow turns the one that still says so."""
    data = saved(kind, exif=exif(orientation), icc_profile=icc())
    name = f"a.{ending}"
    clean = cleaned(name, data)
    wanted = ImageOps.exif_transpose(Image.open(io.BytesIO(data))).convert("RGB")
    found = Image.open(io.BytesIO(clean))
    assert found.size == wanted.size
    assert PLACE not in clean
    assert dict(found.getexif()) == {}
    assert found.info.get("icc_profile") == icc()
    off = ImageStat.Stat(ImageChops.difference(found.convert("RGB"), wanted)).mean
    assert max(off) < (0.01 if kind == "PNG" else 4), off
    assert cleaned(name, clean) == clean


@pytest.mark.parametrize("kind", ["PNG", "WEBP"])
def test_a_picture_that_flashes_is_refused(kind: str) -> None:
    """Web Content Accessibility Guidelines 2.2, 2.3.1: three flashes a second at most."""
    made = io.BytesIO()
    frames = [Image.new("RGB", (60, 40), colour) for colour in ("red", "white", "red")]
    frames[0].save(made, kind, save_all=True, append_images=frames[1:], duration=[400, 50, 400])
    with pytest.raises(PictureError, match="flashes can bring on a seizure"):
        cleaned(f"a.{kind.lower()}", made.getvalue())


@pytest.mark.parametrize("marker", [b"\xff\xc3", b"\xff\xc9", b"\xff\xca"])
def test_a_jpeg_that_browsers_do_not_show_is_refused(marker: bytes) -> None:
    with pytest.raises(PictureError, match="browsers do not show"):
        cleaned("a.jpg", saved("JPEG").replace(b"\xff\xc0", marker, 1))


def test_a_moving_picture_on_its_side_is_refused() -> None:
    made = io.BytesIO()
    frames = [drawn(), drawn().transpose(Image.Transpose.ROTATE_180)]
    frames[0].save(
        made, "WEBP", save_all=True, append_images=frames[1:], exif=exif(6), duration=400
    )
    with pytest.raises(PictureError, match="moves and lies on its side"):
        cleaned("a.webp", made.getvalue())


@pytest.mark.parametrize("name", HIDING)
def test_a_picture_cut_anywhere_is_refused_in_words(name: str) -> None:
    clean = cleaned(name, HIDING[name]())
    for length in (*range(0, 80), *range(80, len(clean) - 1, 7)):
        with pytest.raises(PictureError):
            cleaned(name, clean[:length])


@pytest.mark.parametrize("name", ["a.jpg", "a.png", "a.webp", "a.svg"])
def test_a_picture_of_another_kind_than_its_name_is_refused(name: str) -> None:
    with pytest.raises(PictureError, match="though its name ends in"):
        cleaned(name, b"GIF89a plain words")


def chunk(kind: bytes, body: bytes) -> bytes:
    told = zlib.crc32(kind + body)
    return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", told)


def png(width: int, height: int, rows: bytes) -> bytes:
    """A PNG of grey points that says how large it is, with `rows` as its points."""
    head = chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0))
    end = chunk(b"IEND", b"")
    return b"\x89PNG\r\n\x1a\n" + head + chunk(b"IDAT", zlib.compress(rows)) + end


def webp(body: bytes) -> bytes:
    return b"RIFF" + struct.pack("<I", len(body) + 4) + b"WEBP" + body


def headed(
    colour: int = 0, packing: int = 0, longer: bytes = b"", before: bytes = b"", after: bytes = b""
) -> bytes:
    """The small sound PNG with another head, and chunks around it."""
    head = struct.pack(">IIBBBBB", 2, 2, 8, colour, packing, 0, 0) + longer
    return SOUND_PNG[:8] + before + chunk(b"IHDR", head) + after + SOUND_PNG[33:]


SOUND_PNG = png(2, 2, b"\0ab" * 2)
BELIEVED: dict[str, tuple[str, bytes]] = {
    "a PNG without its head": ("a.png", SOUND_PNG[:8] + SOUND_PNG[33:]),
    "a PNG without points": ("a.png", SOUND_PNG[:33] + chunk(b"IEND", b"")),
    "a PNG with too few points": ("a.png", png(20, 20, b"\0ab")),
    "a PNG wider than there are numbers": ("a.png", png(2**31, 1, b"")),
    "a PNG of no width": ("a.png", png(0, 4, b"\0" * 4)),
    "a PNG whose points are no such thing": (
        "a.png",
        SOUND_PNG[:33] + chunk(b"IDAT", b"not packed") + chunk(b"IEND", b""),
    ),
    "a PNG with more points than it says": ("a.png", png(2, 2, b"\0ab" * 2 + b"a")),
    "a PNG that is very long": ("a.png", png(1, 20_001, b"\0a" * 20_001)),
    "a PNG without its colours": ("a.png", headed(colour=3)),
    "a PNG with half a colour": ("a.png", headed(colour=3, after=chunk(b"PLTE", b"ab"))),
    "a PNG packed otherwise": ("a.png", headed(packing=9)),
    "a PNG with a long head": ("a.png", headed(longer=b"\0")),
    "a PNG whose head is second": ("a.png", headed(before=chunk(b"gAMA", b"\0\0\0\1"))),
    "a PNG with a part that nobody knows": ("a.png", headed(after=chunk(b"EVIL", b""))),
    "an empty WebP": ("a.webp", webp(b"")),
    "a WebP that only says how large it is": (
        "a.webp",
        webp(b"VP8X" + struct.pack("<IIBBBBBB", 10, 0, 9, 0, 0, 9, 0, 0)),
    ),
    "a WebP of no picture": ("a.webp", webp(b"VP8 " + struct.pack("<I", 8) + b"\0" * 8)),
    "a JPEG of two markers": ("a.jpg", b"\xff\xd8\xff\xd9"),
    "a JPEG of bare markers": ("a.jpg", b"\xff\xd8" + b"\xff\xd0" * 1000 + b"\xff\xd9"),
    "a JPEG of starts": ("a.jpg", b"\xff\xd8" * 1000 + b"\xff\xd9"),
    "a JPEG of empty segments": (
        "a.jpg",
        b"\xff\xd8" + b"\xff\xfe\0\x02" * (MOST_PIECES + 1) + b"\xff\xd9",
    ),
}


def test_the_png_made_here_is_sound() -> None:
    assert cleaned("a.png", SOUND_PNG) == SOUND_PNG


@pytest.mark.parametrize("case", BELIEVED)
def test_what_no_reader_could_see_is_not_believed(case: str) -> None:
    name, data = BELIEVED[case]
    with pytest.raises(PictureError, match=r"damaged|points|not a"):
        cleaned(name, data)


def test_a_picture_of_too_many_points_is_refused_before_they_are_read() -> None:
    rows = zlib.compress(b"\0" * 1000)
    side = int(MOST_POINTS**0.5) + 1
    head = chunk(b"IHDR", struct.pack(">IIBBBBB", side, side, 8, 6, 0, 0, 0))
    data = b"\x89PNG\r\n\x1a\n" + head + chunk(b"IDAT", rows) + chunk(b"IEND", b"")
    with pytest.raises(PictureError, match="12,600,000 together: make it smaller"):
        cleaned("a.png", data)


def test_the_frames_of_a_moving_picture_count_together() -> None:
    made = io.BytesIO()
    frames = [Image.new("L", (2000, 1400), shade) for shade in range(0, 250, 50)]
    frames[0].save(made, "PNG", save_all=True, append_images=frames[1:])
    with pytest.raises(PictureError, match="in 5 frames"):
        cleaned("a.png", made.getvalue())


def test_a_jpeg_that_draws_over_itself_without_end_is_refused() -> None:
    plain = cleaned("a.jpg", saved("JPEG", progressive=True))
    at = plain.rindex(b"\xff\xda")
    with pytest.raises(PictureError, match="draws over itself"):
        cleaned("a.jpg", plain[:at] + plain[at:-2] * 40 + plain[-2:])
