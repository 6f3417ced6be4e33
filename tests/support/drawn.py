"""What an SVG text or an HTML page holds: elements with their attributes, ids and words."""

from __future__ import annotations

from dataclasses import dataclass, field
from html.parser import HTMLParser

from build_tools.building.templates import templates
from build_tools.pages.page import Page

ENVIRONMENT = templates()
VOID = {"meta", "link", "img", "input", "br", "hr"}


@dataclass(slots=True)
class Seen:
    """Everything seen while reading: (name, attributes) of each element, and its words."""

    elements: list[tuple[str, dict[str, str]]] = field(default_factory=list)
    words: list[str] = field(default_factory=list)

    def ids(self) -> list[str]:
        return [a["id"] for _, a in self.elements if "id" in a]

    def values(self, name: str, attribute: str) -> list[str]:
        return [a[attribute] for n, a in self.elements if n == name and attribute in a]

    def text(self) -> str:
        return " ".join(" ".join(self.words).split())


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.seen = Seen()
        self.open: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.seen.elements.append((tag, {k: v or "" for k, v in attrs}))
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.seen.elements.append((tag, {k: v or "" for k, v in attrs}))

    def handle_endtag(self, tag: str) -> None:
        assert self.open, f"</{tag}> closes nothing"
        opened = self.open.pop()
        assert opened == tag, f"<{opened}> is closed by </{tag}>"

    def handle_data(self, data: str) -> None:
        self.seen.words.append(data)


def seen_in(markup: str) -> Seen:
    """Read `markup`; fails where an element is left open or closed by another."""
    reader = _Reader()
    reader.feed(markup)
    reader.close()
    assert reader.open == []
    return reader.seen


def page_seen(page: Page) -> Seen:
    """What a page holds once its template is filled."""
    return seen_in(ENVIRONMENT.get_template(page.template).render(view=page.context))
