"""Which styles of a file are headings, titles and lists (ECMA-376, part 1, 17.7.4)."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from build_tools.word_files.reading.xml_tree import Element

_MOST_BASES = 20
_TEXT_LEVEL = 9
"""The outline level that says that something is no heading (17.3.1.20)."""


@dataclass(frozen=True, slots=True)
class Style:
    """A style of paragraphs: its name in small letters, what it is based on, what it says."""

    name: str
    base: str | None
    outline: int | None
    """The level of a heading, from 0."""
    listed: bool


@dataclass(frozen=True, slots=True)
class Styles:
    """All styles of paragraphs of a file, by their identifiers."""

    by_id: Mapping[str, Style]

    def heading_level(self, properties: Element | None) -> int | None:
        """The level of the heading that a paragraph with these properties is, from 1."""
        own = _number(properties.value("w:outlineLvl")) if properties else None
        found = own
        for style in self._chain(properties):
            if found is not None:
                break
            found = _named_level(style.name) if style.outline is None else style.outline
        return found + 1 if found is not None and found < _TEXT_LEVEL else None

    def is_called(self, properties: Element | None, name: str) -> bool:
        """Whether its style, or one that it is based on, has this name."""
        return any(style.name == name for style in self._chain(properties))

    def is_listed(self, properties: Element | None) -> bool:
        """Whether it is a line of a list."""
        if properties and properties.child("w:numPr"):
            return properties.value("w:numPr", "w:numId") != "0"
        return any(s.listed or s.name.startswith("list") for s in self._chain(properties))

    def _chain(self, properties: Element | None) -> list[Style]:
        at = properties.value("w:pStyle") if properties else None
        found: list[Style] = []
        while at is not None and at in self.by_id and len(found) < _MOST_BASES:
            found.append(self.by_id[at])
            at = found[-1].base
        return found


def styles_of(tree: Element | None) -> Styles:
    """The styles of paragraphs that the part `word/styles.xml` says."""
    found: dict[str, Style] = {}
    for one in tree.elements if tree else ():
        if one.name != "w:style" or one.attributes.get("w:type", "paragraph") != "paragraph":
            continue
        about = one.child("w:pPr")
        found[one.attributes.get("w:styleId", "")] = Style(
            name=(one.value("w:name") or "").casefold(),
            base=one.value("w:basedOn"),
            outline=_number(about.value("w:outlineLvl")) if about else None,
            listed=bool(about and about.child("w:numPr")),
        )
    return Styles(found)


def _named_level(name: str) -> int | None:
    number = _number(name.removeprefix("heading ")) if name.startswith("heading ") else None
    return number - 1 if number else None


def _number(text: str | None) -> int | None:
    return int(text) if text and text.isascii() and text.isdecimal() and len(text) < 3 else None
