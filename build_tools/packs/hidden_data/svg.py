"""SVG drawings: no comments, no metadata, nothing of the program that drew them."""

from __future__ import annotations

import base64
import binascii
import re
from collections import defaultdict
from dataclasses import dataclass, field
from xml.parsers import expat

from build_tools.packs.hidden_data.broken import PictureError
from build_tools.packs.hidden_data.jpeg import cleaned_jpeg
from build_tools.packs.hidden_data.png import cleaned_png
from build_tools.packs.hidden_data.webp import cleaned_webp

_SEEN = frozenset(
    {
        "",
        "http://www.w3.org/2000/svg",
        "http://www.w3.org/1999/xlink",
        "http://www.w3.org/XML/1998/namespace",
        "http://www.w3.org/1999/xhtml",
        "http://www.w3.org/1998/Math/MathML",
    }
)
"""The namespaces that a browser draws; what may not stand in a drawing is refused elsewhere."""
_TAG = re.compile(rb"""<(?:[^<>"']|"[^"]*"|'[^']*')*>""")
_ATTRIBUTE = re.compile(rb"""(\s+)([^\s=/>]+)(\s*=\s*)("[^"]*"|'[^']*')""")
_PICTURE = re.compile(rb"""["']\s*data:image/(png|jpeg|webp);base64,([^"']*)["']""")
_STYLE = re.compile(rb"""("(?:\\.|[^"\\])*"|'(?:\\.|[^'\\])*')|/\*.*?\*/""", re.DOTALL)
"""Quoted words of a style, which stay, or a comment in it."""
_STYLE_IN_TAG = re.compile(rb"/\*.*?\*/", re.DOTALL)
_NOTHING_SAID = b"/**/"
"""An empty comment: what stood on both sides of a comment stays apart, and nothing else changes."""
_BY_KIND = {b"png": cleaned_png, b"jpeg": cleaned_jpeg, b"webp": cleaned_webp}


def cleaned_svg(data: bytes) -> bytes:
    """The drawing without what is not drawn; all else stays letter by letter."""
    if not data.lstrip(b"\xef\xbb\xbf").lstrip().startswith((b"<svg", b"<?xml", b"<!--")):
        raise PictureError("it is not an SVG drawing, though its name ends in .svg")
    cleaner = _Cleaner(data)
    kept, at = [], 0
    for start, end, instead in cleaner.changes():
        kept += [data[at:start], instead]
        at = end
    return b"".join([*kept, data[at:]])


@dataclass(slots=True)
class _Cleaner:
    """Reads a drawing and notes each stretch of its bytes to leave out or to change."""

    data: bytes
    _parser: expat.XMLParserType = field(init=False)
    _spaces: dict[str, list[str]] = field(init=False)
    _found: list[tuple[int, int, bytes]] = field(init=False)
    _depth: int = 0
    _out_from: tuple[int, int] | None = None
    """Where the element that is being left out starts, and how deep it lies."""
    _style_from: int | None = None
    """Where the text of the style that is being read starts."""

    def __post_init__(self) -> None:
        self._spaces, self._found = defaultdict(list), []
        self._parser = expat.ParserCreate(namespace_separator="\n")
        self._parser.buffer_text = False
        self._parser.StartNamespaceDeclHandler = self._declare
        self._parser.EndNamespaceDeclHandler = lambda prefix: self._spaces[prefix or ""].pop()
        self._parser.StartElementHandler = self._start
        self._parser.EndElementHandler = self._end
        self._parser.CommentHandler = lambda _text: self._cut_to(b"-->")
        self._parser.ProcessingInstructionHandler = lambda _target, _text: self._cut_to(b"?>")
        self._parser.StartDoctypeDeclHandler = self._doctype

    def changes(self) -> list[tuple[int, int, bytes]]:
        """From where to where, and what stands there instead; in order, none within another."""
        try:
            self._parser.Parse(self.data, True)
        except expat.ExpatError as error:
            raise PictureError(
                f"it is not sound XML (line {error.lineno}): open it and save it again"
            ) from error
        ends = [0, *(end for _, end, _ in self._found)]
        if any(start < end for (start, _, _), end in zip(self._found, ends, strict=False)):
            raise PictureError("its comments cannot be told apart: open it and save it again")
        return self._found

    def _declare(self, prefix: str | None, space: str | None) -> None:
        self._spaces[prefix or ""].append(space or "")

    def _start(self, name: str, _attributes: object) -> None:
        self._depth += 1
        if self._out_from is not None:
            return
        at = self._parser.CurrentByteIndex
        space, _, local = name.rpartition("\n")
        if self._depth == 1 and local != "svg":
            raise PictureError("it is not an SVG drawing, though its name ends in .svg")
        if space not in _SEEN or local == "metadata":
            self._out_from = (at, self._depth)
            return
        tag = _TAG.match(self.data, at)
        if tag is None:
            raise PictureError("its tags cannot be told apart: open it and save it again")
        changed = _ATTRIBUTE.sub(self._attribute, tag[0])
        if changed != tag[0]:
            self._found.append((at, tag.end(), changed))
        if local == "style" and not tag[0].endswith(b"/>"):
            self._style_from = tag.end()

    def _end(self, name: str) -> None:
        if self._style_from is not None and name.rpartition("\n")[2] == "style":
            start, self._style_from = self._style_from, None
            text = self.data[start : self._parser.CurrentByteIndex]
            for found in _STYLE.finditer(text):
                if found[1] is None and found[0] != _NOTHING_SAID:
                    self._found.append((start + found.start(), start + found.end(), _NOTHING_SAID))
        if self._out_from is not None and self._out_from[1] == self._depth:
            start, _ = self._out_from
            tag = _TAG.match(self.data, start)
            # The parser stands behind an element that closes itself, and before other end tags.
            if tag is not None and tag[0].endswith(b"/>"):
                end = tag.end()
            else:
                end = self.data.index(b">", self._parser.CurrentByteIndex) + 1
            self._found.append((start, end, b""))
            self._out_from = None
        self._depth -= 1

    def _cut_to(self, ending: bytes) -> None:
        if self._out_from is None:
            at = self._parser.CurrentByteIndex
            self._found.append((at, self.data.index(ending, at) + len(ending), b""))

    def _doctype(self, *_: object) -> None:
        raise PictureError("it declares a document type: save it as a plain SVG drawing")

    def _attribute(self, found: re.Match[bytes]) -> bytes:
        name = found[2].decode("utf-8", "replace")
        prefix, colon, local = name.rpartition(":")
        declared = local if prefix == "xmlns" else prefix
        if colon and self._spaces[declared] and self._spaces[declared][-1] not in _SEEN:
            return b""
        if name == "style":
            return found[0].replace(found[4], _STYLE_IN_TAG.sub(_NOTHING_SAID, found[4]))
        if local == "href" and (picture := _PICTURE.fullmatch(found[4])):
            return found[0].replace(picture[2], _cleaned_inside(picture[1], picture[2]))
        return found[0]


def _cleaned_inside(kind: bytes, coded: bytes) -> bytes:
    """A picture in the drawing, as it is written there, without what it carries unseen."""
    try:
        data = base64.b64decode(b"".join(coded.split()), validate=True)
    except binascii.Error:
        raise PictureError("a picture in it is damaged: put it in again") from None
    clean = _BY_KIND[kind](data)
    return coded if clean == data else base64.b64encode(clean)
