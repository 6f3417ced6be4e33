"""What is fuzzed: each reader of strangers' bytes, with sound beginnings and words it looks for."""

from __future__ import annotations

import io
from collections.abc import Callable, Iterator
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from PIL import Image

from build_tools.checking.check_bank import check_shape
from build_tools.packs.bag import bagged
from build_tools.packs.reading.bag_check import payload_of
from build_tools.packs.reading.contents import contents_of
from build_tools.packs.reading.refused_error import RefusedError
from build_tools.packs.reading.unzipping import unzipped
from build_tools.pages.pieces.notes import notes_html
from build_tools.pictures.publishable import cleaned
from build_tools.pictures.trouble import PictureError
from build_tools.source.folder import UnitFolder
from build_tools.source.front_matter import Document, read_markdown
from tests.fuzzing import word_files
from tests.support import packs

PARTING = b"\n=====\n"
"""Between the files of a bag in one row of bytes."""
HEIC = Path(__file__).parents[1] / "pictures" / "heic"
TAGS = ("bagit.txt", "bag-info.txt", "manifest-sha512.txt", "tagmanifest-sha512.txt")
_DRAWING = b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">'


@dataclass(frozen=True, slots=True)
class Target:
    """One reader. `read` gives back for whatever is sound or refused in words, else it raises."""

    read: Callable[[bytes], object]
    beginnings: Callable[[], Iterator[bytes]]
    words: tuple[bytes, ...]
    most: int


def _small() -> dict[str, bytes]:
    """A payload with little in it: the reader of packs looks no further than names."""
    return {
        "about.json": packs.about(),
        "credits.txt": b"words\n",
        "licence.txt": b"words\n",
        "pages/index.html": b"<!doctype html>\n<title>A</title>\n",
        "unit/unit.md": b"---\ntitle: A\n---\n",
        "unit/media/a.svg": _DRAWING + b"</svg>",
    }


def _pack(data: bytes) -> object:
    with suppress(RefusedError):
        return contents_of(payload_of(unzipped(data)))
    return None


def _packs() -> Iterator[bytes]:
    files = packs.in_top(packs.bag(_small()))
    for method in (0, 8):
        yield packs.zipped(files, method)
    yield packs.zipped({**files, f"{packs.TOP}/data/unit/": b""}, 8)


def _bag(data: bytes) -> object:
    """A bag whose tag files are the parts of `data`, and what else is in it as it should be."""
    parts = data.split(PARTING, len(TAGS) - 1)
    tags: dict[str, bytes | None] = dict(zip(TAGS, parts, strict=False))
    with suppress(RefusedError):
        return payload_of(packs.in_top(packs.bag(_small(), tags)))
    return None


def _bags() -> Iterator[bytes]:
    made = bagged(_small(), [("Bag-Software-Agent", "bank"), ("Note", "a " * 60)])
    yield PARTING.join(made[name] for name in TAGS)
    yield packs.DECLARATION + PARTING + b"A: b\n c\n"


def _about(data: bytes) -> object:
    with suppress(RefusedError):
        return contents_of({**_small(), "about.json": data})
    return None


def _page(data: bytes) -> object:
    with suppress(RefusedError):
        return contents_of({**_small(), "pages/index.html": data})
    return None


def _fields(data: bytes) -> object:
    """A unit's file and a lesson's of these very bytes, held against their schemas."""
    found: list[Document] = []
    for name in ("units/a/unit.md", "units/a/lesson-1.md"):
        read = read_markdown(name, data)
        if isinstance(read, Document):
            found.append(read)
    if len(found) < 2:
        return None
    return check_shape(UnitFolder("a", unit=found[0], lessons=found[1:]))


def _units() -> Iterator[bytes]:
    files = packs.unit_files()
    yield files["unit.md"]
    yield files["lesson-1.md"]
    yield b'---\ntitle: "A"\ntopics: [a, b]\nyears: {from: 1, to: 2}\n---\nWords.\n'
    yield b"---\ndance:\n  form: A B\n  say: >-\n    one\n    two\n---\n"


def _notes(data: bytes) -> object:
    found = read_markdown("units/a/unit.md", b"---\ntitle: a\n---\n" + data)
    return notes_html(found.body, 2) if isinstance(found, Document) else None


def _written_notes() -> Iterator[bytes]:
    yield b"# A\n\nWords, *more* and **more**: [a](https://a.example)\n\n- a\n  - b\n\n1. c\n"
    yield b"> a\n> b\n\n| a | b |\n|---|---|\n| c | d |\n\n```\ncode\n```\n\n[a]: #b\n"


def _picture(name: str) -> Callable[[bytes], object]:
    def read(data: bytes) -> object:
        with suppress(PictureError):
            return cleaned(name, data)
        return None

    return read


