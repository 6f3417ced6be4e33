"""What stands in anybody's word-processor file, in the order in which it is read."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from build_tools.word_files.blocks import Block
from build_tools.word_files.reading.body import Body
from build_tools.word_files.reading.parts import Link, Parts
from build_tools.word_files.reading.styles import styles_of
from build_tools.word_files.reading.trouble import DocumentError

_BESIDE = {"footnotes": "a footnote", "endnotes": "an endnote", "comments": "a comment",
           "header": "the head of a page", "footer": "the foot of a page"}  # fmt: skip
_NOT_READ = {"chart": "a chart", "diagramData": "a diagram", "oleObject": "an object of another "
             "program", "package": "a file inside it", "aFChunk": "a document inside it",
             "subDocument": "another document that it leads to"}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Beside:
    """Words that stand beside the text: where, and what they are."""

    where: str
    text: str


@dataclass(frozen=True, slots=True)
class ReadDocument:
    """What stands in a file."""

    blocks: tuple[Block, ...]
    """In the order in which it is read."""
    beside: tuple[Beside, ...] = ()
    """What stands in notes, comments, heads and feet of pages, and what was taken out."""
    not_read: tuple[str, ...] = field(default=())
    """What in it may hold words that are not read, each in a few words."""


def read_document(data: bytes) -> ReadDocument:
    """What stands in the file. Raises DocumentError where it is none, or may do harm."""
    parts = Parts(data)
    name = _main_part(parts)
    links = parts.links(name)
    at = next((one.target for one in links.values() if one.kind == "styles"), "")
    styles = styles_of(parts.tree(at) if at in parts else None)
    body = Body(styles, _addresses(links))
    root = parts.tree(name)
    inside = root.child("w:body")
    if inside is None:
        raise DocumentError("it is no word-processor file: save it again as .docx")
    blocks = tuple(body.blocks(inside))
    taken_out = tuple(Beside("text taken out, still in the file", one) for one in body.taken_out)
    beside = (*_beside(parts, links, Body(styles, {})), *taken_out)
    return ReadDocument(blocks, beside, tuple(_not_read(links)))


def _main_part(parts: Parts) -> str:
    for one in parts.links("").values():
        if one.kind == "officeDocument" and not one.outside and one.target in parts:
            return one.target
    if "mimetype" in parts:
        raise DocumentError("it is a file of another kind: save it again as .docx")
    raise DocumentError("it is no word-processor file, or is damaged: save it again as .docx")


def _addresses(links: Mapping[str, Link]) -> dict[str, str]:
    """The addresses that links lead to; nothing is fetched from there."""
    return {
        key: one.target
        for key, one in links.items()
        if one.kind == "hyperlink" and one.target.startswith(("http://", "https://", "mailto:"))
    }


def _beside(parts: Parts, links: Mapping[str, Link], body: Body) -> Iterator[Beside]:
    seen: set[Beside] = set()
    for one in sorted(links.values(), key=lambda link: (link.kind, link.target)):
        where = _BESIDE.get(one.kind)
        if where is None or one.outside or one.target not in parts:
            continue
        for text in body.texts(parts.tree(one.target)):
            found = Beside(where, text)
            if found not in seen:
                seen.add(found)
                yield found


def _not_read(links: Mapping[str, Link]) -> Iterator[str]:
    for kind, words in _NOT_READ.items():
        if any(one.kind == kind for one in links.values()):
            yield words
