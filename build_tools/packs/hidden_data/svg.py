"""SVG drawings: no comments, no metadata, nothing of the program that drew them."""

from __future__ import annotations

import re
from xml.parsers import expat

from build_tools.packs.hidden_data.broken import PictureError

SVG = "http://www.w3.org/2000/svg"
_SEEN = frozenset({"", SVG, "http://www.w3.org/1999/xlink", "http://www.w3.org/XML/1998/namespace"})
_ATTRIBUTE = re.compile(rb"""\s+(?:xmlns:([\w.-]+)|([\w.-]+):[\w.-]+)\s*=\s*(?:"[^"]*"|'[^']*')""")
_DECLARED = re.compile(rb"""\s+xmlns:([\w.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')""")


def cleaned_svg(data: bytes) -> bytes:
    """The drawing without what is not drawn; all else stays letter by letter."""
    if not data.lstrip(b"\xef\xbb\xbf").lstrip().startswith((b"<svg", b"<?xml", b"<!--")):
        raise PictureError("it is not an SVG drawing, though its name ends in .svg")
    cuts, starts = _what_to_cut(data)
    kept, at = [], 0
    for start, end in sorted(cuts):
        if start >= at:
            kept.append(data[at:start])
            at = end
        at = max(at, end)
    whole = b"".join([*kept, data[at:]])
    return _without_foreign_attributes(whole, starts)


def _what_to_cut(data: bytes) -> tuple[list[tuple[int, int]], set[bytes]]:
    """The stretches of bytes to leave out, and the prefixes that are not of the drawing."""
    parser = expat.ParserCreate(namespace_separator="\n")
    parser.buffer_text = False
    cuts: list[tuple[int, int]] = []
    open_elements: list[bool] = []
    started: list[int] = []
    foreign = {
        found[1]
        for found in _DECLARED.finditer(data)
        if (found[2] or found[3] or b"").decode("utf-8", "replace") not in _SEEN
    }

    def start(name: str, _attributes: object) -> None:
        space, _, local = name.rpartition("\n")
        inside = bool(open_elements) and open_elements[-1]
        out = inside or space not in _SEEN or local == "metadata"
        if out and not inside:
            started.append(parser.CurrentByteIndex)
        open_elements.append(out)

    def end(_name: str) -> None:
        out = open_elements.pop()
        if out and not (open_elements and open_elements[-1]):
            at = parser.CurrentByteIndex
            # an element that closes itself ends where it starts
            close = data.index(b">", at) + 1
            cuts.append((started.pop(), close))

    def comment(_text: str) -> None:
        at = parser.CurrentByteIndex
        cuts.append((at, data.index(b"-->", at) + 3))

    def instruction(_target: str, _text: str) -> None:
        at = parser.CurrentByteIndex
        cuts.append((at, data.index(b"?>", at) + 2))

    def doctype(*_: object) -> None:
        raise PictureError("it declares a document type: save it as a plain SVG drawing")

    parser.StartElementHandler = start
    parser.EndElementHandler = end
    parser.CommentHandler = comment
    parser.ProcessingInstructionHandler = instruction
    parser.StartDoctypeDeclHandler = doctype
    try:
        parser.Parse(data, True)
    except expat.ExpatError as error:
        raise PictureError(
            f"it is not sound XML (line {error.lineno}): open it and save it again"
        ) from error
    return cuts, foreign


def _without_foreign_attributes(data: bytes, foreign: set[bytes]) -> bytes:
    if not foreign:
        return data

    def tag(found: re.Match[bytes]) -> bytes:
        return _ATTRIBUTE.sub(
            lambda one: b"" if (one[1] or one[2]) in foreign else one[0], found[0]
        )

    return re.sub(rb"""<[A-Za-z](?:[^<>"']|"[^"]*"|'[^']*')*>""", tag, data)
