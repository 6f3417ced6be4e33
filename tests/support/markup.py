"""What a page's HTML says, read by Python's own parser and not by a browser."""

from __future__ import annotations

from dataclasses import dataclass
from html.parser import HTMLParser


@dataclass(frozen=True, slots=True)
class Tag:
    """One start tag: its name, its attributes, and the line it stands on."""

    name: str
    attributes: dict[str, str]
    line: int


class _Tags(HTMLParser):
    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.tags: list[Tag] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        filled = {name: value or "" for name, value in attrs}
        self.tags.append(Tag(tag, filled, self.getpos()[0]))


def tags(html: str) -> list[Tag]:
    """Every start tag of a page, in order."""
    parser = _Tags()
    parser.feed(html)
    parser.close()
    return parser.tags


def ids(found: list[Tag]) -> list[str]:
    """The name of every place that a link can point to."""
    return [tag.attributes["id"] for tag in found if "id" in tag.attributes]


def references(found: list[Tag]) -> list[tuple[Tag, str]]:
    """Every address that a page loads or links to."""
    names = ("href", "src", "xlink:href", "action", "data", "poster", "srcset")
    return [
        (tag, tag.attributes[name]) for tag in found for name in names if name in tag.attributes
    ]