def _drawings() -> Iterator[bytes]:
    yield packs.unit_files()["media/boat.svg"]
    yield (
        _DRAWING + b"<style>.a{fill:#123456;stroke:url(#g)}</style><defs>"
        b'<linearGradient id="g"><stop offset="0" stop-color="red"/></linearGradient></defs>'
        b'<g id="b" class="a" transform="rotate(9)"><path d="M0 0L1 1"/></g><use href="#b"/>'
        b'<mask id="m"><rect width="9" height="9" style="fill:red"/></mask></svg>'
    )


def _photograph(kind: str, **how: object) -> Callable[[], Iterator[bytes]]:
    def made() -> Iterator[bytes]:
        for mode in ("RGB", "L"):
            out = io.BytesIO()
            Image.linear_gradient("L").resize((16, 16)).convert(mode).save(out, kind, **how)
            yield out.getvalue()
        out = io.BytesIO()
        exif = Image.Exif()
        exif[0x0112], exif[0x010E] = 6, "A hall"
        Image.new("RGB", (8, 4)).save(out, kind, exif=exif)
        yield out.getvalue()

    return made


_YAML = (b"---\n", b": ", b"- ", b"{", b"}", b"[", b"]", b"&a", b"*a", b"!!", b"|\n", b">-\n",
         b"\\u", b"\\x", b"? ", b"%", b"@", b"<<: ", b"title", b"steps", b"minutes", b"dance",
         b"sections", b"motifs", b"actions", b"counts", b"as", b"form")  # fmt: skip
_SVG = (b"<use ", b"href=", b"\"#b\"", b"<g ", b"<mask ", b"<pattern ", b"<clipPath ", b"<filter ",
        b"style=", b"class=", b"url(#a)", b"transform=", b"matrix(", b"viewBox=", b"<image ",
        b"data:image/png;base64,", b"<style>", b"</style>", b"@media", b"/*", b"*/", b"xlink:",
        b"xmlns:", b"<!--", b"<![CDATA[", b"<?xml ", b"encoding=", b"&#", b"<text>",
        b"1e9")  # fmt: skip
TARGETS = {
    "a pack": Target(
        _pack, _packs, (b"PK\x01\x02", b"PK\x03\x04", b"PK\x05\x06", b"PK\x07\x08", b"../"), 6_000
    ),
    "the files of a bag": Target(
        _bag,
        _bags,
        (PARTING, b"BagIt-Version: ", b"Payload-Oxum: ", b"data/", b"%0A", b"  ", b"\r", b"\t"),
        4_000,
    ),
    "about.json": Target(
        _about, lambda: iter([packs.about()]), (b"format", b"unit", b"edition", b"\\u", b"1e9"), 500
    ),
    "a page": Target(
        _page,
        lambda: iter([_small()["pages/index.html"], b'<a href="#a"><img src="">', b"<!-- -->"]),
        (b"<script", b"href=", b"<!--", b"-->", b"</", b"<!", b"<?", b"on", b"data:", b"<meta "),
        2_000,
    ),
    "fields": Target(_fields, _units, _YAML, 6_000),
    "notes": Target(
        _notes,
        _written_notes,
        (b"](", b"]: ", b"![", b"```", b"> ", b"1. ", b"- ", b"| ", b"&amp;", b"<http", b"**"),
        3_000,
    ),
    "a drawing": Target(_picture("a.svg"), _drawings, _SVG, 4_000),
    "a JPEG": Target(
        _picture("a.jpg"),
        _photograph("JPEG"),
        (b"\xff\xd8", b"\xff\xe1", b"\xff\xda", b"\xff\xc4", b"\xff\xd9", b"Exif\0\0", b"\xff\xc2"),
        4_000,
    ),
    "a photograph of a telephone": Target(
        _picture("a.jpg"),
        lambda: (one.read_bytes() for one in sorted(HEIC.glob("*.heic"))),
        (b"ftyp", b"heic", b"mif1", b"meta", b"iloc", b"iprp", b"ipco", b"ispe", b"hvcC", b"irot",
         b"ipma", b"iref", b"grid", b"Exif"),
        3_000,
    ),
    "a PNG": Target(
        _picture("a.png"),
        _photograph("PNG"),
        (b"IHDR", b"IDAT", b"PLTE", b"tRNS", b"eXIf", b"acTL", b"fcTL", b"fdAT", b"IEND", b"iCCP"),
        4_000,
    ),
    "a WebP": Target(
        _picture("a.webp"),
        _photograph("WEBP"),
        (b"RIFF", b"WEBP", b"VP8 ", b"VP8L", b"VP8X", b"ANIM", b"ANMF", b"EXIF", b"ICCP", b"ALPH"),
        4_000,
    ),
    "a word-processor file": Target(word_files.whole, word_files.wholes, word_files.WORDS, 4_000),
    "the XML of a word-processor file": Target(
        word_files.parts, word_files.some_parts, word_files.WORDS, 4_000
    ),
}  # fmt: skip
