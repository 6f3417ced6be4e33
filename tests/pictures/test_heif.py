"""Photographs as telephones keep them become JPEG pictures, upright and bare, or are told of.

The files in `heic/` were made by libheif's encoder with x265, which is no part of this project:
red above on the left and blue below on the right, as they are seen. `sideways.heic` was told by
Exif that it lies on its side (orientation 6); `two.heic` holds a red picture and a green one.
"""

from __future__ import annotations

import io
import sys
from pathlib import Path

import pytest
from PIL import Image

from build_tools.packs.reading.walled import walled
from build_tools.pictures import heif
from build_tools.pictures.publishable import cleaned, fit_for_a_page
from build_tools.pictures.stripped import DAMAGED
from build_tools.pictures.trouble import PictureError
from build_tools.source.file_names import plain_picture_name

HERE = Path(__file__).with_name("heic")
SECRETS = (b"Morning class", b"Hall Street", b"Exif", b"xmp", b"ftyp")
RED, BLUE, WHITE = (254, 0, 0), (0, 0, 254), (255, 255, 255)


def seen(name: str) -> Image.Image:
    data = cleaned("media/a.jpg", (HERE / name).read_bytes())
    assert data[:2] == b"\xff\xd8"
    assert not [word for word in SECRETS if word in data]
    with Image.open(io.BytesIO(data)) as picture:
        assert not picture.getexif()
        assert picture.format == "JPEG"
        return picture.convert("RGB")


def near(found: object, wanted: tuple[int, int, int]) -> bool:
    assert isinstance(found, tuple)
    return all(abs(a - b) < 12 for a, b in zip(found, wanted, strict=True))


@pytest.mark.parametrize("name", ["plain.heic", "telephone.heic"])
def test_it_is_seen_as_it_was_taken(name: str) -> None:
    picture = seen(name)
    assert picture.size == (64, 48)
    assert near(picture.getpixel((4, 4)), RED)
    assert near(picture.getpixel((60, 44)), BLUE)
    assert near(picture.getpixel((60, 4)), WHITE)


def test_one_that_lies_on_its_side_is_turned_upright() -> None:
    picture = seen("sideways.heic")
    assert picture.size == (48, 64)
    assert near(picture.getpixel((44, 4)), RED)
    assert near(picture.getpixel((4, 60)), BLUE)


def test_of_two_pictures_the_first_is_shown() -> None:
    assert near(seen("two.heic").getpixel((9, 9)), RED)


def test_the_check_says_that_it_carried_something_unseen() -> None:
    fit = fit_for_a_page("jpg", (HERE / "telephone.heic").read_bytes())
    assert fit.bared
    assert not fit.smaller


@pytest.mark.parametrize("name", ["Pool.HEIC", "pool.heif", "POOL.jpg"])
def test_it_is_published_as_a_jpeg(name: str) -> None:
    assert plain_picture_name(name) == "pool.jpg"


def test_one_with_too_many_points_is_refused_before_any_is_read(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    import pi_heif

    def never(*_: object) -> None:
        raise AssertionError("its points were read")

    monkeypatch.setattr(pi_heif.HeifFile, "to_pillow", never)
    with pytest.raises(PictureError, match="5,000 by 4,000 points"):
        heif.as_jpeg((HERE / "too-large.heic").read_bytes())


@pytest.mark.parametrize("name", ["plain.heic", "telephone.heic", "two.heic"])
def test_one_that_was_cut_short_is_damaged_or_shown(name: str) -> None:
    whole = (HERE / name).read_bytes()
    said = {_cleaned_or_why(whole[:end]) for end in range(12, len(whole), 23)}
    assert said <= {"shown", DAMAGED}
    assert DAMAGED in said


def _cleaned_or_why(data: bytes) -> str:
    try:
        return "shown" if cleaned("media/a.jpg", data)[:2] == b"\xff\xd8" else "something else"
    except PictureError as error:
        return error.why


def test_where_it_cannot_be_read_the_author_is_told_how_to_save_it(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setitem(sys.modules, "pi_heif", None)
    with pytest.raises(PictureError, match=r"save it as a JPEG \(\.jpg\)"):
        heif.as_jpeg((HERE / "plain.heic").read_bytes())


def test_it_is_read_within_the_walls_of_what_strangers_send() -> None:
    data = walled(_cleaned, (HERE / "telephone.heic").read_bytes())
    assert isinstance(data, bytes)
    assert data[:2] == b"\xff\xd8"


def _cleaned(data: bytes) -> bytes:
    return cleaned("media/a.jpg", data)
