"""How long reading a text takes when it grows: one piece repeated, and every road that reads it."""

from __future__ import annotations

import gc
import io
import json
import shutil
import tempfile
import time
import zipfile
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager, suppress
from functools import cache
from pathlib import Path

from build_tools.checking.check_bank import check_bank_files, check_unit
from build_tools.misuse import Misuse
from build_tools.packs.reading.bag_check import payload_of
from build_tools.packs.reading.contents import contents_of
from build_tools.packs.reading.names import refuse_clashes, refuse_path
from build_tools.packs.reading.pages import refuse_active_page
from build_tools.packs.reading.refused_error import RefusedError
from build_tools.packs.reading.unzipping import unzipped
from build_tools.packs.taking_in.journal import finish
from build_tools.pages.pieces.notes import notes_html
from build_tools.pictures.publishable import cleaned
from build_tools.pictures.trouble import PictureError
from build_tools.schema_check.check import check_document
from build_tools.source.draft_state import says_draft
from build_tools.source.front_matter import Document, read_data, read_markdown
from tests.support import packs
from tests.support.banks import BASE, BASE_UNIT

MOST_TIMES = 12.0
"""So many times longer may reading take where the text is ten times as long."""
LEAST_SECONDS = 0.005
"""Shorter times say nothing of how they grow."""
_TRIES = 4

Road = Callable[[str], object]


def told(work: Callable[[], object]) -> None:
    """Do the work; a refusal in words is an answer as good as any."""
    with suppress(RefusedError, PictureError, Misuse):
        work()


def seconds(road: Road, text: str) -> float:
    """Processor seconds of reading the text once, with no search for rubbish between."""
    gc.disable()
    try:
        start = time.process_time()
        told(lambda: road(text))
        return time.process_time() - start
    finally:
        gc.enable()


def growth(road: Road, piece: str, length: int) -> float:
    """How many times longer ten times `length` takes than `length`; the best of some tries."""
    best = float("inf")
    for _ in range(_TRIES):
        short = max(seconds(road, repeated(piece, length)), LEAST_SECONDS)
        best = min(best, seconds(road, repeated(piece, 10 * length)) / short)
        if best <= MOST_TIMES:
            break
    return best


