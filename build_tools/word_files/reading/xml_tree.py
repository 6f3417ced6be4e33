"""One part's XML as a small tree: what holds words, and what says what they are.

Read by expat, which stops at a document type: so there are no entities but the five of XML, and
nothing is fetched. What only says how words look is dropped on the way.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from xml.parsers import expat

from build_tools.word_files.reading.limits import MOST_ELEMENTS, MOST_LEVELS
from build_tools.word_files.reading.trouble import DocumentError

_SPACES = {
    "http://schemas.openxmlformats.org/wordprocessingml/2006/main": "w",
    "http://purl.oclc.org/ooxml/wordprocessingml/main": "w",
    "http://schemas.openxmlformats.org/officeDocument/2006/math": "m",
    "http://purl.oclc.org/ooxml/officeDocument/math": "m",
    "http://schemas.openxmlformats.org/markup-compatibility/2006": "mc",
    "http://schemas.openxmlformats.org/drawingml/2006/wordprocessingDrawing": "wp",
    "http://purl.oclc.org/ooxml/drawingml/wordprocessingDrawing": "wp",
    "http://schemas.openxmlformats.org/officeDocument/2006/relationships": "r",
    "http://purl.oclc.org/ooxml/officeDocument/relationships": "r",
}
"""The namespaces of ECMA-376, transitional and strict (part 1, annex A), by their usual prefixes.
Names of any other stand without a prefix."""
_DROPPED = frozenset({"w:rPr", "w:sectPr", "w:tblPr", "w:tcPr", "w:trPr", "w:tblGrid", "w:sdtPr"})
_WORDS = frozenset({"w:t", "w:delText", "m:t"})
"""Elements whose text is words (17.3.3.31, 17.3.3.7, 22.1.2.116)."""


@dataclass(slots=True)
class Element:
    """An element: its name, its attributes, and what stands inside in order."""

    name: str
    attributes: dict[str, str]
    inside: list[Element | str] = field(default_factory=list)

    @property
    def elements(self) -> Iterator[Element]:
        """The elements inside it, one level down."""
        return (one for one in self.inside if not isinstance(one, str))

    @property
    def text(self) -> str:
        """The text that stands in it."""
        return "".join(one for one in self.inside if isinstance(one, str))

    def child(self, name: str) -> Element | None:
        """The first element of this name one level down."""
        return next((one for one in self.elements if one.name == name), None)

    def value(self, *names: str) -> str | None:
        """What `w:val` says of the element that these names lead to, each inside the last."""
        here: Element | None = self
        for name in names:
            here = here.child(name) if here else None
        return here.attributes.get("w:val") if here else None


class Reader:
    """Reads the parts of one file, which share what may be kept of them."""

    def __init__(self) -> None:
        self._kept = 0

    def read(self, data: bytes) -> Element:
        """The tree of one part. Raises DocumentError for what is not sound XML."""
        parser = expat.ParserCreate(namespace_separator="\n")
        parser.buffer_text = True
        root = Element("", {})
        opened, dropped = [root], 0

        def start(full: str, attributes: dict[str, str]) -> None:
            nonlocal dropped
            name = _short(full)
            if dropped or name in _DROPPED:
                dropped += 1
                if dropped > MOST_LEVELS:
                    raise DocumentError(_DEEP)
                return
            self._kept += 1
            if self._kept > MOST_ELEMENTS:
                raise DocumentError("it holds more than any file of lessons: split it")
            if len(opened) > MOST_LEVELS:
                raise DocumentError(_DEEP)
            has = {_short(key): value for key, value in attributes.items()}
            made = Element(name, has)
            opened[-1].inside.append(made)
            opened.append(made)

        def end(_: str) -> None:
            nonlocal dropped
            if dropped:
                dropped -= 1
            else:
                opened.pop()

        def text(words: str) -> None:
            if not dropped and opened[-1].name in _WORDS:
                opened[-1].inside.append(words)

        parser.StartElementHandler = start
        parser.EndElementHandler = end
        parser.CharacterDataHandler = text
        parser.StartDoctypeDeclHandler = _doctype
        parser.StartNamespaceDeclHandler = _namespace
        try:
            parser.Parse(data, True)
        except (expat.ExpatError, ValueError, LookupError):
            raise DocumentError("a part of it is not sound XML: save it again as .docx") from None
        return next(root.elements)


_LONGEST_NAMESPACE = 300
_DEEP = f"parts of it lie in one another more than {MOST_LEVELS} deep"


def _doctype(*_: object) -> None:
    raise DocumentError("it declares a document type, which no such file needs: save it again")


def _namespace(prefix: str | None, space: str | None) -> None:
    # expat writes it out again for every name in it
    if len(prefix or "") + len(space or "") > _LONGEST_NAMESPACE:
        raise DocumentError("it names a kind of part at a length that no program writes")


def _short(full: str) -> str:
    space, _, name = full.rpartition("\n")
    prefix = _SPACES.get(space)
    return f"{prefix}:{name}" if prefix else name
