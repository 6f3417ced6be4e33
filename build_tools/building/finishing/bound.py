"""Pages bound into one: the article of each, its places renamed so that none is there twice.

Its headings go down one level: the title by its tag, the others by what they say of their level,
so that styles find them as before.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from build_tools.building.finishing.one_file import BESIDE
from build_tools.building.finishing.rewriting import Start, element, rewritten, with_value

_PLACE = re.compile(r'(<(?P<name>\w+)[^>]* data-bound="(?P<page>[^"]+)"[^>]*>)')
_UNDER_TITLE = ("h2", "h3", "h4", "h5")
_POINTING = ("for", "aria-labelledby", "aria-describedby", "aria-controls", "aria-owns")


def bound(html: str, read: Callable[[str], str]) -> str:
    """The page `html` with the article of another page in each element that has `data-bound`.

    `read` gives a page by its address. Links to a page bound in lead to its place here.
    """
    places = {m["page"]: _id(m[1]) for m in _PLACE.finditer(html)}

    def fill(found: re.Match[str]) -> str:
        page = found["page"]
        return found[1] + _article(read(page), places[page], places)

    return _PLACE.sub(fill, html)


def _id(tag: str) -> str:
    found = re.search(r' id="([^"]+)"', tag)
    if found is None:
        raise ValueError(f"a place to bind a page has no id: {tag}")
    return found.group(1)


def _article(html: str, place: str, places: dict[str, str]) -> str:
    def change(tag: Start) -> str | None:
        has = tag.attributes
        if tag.name == "nav" or has.keys() & {BESIDE, "hidden"}:
            return None
        text = tag.text
        if tag.name in _UNDER_TITLE:
            text = f'<{tag.name} aria-level="{int(tag.name[1]) + 1}"{text[3:]}'
        if "id" in has:
            text = with_value(text, "id", f"{place}-{has['id']}")
        for name in _POINTING:
            if name in has:
                renamed = " ".join(f"{place}-{one}" for one in has[name].split())
                # a part's name begins with its page's title, so that no two are called the same
                titled = f"{place}-title {renamed}" if tag.name == "section" else renamed
                text = with_value(text, name, titled)
        href = has.get("href", "")
        if href.startswith("#"):
            text = with_value(text, "href", f"#{place}-{href[1:]}")
        elif href in places:
            text = with_value(text, "href", f"#{places[href]}")
        return text.replace("url(#", f"url(#{place}-")

    article = rewritten(element(html, "article"), change)
    return article.replace("<h1>", f'<h2 class="title" id="{place}-title">').replace(
        "</h1>", "</h2>"
    )
