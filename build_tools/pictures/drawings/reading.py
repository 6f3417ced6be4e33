"""A drawing's bytes to a tree that holds only what is allowed.

Read by expat, which is told that the text is UTF-8, and stops at a document type: so there are no
entities, and no other encoding is tried.
"""

from __future__ import annotations

import base64
import binascii
import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from xml.parsers import expat

from build_tools.pictures.drawings.allowed import (
    ATTRIBUTES,
    ELEMENTS,
    HOLD_WORDS,
    LEFT_OUT,
    NAMED,
    NUMBERS,
    PATHS,
    REFER,
)
from build_tools.pictures.drawings.styles import (
    check_numbers,
    check_value,
    declarations_in,
    rules_in,
    sheet_of,
    written,
)
from build_tools.pictures.drawings.tree import SVG, Element
from build_tools.pictures.limits import (
    MOST_DRAWING,
    MOST_ELEMENTS,
    MOST_LEVELS,
    MOST_PATH,
    MOST_STYLED,
    MOST_VALUE,
)
from build_tools.pictures.trouble import PictureError

CleanPhoto = Callable[[str, bytes], tuple[bytes, int]]
"""A photograph in a drawing, by the kind that it says it is: the same without what it carries
unseen, and how many points it has."""
NOT_SVG = "it is not an SVG drawing, though its name ends in .svg"
_NOT_UTF8 = "it is not written in UTF-8: save it again as a plain SVG drawing in UTF-8"
_XLINK = "http://www.w3.org/1999/xlink"
_XML = "http://www.w3.org/XML/1998/namespace"
_WEB_PAGES = frozenset({"http://www.w3.org/1999/xhtml", "http://www.w3.org/1998/Math/MathML"})
_UTF8 = frozenset({"UTF-8", "UTF8", "US-ASCII", "ASCII"})
_PHOTO = re.compile(r"data:image/(png|jpeg|webp);base64,")
_PATH = re.compile(r"[MmZzLlHhVvCcSsQqTtAa0-9eE+\-., \t\r\n]*")
_ID = re.compile(r"[\w.:-]{1,100}")
_SPACES = " \t\r\n"
_HARMLESS = (ELEMENTS | LEFT_OUT | {"a"}) - {"style"}
"""Elements that do nothing by themselves in a part that is left out, if they lead nowhere."""


@dataclass(frozen=True, slots=True)
class Drawing:
    """A drawing's tree, and how many points each photograph in it has, by its address."""

    root: Element
    photo_points: Mapping[str, int]


def read_drawing(data: bytes, clean_photo: CleanPhoto) -> Drawing:
    """The drawing as a tree. Raises PictureError for what is no drawing or may do harm."""
    if len(data) > MOST_DRAWING:
        raise PictureError(f"the drawing has {len(data):,} bytes, more than {MOST_DRAWING:,}")
    if not data.removeprefix(b"\xef\xbb\xbf").lstrip().startswith(b"<"):
        raise PictureError(NOT_SVG)
    try:
        text = data.decode("utf-8")
    except UnicodeDecodeError:
        raise PictureError(_NOT_UTF8) from None
    if "\0" in text:
        # Told that it is UTF-8, expat would still take this for UTF-16.
        raise PictureError(_NOT_UTF8)
    return _Reader(clean_photo).read(text)


