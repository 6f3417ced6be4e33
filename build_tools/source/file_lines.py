"""The lines of a file that is changed in one place: its line ends and its mark stay."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from build_tools.problem import FieldPath
from build_tools.shapes.shape import Shape, shape_of
from build_tools.source.front_matter import Document, kind_of_file, read_again, read_markdown
from build_tools.source.typed.what_was_read import Reading

_MARK = b"\xef\xbb\xbf"


@dataclass(frozen=True, slots=True)
class EditRefused:
    """Why nothing was changed; `conflict` where the file says something else by now."""

    reason: str
    conflict: bool = False


SAYS_ELSE = EditRefused("the file says something else there by now", conflict=True)
IN_BRACKETS = EditRefused("this stands between brackets; run `tidy`, or change it in the file")


@dataclass(frozen=True, slots=True)
class Lines:
    """The lines of a file, and what stands at the end of each."""

    lines: tuple[str, ...]
    ends: str
    mark: bytes

    def bytes_of(self, lines: Sequence[str]) -> bytes:
        """The bytes of the same file with other lines."""
        return self.mark + self.ends.join(lines).encode("utf-8")


def lines_of(raw: bytes) -> Lines:
    """The lines of a file that was read as text."""
    mark = _MARK if raw.startswith(_MARK) else b""
    text = raw.removeprefix(_MARK).decode("utf-8")
    ends = "\r\n" if "\r\n" in text else "\n"
    return Lines(tuple(text.split(ends)), ends, mark)


def shape_of_file(document: Document) -> Shape:
    """What each place of a unit's or a lesson's file takes."""
    kind = kind_of_file(document.file)
    assert kind is not None
    return shape_of(kind)


def reading_of(document: Document) -> Reading:
    """What was read of the file's fields, with the line of each."""
    return read_again(document, shape_of_file(document))


def to_change(file: str, raw: bytes) -> Document | EditRefused:
    """The file as it is read before it is changed, or that it has to be mended first."""
    document = read_markdown(file, raw)
    if isinstance(document, Document):
        return document
    return EditRefused(f"the file needs mending first: {document[0].message}", conflict=True)


def as_wanted(file: str, fresh: bytes, wanted: Any, otherwise: str) -> bytes | EditRefused:
    """The bytes `fresh` if their fields are read as `wanted`, else refused in the words given."""
    again = read_markdown(file, fresh)
    if not isinstance(again, Document) or reading_of(again).data != wanted:
        return EditRefused(otherwise)
    return fresh


def at(data: Any, path: FieldPath) -> Any:
    """What stands at `path` in plain data; None where nothing does."""
    for part in path:
        try:
            data = data[part]
        except (KeyError, IndexError, TypeError):
            return None
    return data
