"""What lies in a pack, by what it is and not by its name: the unit's own files, and the rest."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping
from dataclasses import dataclass
from html.parser import HTMLParser

from build_tools.packs.about import FORMAT
from build_tools.packs.hidden_data import PictureError, cleaned
from build_tools.packs.reading.drawings import refuse_active
from build_tools.packs.reading.names import printable
from build_tools.packs.reading.refusal import RefusedError
from build_tools.sentences.word_lists import word_list
from build_tools.source.folder import is_slug

_TEXT = re.compile(r"(unit|lesson-[1-9][0-9]?)\.md\Z")
_MEDIA = re.compile(r"media/[a-z0-9]+(-[a-z0-9]+)*\.(svg|png|jpg|webp)\Z")
_PAGE = re.compile(r"pages/[a-z0-9-]+\.html\Z")
_REST = frozenset({"licence.txt", "credits.txt", "about.json", "metadata.jsonld"})
_EDITION = re.compile(r"(0|[1-9][0-9]{0,3})(\.(0|[1-9][0-9]{0,3})){2}\Z")
_CONTROLS = re.compile(r"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f]")
_RUNS = word_list("script iframe object embed applet base form frame frameset link")
_SAFE = re.compile(r"(#|https?://|mailto:|data:image/|data:,|[a-z0-9-]+\.html(#|\Z))")


@dataclass(frozen=True, slots=True)
class Pack:
    """A pack that is whole and harmless: its unit's slug and edition, and the unit's own files."""

    slug: str
    edition: str
    unit_files: Mapping[str, bytes]


def contents_of(payload: Mapping[str, bytes]) -> Pack:
    """The unit in a verified payload. Raises RefusedError for what is no unit, or not harmless."""
    if "unit/unit.md" not in payload:
        raise RefusedError("it is a sound bag, but no unit is in it")
    unit: dict[str, bytes] = {}
    for path, data in payload.items():
        own = path.removeprefix("unit/")
        if path.startswith("unit/"):
            _refuse_odd(own, data)
            unit[own] = data
        elif _PAGE.match(path):
            _refuse_active_page(path, _text(path, data))
        elif path in _REST:
            _text(path, data)
        else:
            raise RefusedError(f"`{printable(path)}` has no place in a unit's pack")
    slug, edition = _named(payload)
    return Pack(slug, edition, unit)


def _refuse_odd(path: str, data: bytes) -> None:
    if _TEXT.match(path):
        _text(f"unit/{path}", data)
    elif _MEDIA.match(path):
        try:
            cleaned(path, data)
        except PictureError as error:
            raise RefusedError(f"unit/{path}: {error}") from None
        if path.endswith(".svg"):
            refuse_active(f"unit/{path}", data)
    else:
        raise RefusedError(f"`unit/{printable(path)}` is not a file of a unit")


def _text(path: str, data: bytes) -> str:
    try:
        words = data.decode("utf-8")
    except UnicodeDecodeError:
        raise RefusedError(f"{path} is not text, though its name says so") from None
    if found := _CONTROLS.search(words):
        line = words.count("\n", 0, found.start()) + 1
        raise RefusedError(f"{path}:{line}: there is a sign that is no letter")
    return words


def _named(payload: Mapping[str, bytes]) -> tuple[str, str]:
    """The unit's folder name and edition, as about.json says."""
    try:
        told = json.loads(payload.get("about.json", b""))
    except (ValueError, RecursionError):
        told = None
    if not isinstance(told, dict):
        raise RefusedError("about.json does not say which unit this is")
    if told.get("format") != FORMAT:
        raise RefusedError(f"about.json says format {told.get('format')!s:.20}; {FORMAT} is read")
    slug, edition = told.get("unit"), told.get("edition")
    if not isinstance(slug, str) or not is_slug(slug):
        raise RefusedError("about.json names a folder that a unit cannot have")
    if not isinstance(edition, str) or not _EDITION.match(edition):
        raise RefusedError("about.json says no edition, such as 1.0.0")
    return slug, edition


def _refuse_active_page(path: str, html: str) -> None:
    reader = _Page(path)
    reader.feed(html)
    reader.close()


class _Page(HTMLParser):
    """A page as a browser meets it, refused at the first thing that runs or leads astray."""

    def __init__(self, path: str) -> None:
        super().__init__()
        self._path = path

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        line, _ = self.getpos()
        values = {key.casefold(): "".join((value or "").split()) for key, value in attrs}
        if tag in _RUNS and not (tag == "link" and values.get("href") == "data:,"):
            raise RefusedError(f"{self._path}:{line}: the page has a part `{tag}`")
        if tag == "meta" and values.get("http-equiv", "").casefold() == "refresh":
            raise RefusedError(f"{self._path}:{line}: the page leads elsewhere by itself")
        for key, value in values.items():
            if key.startswith("on"):
                raise RefusedError(f"{self._path}:{line}: the page runs something by `{key[:30]}`")
            leads = key in ("href", "src", "action", "formaction", "xlink:href", "data", "srcset")
            if leads and value and not _SAFE.match(value):
                raise RefusedError(f"{self._path}:{line}: the page leads to `{printable(value)}`")
