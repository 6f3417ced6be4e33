"""A finished page's HTML as a tree, without what is of no use in a file to be edited."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from html.parser import HTMLParser

from build_tools.building.finishing.one_file import BESIDE
from build_tools.building.finishing.rewriting import VOID

_NO_WORDS = frozenset({"script", "style", "svg", "link", "nav", "audio", "button", "input", "head"})
_UNSEEN = frozenset({"aside", "on-page", "unfold-here", "seen-here", "place"})
"""Classes of what a page says unseen, or only leads through the page; `place` is in the heading."""


@dataclass(slots=True)
class Node:
    """An element of a page: its name, its attributes, and what stands inside in order."""

    name: str
    attributes: dict[str, str] = field(default_factory=dict)
    inside: list[Node | str] = field(default_factory=list)

    @property
    def classes(self) -> frozenset[str]:
        """The names of its classes."""
        return frozenset(self.attributes.get("class", "").split())

    @property
    def elements(self) -> Iterator[Node]:
        """The elements inside it, one level down."""
        return (one for one in self.inside if isinstance(one, Node))

    @property
    def text(self) -> str:
        """Its words, with one space where the page shows one."""
        return " ".join("".join(_texts(self)).split(" ")).strip()

    def find(self, name: str, of_class: str = "") -> Node | None:
        """The first element inside it, however deep, of this name and class."""
        return next(self.all(name, of_class), None)

    def all(self, name: str, of_class: str = "") -> Iterator[Node]:
        """Every element inside it, however deep, of this name and class, in order."""
        for one in self.elements:
            if one.name == name and (not of_class or of_class in one.classes):
                yield one
            yield from one.all(name, of_class)


def page_tree(html: str) -> Node:
    """The page's article as a tree. Raises ValueError where the page has none."""
    reader = _Reader()
    reader.feed(html)
    reader.close()
    article = reader.root.find("article")
    if article is None:
        raise ValueError("the page has no article")
    return article


def _texts(node: Node) -> Iterator[str]:
    for one in node.inside:
        if isinstance(one, str):
            yield one
        else:
            yield from _texts(one)


def _left_out(name: str, attributes: dict[str, str]) -> bool:
    classes = frozenset(attributes.get("class", "").split())
    return bool(name in _NO_WORDS or attributes.keys() & {BESIDE, "hidden"} or classes & _UNSEEN)


class _Reader(HTMLParser):
    """Reads a page of ours, in which every element is closed."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.root = Node("page")
        self._open = [self.root]
        self._left_out = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in VOID:
            return
        attributes = {name: value or "" for name, value in attrs}
        if self._left_out or _left_out(tag, attributes):
            self._left_out += 1
            return
        node = Node(tag, attributes)
        self._open[-1].inside.append(node)
        self._open.append(node)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """An element of a drawing that closes itself has no words."""

    def handle_endtag(self, tag: str) -> None:
        if tag in VOID:
            return
        if self._left_out:
            self._left_out -= 1
        elif len(self._open) > 1:
            self._open.pop()

    def handle_data(self, data: str) -> None:
        if not self._left_out:
            # a space that may not break is a space of its own
            self._open[-1].inside.append(_spaced(data))


def _spaced(text: str) -> str:
    """Line ends and runs of spaces as one space, as a browser shows them."""
    plain = text.replace("\n", " ").replace("\t", " ")
    while "  " in plain:
        plain = plain.replace("  ", " ")
    return plain
