"""Every message of the templates, the Python and the scripts, gathered into `en.pot`.

Babel finds them by the names of gettext. Places are files without lines, so that a table changes
only where its words do; entries stand by file, so that two people who work on two rooms do not
write in one place.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING, Any

from build_tools.page_words.tables import SCHEMA, catalog

if TYPE_CHECKING:
    from babel.messages import Catalog

WRITTEN_BY: dict[str, str] = {".py": "python", ".html": "jinja2", ".js": "javascript"}
"""Which reader of Babel's takes which files."""
_KEYWORDS: dict[str, Any] = {
    "_": None,
    "gettext": None,
    "ngettext": (1, 2),
    "pgettext": ((1, "c"), 2),
    "N_": None,
    "NN_": (1, 2),
}
_OPTIONS = {"trimmed": "true", "silent": "false", "newstyle_gettext": "true"}
_SHOWN_OF_SCHEMAS = frozenset(
    {
        *("level", "direction", "pathway", "size", "dynamics", "formation", "facing", "side"),
        *("step", "phase", "grouping", "device", "dancers", "relationship", "nation", "with", "as"),
    }
)
"""The fields whose listed words pages show (`of_schema`)."""
_HEADER = "# Every message of the pages, in English. `page-words` writes it; nobody else does."
FOR_TRANSLATORS = "Translators:"
"""A remark that begins so stands above its message in the tables."""


def gathered(project: Path) -> bytes:
    """`en.pot` as it should be."""
    from babel.messages import Catalog
    from babel.messages.extract import extract

    found = Catalog(charset="utf-8", fuzzy=False, header_comment=_HEADER)
    for file in _sources(project):
        with file.open("rb") as read:
            for _line, message, remarks, context in extract(
                WRITTEN_BY[file.suffix], read, _KEYWORDS, (FOR_TRANSLATORS,), dict(_OPTIONS), True
            ):
                place = (file.relative_to(project).as_posix(), 1)
                found.add(message, None, [place], auto_comments=remarks, context=context)
    for word, schema in sorted(_schema_words(project / "schema")):
        found.add(word, None, [(schema, 1)], context=SCHEMA)
    return written(found)


def led_after(table: Path, template: bytes) -> bytes:
    """A language's table with the messages of the template: new ones empty, old ones gone."""
    from babel.messages.pofile import read_po

    known = catalog(table)
    known.update(read_po(BytesIO(template)), no_fuzzy_matching=True, update_header_comment=False)
    known.obsolete.clear()
    return written(known)


def written(known: Catalog) -> bytes:
    """A table as a file, the same every time: neither clock nor name of a tool in it."""
    from babel.messages.pofile import write_po

    for message in known:
        if message.id:
            message.locations = sorted(set(message.locations))
    out = BytesIO()
    write_po(out, known, width=100, sort_by_file=True, include_lineno=False)
    kept = [
        line for line in out.getvalue().decode().splitlines() if not line.startswith(_OF_THE_CLOCK)
    ]
    return ("\n".join(kept) + "\n").encode()


_OF_THE_CLOCK = tuple(
    f'"{name}: '
    for name in (
        *("POT-Creation-Date", "PO-Revision-Date", "Generated-By", "Last-Translator"),
        *("Report-Msgid-Bugs-To", "Language-Team", "Project-Id-Version"),
    )
)


def _schema_words(folder: Path) -> set[tuple[str, str]]:
    """Each word of the lists that pages show, with its schema."""
    found: set[tuple[str, str]] = set()

    def look(part: object, name: str, place: str) -> None:
        if isinstance(part, dict):
            if name in _SHOWN_OF_SCHEMAS:
                found.update((word, place) for word in part.get("enum", ()))
            for key, inside in part.items():
                look(inside, name if key == "items" else key, place)
        elif isinstance(part, list):
            for inside in part:
                look(inside, name, place)

    for file in sorted(folder.glob("*.schema.json")):
        look(json.loads(file.read_text(encoding="utf-8")), "", f"schema/{file.name}")
    return found


def _sources(project: Path) -> Iterator[Path]:
    for room in ("build_tools", "site_overrides"):
        for file in sorted((project / room).rglob("*")):
            if file.suffix in WRITTEN_BY and "__pycache__" not in file.parts:
                yield file