@dataclass(slots=True)
class _Reader:
    clean_photo: CleanPhoto
    _parser: expat.XMLParserType = field(init=False)
    _open: list[Element] = field(default_factory=list)
    _root: Element | None = None
    _left_out: int = 0
    """How many elements deep it is in one that is left out."""
    _count: int = 0
    _styled: int = 0
    _ids: set[str] = field(default_factory=set)
    _photo_points: dict[str, int] = field(default_factory=dict)

    def read(self, text: str) -> Drawing:
        """The tree of the drawing's text."""
        parser = self._parser = expat.ParserCreate("UTF-8", namespace_separator="\n")
        parser.buffer_text = True
        parser.XmlDeclHandler = self._declaration
        parser.StartDoctypeDeclHandler = self._doctype
        parser.StartNamespaceDeclHandler = self._namespace
        parser.ProcessingInstructionHandler = self._instruction
        parser.StartElementHandler = self._start
        parser.EndElementHandler = self._end
        parser.CharacterDataHandler = self._text
        try:
            parser.Parse(text.encode(), True)
        except expat.ExpatError as error:
            raise PictureError("the drawing is not sound XML", error.lineno) from None
        except PictureError as error:
            raise PictureError(error.why, error.line or parser.CurrentLineNumber) from None
        if self._root is None:
            raise PictureError(NOT_SVG)
        return Drawing(self._root, self._photo_points)

    def _declaration(self, _: str, encoding: str | None, _standalone: int) -> None:
        if encoding is not None and encoding.upper() not in _UTF8:
            raise PictureError(
                f"it says that it is written in {encoding[:20]}: save it again as UTF-8"
            )

    def _namespace(self, prefix: str | None, space: str | None) -> None:
        # Expat writes it out again for every part and every name in it.
        if len(prefix or "") > MOST_VALUE or len(space or "") > MOST_VALUE:
            raise PictureError(f"it names a kind of part in more than {MOST_VALUE} letters")

    def _doctype(self, *_: object) -> None:
        raise PictureError("it declares a document type: save it as a plain SVG drawing")

    def _instruction(self, name: str, _: str) -> None:
        if name == "xml-stylesheet":
            raise PictureError("it asks for a style from elsewhere by `xml-stylesheet`")

    def _start(self, full: str, attributes: dict[str, str]) -> None:
        space, _, name = full.rpartition("\n")
        if self._root is None and (space, name) != (SVG, "svg"):
            says_so = "it does not say that it is SVG: save it again as a plain SVG drawing"
            raise PictureError(says_so if name == "svg" else NOT_SVG)
        if space in _WEB_PAGES:
            raise PictureError("the drawing has a piece of a web page in it")
        if self._left_out or space != SVG or name in LEFT_OUT:
            if space == SVG:
                self._look_at(name, attributes)
            self._left_out += 1
            return
        if name not in ELEMENTS:
            raise _part_refused(name)
        self._count += 1
        if self._count > MOST_ELEMENTS:
            raise PictureError(f"the drawing has more than {MOST_ELEMENTS:,} parts")
        if len(self._open) == MOST_LEVELS:
            raise PictureError(f"parts lie in one another more than {MOST_LEVELS} deep")
        kept = dict(self._attributes(name, attributes))
        element = Element(name, kept, self._parser.CurrentLineNumber)
        if self._open:
            self._open[-1].inside.append(element)
        else:
            self._root = element
        self._open.append(element)

    def _look_at(self, name: str, attributes: dict[str, str]) -> None:
        """Refuse what does harm in a part that is left out: who opens the file itself meets it."""
        if name not in _HARMLESS:
            raise _part_refused(name)
        ids, self._ids = self._ids, set()
        self._attributes(name, attributes)
        self._ids = ids

    def _end(self, _: str) -> None:
        if self._left_out:
            self._left_out -= 1
            return
        element = self._open.pop()
        if element.name == "style":
            sheet = sheet_of(rules_in(element.words()))
            element.inside = [sheet] if sheet else []

    def _text(self, words: str) -> None:
        if self._left_out or not self._open:
            return
        element = self._open[-1]
        if element.name in HOLD_WORDS or not words.strip(_SPACES):
            element.inside.append(words)

    def _attributes(self, element: str, found: dict[str, str]) -> list[tuple[str, str]]:
        kept = []
        for full, value in found.items():
            space, _, name = full.rpartition("\n")
            if space == _XLINK and name == "href":
                space = "" if "href" not in found else space
            elif space == _XML and name in ("space", "lang"):
                space, name = "", f"xml:{name}"
            if space:
                continue
            if name.casefold().startswith("on"):
                raise PictureError(f"the drawing runs something by `{name[:30]}`")
            told = self._value(element, name, value)
            if told is not None:
                kept.append((name, told))
        return kept

    def _value(self, element: str, name: str, value: str) -> str | None:
        """The value as it is published; None where the attribute is left out."""
        if name == "href":
            return self._href(element, value)
        if name == "style":
            self._styled += len(value)
            if self._styled > MOST_STYLED:
                raise PictureError(f"its styles have more than {MOST_STYLED:,} letters")
            return written(tuple(declarations_in(value))) or None
        if name in PATHS:
            if len(value) > MOST_PATH or _PATH.fullmatch(value) is None:
                raise PictureError(f"`{name}` is no path, or has more than {MOST_PATH:,} letters")
            check_numbers(name, value)
            return value
        if name in NAMED or name.startswith("aria-"):
            return self._named(name, value)
        if name == "cursor" and "(" in value:
            raise PictureError("the drawing asks for a picture from elsewhere by `cursor`")
        if name not in ATTRIBUTES:
            return None
        check_value(name, value, MOST_PATH if name in NUMBERS else MOST_VALUE)
        return value

    def _named(self, name: str, value: str) -> str | None:
        if len(value) > MOST_VALUE:
            raise PictureError(f"`{name[:30]}` has {len(value):,} letters, more than {MOST_VALUE}")
        if name != "id":
            return value
        # Of two parts with one id, the first is the one that is referred to.
        if _ID.fullmatch(value) is None or value in self._ids:
            return None
        self._ids.add(value)
        return value

    def _href(self, element: str, value: str) -> str | None:
        tight = "".join(value[:MOST_VALUE].split())
        if element == "image" and (photo := _PHOTO.match(tight)):
            return self._photo(photo[1], photo[0], "".join(value.split())[photo.end() :])
        # A browser takes `%61` for `a`, so that a part could show itself without end.
        if not tight.startswith("#") or "%" in tight:
            raise PictureError(f"the drawing leads to `{tight[:40]}`")
        return tight if element in REFER and _ID.fullmatch(tight[1:]) else None

    def _photo(self, kind: str, start: str, coded: str) -> str:
        try:
            data = base64.b64decode(coded, validate=True)
        except (binascii.Error, ValueError):
            raise PictureError("a picture in it is damaged: put it in again") from None
        clean, points = self.clean_photo(kind, data)
        address = start + base64.b64encode(clean).decode()
        self._photo_points[address] = points
        return address


def _part_refused(name: str) -> PictureError:
    what = "which can run or lead elsewhere, or is not read here"
    return PictureError(f"the drawing has a part `{name[:30]}`, {what}")
