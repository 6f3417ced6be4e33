"""Photographs are published in 300 kB at most and look the same to another reader (Pillow)."""

from __future__ import annotations

import io
import random
from functools import cache

import pytest
from PIL import Image, ImageChops, ImageFilter, ImageStat

from build_tools.pictures.limits import MOST_PHOTOGRAPH
from build_tools.pictures.publishable import cleaned, fit_for_a_page

KINDS = {"jpg": "JPEG", "png": "PNG", "webp": "WEBP"}
LONGEST = 1600
ALIKE = 12.0
"""Of 255: how far the mean of a point may be off, once both are as small as a stamp."""


@cache
def scene(mode: str = "RGB") -> Image.Image:
    """A photograph of 1,720 by 1,290 points, as rich in detail as leaves or gravel."""
    noise = Image.frombytes("RGB", (860, 645), random.Random(7).randbytes(3 * 860 * 645))
    soft = noise.filter(ImageFilter.GaussianBlur(1.2)).resize((1720, 1290))
    sky = Image.linear_gradient("L").resize(soft.size)
    return Image.composite(soft, Image.new("RGB", soft.size, "navy"), sky).convert(mode)


@cache
def saved(kind: str, mode: str = "RGB", orientation: int = 1) -> bytes:
    made, told = io.BytesIO(), Image.Exif()
    told[0x0112] = orientation
    scene(mode).save(made, KINDS[kind], exif=told, quality=95, compress_level=1)
    return made.getvalue()


def read(data: bytes) -> Image.Image:
    picture = Image.open(io.BytesIO(data))
    picture.load()
    return picture


def off(one: Image.Image, other: Image.Image) -> float:
    stamp = (40, 30)
    small = [picture.convert("RGB").resize(stamp) for picture in (one, other)]
    return max(ImageStat.Stat(ImageChops.difference(*small)).mean)


@pytest.mark.parametrize("kind", KINDS)
def test_a_large_photograph_is_made_light_and_looks_the_same(kind: str) -> None:
    large = saved(kind)
    assert len(large) > MOST_PHOTOGRAPH
    small = cleaned(f"photo.{kind}", large)
    assert len(small) <= MOST_PHOTOGRAPH
    seen = read(small)
    assert seen.format == KINDS[kind]
    assert max(seen.size) <= LONGEST
    assert abs(seen.width / seen.height - 4 / 3) < 0.01
    assert off(seen, scene()) < ALIKE
    assert cleaned(f"photo.{kind}", small) == small


def test_the_comparison_would_see_another_picture() -> None:
    assert off(scene(), scene().transpose(Image.Transpose.ROTATE_180)) > ALIKE


def test_one_on_its_side_is_turned_and_then_made_light() -> None:
    fit = fit_for_a_page("jpg", saved("jpg", orientation=6))
    assert (fit.turned, fit.smaller, fit.bared) == (True, True, True)
    upright = read(fit.data)
    assert upright.height > upright.width
    assert off(upright.transpose(Image.Transpose.ROTATE_90), scene()) < ALIKE


def test_a_see_through_picture_stays_see_through() -> None:
    made = io.BytesIO()
    picture = scene("RGBA").crop((0, 0, 680, 510))
    picture.putalpha(Image.linear_gradient("L").resize(picture.size))
    picture.save(made, "PNG", compress_level=1)
    assert len(made.getvalue()) > MOST_PHOTOGRAPH
    assert read(cleaned("photo.png", made.getvalue())).has_transparency_data


def test_a_small_photograph_keeps_every_byte_that_is_seen() -> None:
    made = io.BytesIO()
    scene().resize((400, 300)).save(made, "JPEG", quality=90)
    assert len(made.getvalue()) < MOST_PHOTOGRAPH
    assert not fit_for_a_page("jpg", made.getvalue()).smaller


def test_a_moving_picture_is_not_touched() -> None:
    made = io.BytesIO()
    frames = [scene().crop((n, 0, 1200 + n, 900)) for n in range(0, 400, 100)]
    frames[0].save(made, "WEBP", save_all=True, append_images=frames[1:], duration=1000, quality=95)
    assert len(made.getvalue()) > MOST_PHOTOGRAPH
    assert getattr(read(cleaned("photo.webp", made.getvalue())), "n_frames", 1) == len(frames)
