"""A page as it is published: what a reader sees, hears and prints in fewer letters."""

from __future__ import annotations

from functools import lru_cache

from build_tools.building.finishing.once import once
from build_tools.building.finishing.short_html import short_html
from build_tools.building.finishing.short_paths import with_short_paths
from build_tools.building.finishing.strokes import with_stroke_classes


def smaller(html: str) -> str:
    """The page `html`, the same in every browser and on paper, in fewer letters."""
    return once(with_stroke_classes(with_short_paths(html)))


@lru_cache(maxsize=32)
def as_published(html: str) -> bytes:
    """The file of a page that nothing more is made from; most of the bank's stay as they are."""
    return short_html(smaller(html)).encode()
