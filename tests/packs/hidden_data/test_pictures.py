"""Photographs lose what they carry unseen, and look the same to another reader (Pillow)."""

from __future__ import annotations

import io
import struct
import zlib
from collections.abc import Callable

import pytest
from PIL import Image, ImageChops, ImageCms, ImageSequence, PngImagePlugin

from build_tools.packs.hidden_data import PictureError, cleaned

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


def icc() -> bytes:
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
    frames[0].save(made, "WEBP", save_all=True, append_images=frames[1:], duration=90)
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


@pytest.mark.parametrize(
    ("name", "kind"), [("a.jpg", "JPEG"), ("a.png", "PNG"), ("a.webp", "WEBP")]
)
def test_a_picture_that_only_hidden_data_turns_upright_is_refused(name: str, kind: str) -> None:
    with pytest.raises(PictureError, match="upright"):
        cleaned(name, saved(kind, exif=exif(6)))


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
