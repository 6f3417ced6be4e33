"""A booklet that holds its lessons small: the page's script lays them out where it is opened.

The same lessons stand in full on their own pages, so without the script the booklet leads there.
They are deflated (RFC 1951) and written in letters (base64, RFC 4648), which every browser of the
last years reads without asking for another file.
"""

from __future__ import annotations

import base64
import re
import zlib
from collections.abc import Iterator
from itertools import zip_longest

_PLACE = re.compile(
    r'(<div class="?bound[^>]* data-bound="?([^" >]+)[^>]*>)(.*?)(?=<div class="?bound|</main>)',
    re.DOTALL,
)
_HELD = re.compile(r'<div data-packed="?([^" >]+)"? hidden></div>\n')
_SECTION = re.compile(r"(?=<section\b)|(?=<svg class=\"?sprite\b)|(?=<details class=\"?covers\b)")
_BETWEEN = "\0"


def packed(html: str) -> str:
    """The booklet `html`, its lessons bound in, with all of them deflated in one place."""
    lessons: list[str] = []

    def leave(found: re.Match[str]) -> str:
        inside, _, after = found[3].rpartition("</div>")
        lessons.append(inside)
        way = f'<p class="own-page"><a href="{found[2]}">This part on its own page</a></p>'
        return f"{found[1]}{way}</div>{after}"

    left = _PLACE.sub(leave, html)
    if not lessons:
        return html
    text = _BETWEEN.join(_section_by_section(lessons))
    squeezer = zlib.compressobj(9, zlib.DEFLATED, -zlib.MAX_WBITS)
    data = base64.b64encode(squeezer.compress(text.encode()) + squeezer.flush()).decode()
    return left.replace("</main>", f'<div data-packed="{data}" hidden></div>\n</main>', 1)


def _section_by_section(lessons: list[str]) -> Iterator[str]:
    """The first sections of all lessons, then the second ones: what is alike lies close together,
    where deflating finds it.
    """
    cut = [_SECTION.split(lesson) for lesson in lessons]
    for row in zip_longest(*cut, fillvalue=""):
        yield from row


def unpacked(html: str) -> str:
    """The booklet with its lessons laid out again, for whoever runs no script."""
    held = _HELD.search(html)
    if held is None:
        return html
    text = zlib.decompress(base64.b64decode(held[1]), -zlib.MAX_WBITS).decode()
    parts = text.split(_BETWEEN)
    many = len(_PLACE.findall(html))
    lessons = iter(["".join(parts[n::many]) for n in range(many)])

    def lay(found: re.Match[str]) -> str:
        return f"{found[1]}{next(lessons)}</div>{found[3].rpartition('</div>')[2]}"

    return _PLACE.sub(lay, _HELD.sub("", html))