def repeated(piece: str, length: int) -> str:
    """The piece again and again until there are so many letters."""
    return piece * max(1, length // len(piece))


def _markdown(fields: str, notes: str = "") -> object:
    found = read_markdown("units/u/unit.md", f"---\n{fields}\n---\n{notes}".encode())
    if isinstance(found, Document):
        notes_html(found.body, 2)
        return check_document(found, "unit")
    return found


def _data(text: str) -> object:
    found = read_data("bank.yml", text.encode())
    return check_document(found, "bank") if isinstance(found, Document) else found


@cache
def _bank() -> Path:
    root = Path(tempfile.mkdtemp(prefix="growing-"))
    shutil.copytree(BASE, root / "content")
    return root / "content"


@contextmanager
def _instead(path: str, change: Callable[[bytes], bytes]) -> Iterator[None]:
    """For a moment a file of the small bank is what `change` makes of it."""
    file = _bank() / path
    before = file.read_bytes()
    try:
        file.write_bytes(change(before))
        yield
    finally:
        file.write_bytes(before)


def _notes_in_unit(notes: str) -> object:
    """Every rule on a unit with such notes."""
    with _instead(f"units/{BASE_UNIT}/unit.md", lambda raw: raw + b"\n" + notes.encode()):
        return check_unit(_bank(), BASE_UNIT, {})


def _task(text: str) -> object:
    """Every rule on a lesson with such a task."""
    told = b'"' + _in_quotes(text) + b'"'
    old = b"Crease for four counts, press for four."
    with _instead(f"units/{BASE_UNIT}/lesson-1.md", lambda raw: raw.replace(old, told)):
        return check_unit(_bank(), BASE_UNIT, {})


def _word(text: str) -> object:
    """The bank's own files with a word so explained."""
    told = b'swell:\n  under: making\n  plain: "' + _in_quotes(text) + b'"\n'
    with _instead("vocabulary/words.yml", lambda raw: raw + told):
        return check_bank_files(_bank())


def _in_quotes(text: str) -> bytes:
    return json.dumps(text, ensure_ascii=False).strip('"').encode()


def _bag(**tags: bytes) -> object:
    return payload_of(packs.in_top(packs.bag(None, tags)))


def _about(raw: bytes) -> object:
    return contents_of(packs.with_files({"about.json": raw}))


def _svg(text: str) -> object:
    return cleaned("a.svg", text.encode())


def _svg_in(before: str, after: str) -> Road:
    head = '<svg xmlns="http://www.w3.org/2000/svg"'
    return lambda text: _svg(f"{head}{before}{text}{after}")


def _journal(text: str) -> object:
    room = _bank() / ".taking-in"
    room.mkdir(exist_ok=True)
    (room / "journal.json").write_bytes(text.encode())
    finish(_bank())
    return None


def _zip_names(text: str) -> object:
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w") as archive:
        for n in range(0, min(len(text), 30_000), 100):
            archive.writestr(text[n : n + 100] + str(n), b"x")
    return unzipped(made.getvalue())


def _bytes(name: str, head: bytes, tail: bytes = b"") -> Road:
    return lambda text: cleaned(name, head + text.encode("latin-1") + tail)


TEXTS: Mapping[str, Road] = {
    "notes": lambda text: _markdown("title: x", text),
    "notes, every rule": _notes_in_unit,
    "a task, every rule": _task,
    "a word of the vocabulary": _word,
    "a field": lambda text: _markdown(f"title: {text}"),
    "a field in quotation marks": lambda text: _markdown(f'title: "{text}"'),
    "a field of several lines": lambda text: _markdown("title: |\n  " + text.replace("\n", "\n  ")),
    "the name of a field": lambda text: _markdown(f"{text}: x"),
    "fields": _markdown,
    "a file of fields": _data,
    "whether it is a draft": lambda text: says_draft(f"---\ndraft: {text}".encode()),
    "about.json": lambda text: _about(text.encode()),
    "about.json, a value": lambda text: _about(f'{{"format": 1, "unit": "{text}"}}'.encode()),
    "bagit.txt": lambda text: _bag(**{"bagit.txt": text.encode()}),
    "bag-info.txt": lambda text: _bag(**{"bag-info.txt": b"A: b\n" + text.encode()}),
    "bag-info.txt, folded": lambda text: _bag(
        **{"bag-info.txt": b"A: b\n " + text.replace("\n", "\n ").encode()}
    ),
    "a manifest": lambda text: _bag(**{"manifest-sha512.txt": text.encode()}),
    "a path in a manifest": lambda text: _bag(
        **{"manifest-sha512.txt": b"0" * 128 + b"  data/" + text.encode()}
    ),
    "a page": lambda text: refuse_active_page("p", text),
    "a page, in a tag": lambda text: refuse_active_page("p", f"<a {text}"),
    "a page, in a value": lambda text: refuse_active_page("p", f'<a b="{text}'),
    "a path": refuse_path,
    "paths": lambda text: refuse_clashes(text[n : n + 40] for n in range(0, len(text), 40)),
    "names in a zip": _zip_names,
    "a journal": _journal,
    "a drawing": _svg,
    "a drawing, in it": _svg_in(">", "</svg>"),
    "a drawing, in a tag": _svg_in(" ", "/>"),
    "a drawing, in a value": _svg_in(' fill="', '"/>'),
    "a drawing, in a class": _svg_in(' class="', '"/>'),
    "a drawing, in a style": _svg_in(' style="', '"/>'),
    "a drawing, in a style sheet": _svg_in("><style>", "</style></svg>"),
    "a drawing, in a path": _svg_in('><path d="', '"/></svg>'),
    "a drawing, in a transformation": _svg_in('><g transform="', '"/></svg>'),
    "a drawing, in a link": _svg_in('><use href="#', '"/></svg>'),
    "a drawing, in a photograph": _svg_in('><image href="data:image/png;base64,', '"/></svg>'),
    "a drawing, in words": _svg_in("><text>", "</text></svg>"),
    "a drawing, in a comment": _svg_in("><!-- ", " --></svg>"),
}
PIECES = (
    "[", "]", "(", ")", "{", "}", "](", "]: ", "][", "[x]", "[x]: ", "![", "[a](b", "[a](<b",
    "<", ">", "</", "<a", "<a ", "<a b ", "<a b=", "<a b='", "<a>", "</a>", "<!--", "-->", "<!",
    "<?", "<![CDATA[", "]]>", "&", "&amp;", "&#60;", "&a;", "\\", "\\\\", "`", "```", "``` ",
    "\n", "\n\n", " ", "\t", "    ", "\u00a0", "> ", "- ", "-", "1. ", "1.", "- a\n", "  - a\n",
    "1. a\n", "# ", "#", "| a ", "|", "|-", "a|b\n-|-\n", "*", "**", "_", "*a ", "*a_ ", "=\n",
    "-\n", "~", "'", '"', "''", '""', "a", "a ", "A", "é", "0", "0 ", "1e", ".", ". ", "...",
    "? ", "!", ",", ", ", ";", ":", ": ", "a: ", "a: b\n", "a:\n ", "? a\n", "&a ", "!!a ", "@",
    "a@", "a@b.", "a.b", "/", "//", "/*", "*/", "%", "%0A", "+44 ", "0 0", "(0", "pupil ",
    "Pupil A", "pupil called Ab ", "child Ab Cd", "https://a.b ", "mailto:", "url(", "url(#a)",
    "#a", "@import ", "a{", "a{b:c}", "fill:red;", ".a{fill:red}", "M0 0", "L1 1", "1 1 ", "-1",
    "rgb(", "<g>", "<g/>", "<path/>", '<g id="a"/>', '<use href="#a"/>', "$", "^", "data/", "../",
    "0123456789abcdef", "Lesson 1 and 2 ", "A, then B ", "A B ", "then ", "and ", "not ", "don't ",
    "one two ", "no ", "two by two ", "in fours ", "stop ", "run ", "DA:Cr1.1.4a ", 'DA:Cr1 "',
    "twenty metres by ", "lesson f\u0131ve ", "\u017fix ",
)  # fmt: skip
PICTURES: Mapping[str, tuple[Road, tuple[str, ...]]] = {
    "a JPEG": (
        _bytes("a.jpg", b"\xff\xd8", b"\xff\xd9"),
        ("\xff", "\xff\xd0", "\xff\xd8", "\xff\xfe\0\x02", "\xff\xe1\0\x02", "\xff\xda\0\x02",
         "\xff\xda\0\x02\xff\0", "\xff\xda\0\x02a", "\0", "\xff\xe0\0\x08JFIF\0\0",
         "\xff\xc4\0\x02", "\xff\xdb\0\x02"),
    ),
    "a PNG": (
        _bytes("a.png", b"\x89PNG\r\n\x1a\n"),
        ("\0", "\0\0\0\0IDAT\x35\xaf\x06\x1e", "\0\0\0\0tEXt\xb8\x96\xb6\xc7", "\xff"),
    ),
    "a WebP": (
        _bytes("a.webp", b"RIFF\xff\xff\0\0WEBP"),
        ("\0", "VP8 \0\0\0\0", "EXIF\0\0\0\0", "ANMF\0\0\0\0", "note\0\0\0\0"),
    ),
}  # fmt: skip
