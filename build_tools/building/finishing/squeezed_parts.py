"""What only a page's script reads, held small in it: a booklet's lessons, and what is played.

The lessons of a booklet stand in full on their own pages, so without the script it leads there.
"""

from __future__ import annotations

import html as entities
import re

from build_tools.building.finishing.squeezed import squeezed, unsqueezed

_PLACE = re.compile(
    r'(<div class="?bound[^>]* data-bound="?([^" >]+)[^>]*>)(.*?)(?=<div class="?bound|</main>)',
    re.DOTALL,
)
_HELD = re.compile(r'<div data-packed=(?:"([^"]+)"|([^" >]+)) hidden></div>\n')
_PLAYED = re.compile(r""" data-dance=("[^"]+"|'[^']+')""")
_BETWEEN = "\0"


def packed(html: str) -> str:
    """The booklet `html`, its lessons bound in, with all of them small in one place."""
    lessons: list[str] = []

    def leave(found: re.Match[str]) -> str:
        inside, _, after = found[3].rpartition("</div>")
        lessons.append(inside)
        way = f'<p class="own-page"><a href="{found[2]}">This part on its own page</a></p>'
        return f"{found[1]}{way}</div>{after}"

    left = _PLACE.sub(leave, html)
    if not lessons:
        return html
    data = squeezed(_BETWEEN.join(lessons))
    return left.replace("</main>", f'<div data-packed="{data}" hidden></div>\n</main>', 1)


def unpacked(html: str) -> str:
    """The booklet with its lessons laid out again, for whoever runs no script."""
    held = _HELD.search(html)
    if held is None:
        return html
    lessons = iter(unsqueezed(held[1] or held[2]).split(_BETWEEN))

    def lay(found: re.Match[str]) -> str:
        return f"{found[1]}{next(lessons)}</div>{found[3].rpartition('</div>')[2]}"

    return _PLACE.sub(lay, _HELD.sub("", html))


def with_small_data(html: str) -> str:
    """The page `html` with what its script plays held small; who runs none has no use for it."""

    def small(found: re.Match[str]) -> str:
        return f' data-dance-small="{squeezed(entities.unescape(found[1][1:-1]))}"'

    return _PLAYED.sub(small, html)
