"""Sound packs by the same writer, to be accepted: where one is refused, its kind proves nothing."""

from __future__ import annotations

from collections.abc import Mapping

from tests.packs.attacks.drawings_that_act import svg
from tests.packs.attacks.photographs import JPEG_BASE, JPEG_PROG, WEBP_LOSSLESS, WEBP_LOSSY
from tests.packs.attacks.pngs import png
from tests.packs.attacks.register import Maker
from tests.packs.attacks.zips import DEFLATED

CONTROLS: Mapping[str, Maker] = {
    "zipped by this writer": lambda p: p.done(),
    "deflated": lambda p: p.done(DEFLATED),
    "another edition": lambda p: p.set_edition("1.0.1"),
    "another title": lambda p: p.set_title("Another sound title"),
    "another publisher": lambda p: p.set_publisher("Another school"),
    "more notes": lambda p: p.notes("One more line for the teacher.\n", keep=True),
    "another drawing": lambda p: p.set_drawing(svg('<path d="M0 0L9 9" stroke="#123456"/>')),
    "a PNG": lambda p: p.set_picture(png(), ".png"),
    "a JPEG": lambda p: p.set_picture(JPEG_BASE, ".jpg"),
    "a progressive JPEG": lambda p: p.set_picture(JPEG_PROG, ".jpg"),
    "a lossy WebP": lambda p: p.set_picture(WEBP_LOSSY, ".webp"),
    "a lossless WebP": lambda p: p.set_picture(WEBP_LOSSLESS, ".webp"),
}
