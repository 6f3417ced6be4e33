"""A drawing as a tree of elements, and that tree as text again."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

SVG = "http://www.w3.org/2000/svg"
_IN_TEXT = str.maketrans({"&": "&amp;", "<": "&lt;", ">": "&gt;", "\r": "&#13;"})
_IN_VALUE = str.maketrans(
    {"&": "&amp;", "<": "&lt;", '"': "&quot;", "\t": "&#9;", "\n": "&#10;", "\r": "&#13;"}
)


@dataclass(eq=False, slots=True)
class Element:
    """One element of a drawing, with what is in it in its order; `line` from 1."""

    name: str
    attributes: dict[str, str]
    line: int
    inside: list[Element | str] = field(default_factory=list)

    def elements(self) -> Iterator[Element]:
        """The elements right inside it."""
        return (one for one in self.inside if isinstance(one, Element))

    def words(self) -> str:
        """The text right inside it."""
        return "".join(one for one in self.inside if isinstance(one, str))


def all_in(root: Element) -> Iterator[Element]:
    """The element and all below it, in the order in which they are written."""
    yield root
    for one in root.elements():
        yield from all_in(one)


def as_text(root: Element) -> str:
    """The drawing as one text of the SVG namespace alone, ending in a line feed."""
    pieces: list[str] = []
    _write(root, pieces, f' xmlns="{SVG}"')
    pieces.append("\n")
    return "".join(pieces)


def _write(element: Element, pieces: list[str], first: str = "") -> None:
    told = "".join(f' {name}="{v.translate(_IN_VALUE)}"' for name, v in element.attributes.items())
    if not element.inside:
        pieces.append(f"<{element.name}{first}{told}/>")
        return
    pieces.append(f"<{element.name}{first}{told}>")
    for one in element.inside:
        if isinstance(one, str):
            pieces.append(one.translate(_IN_TEXT))
        else:
            _write(one, pieces)
    pieces.append(f"</{element.name}>")
