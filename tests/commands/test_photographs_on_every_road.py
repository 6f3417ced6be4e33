"""Photographs read back by another reader (Pillow) from site, edition, pack and a bank that
took them in: no place, no name, no comment, no small copy of themselves goes with them.
"""

from __future__ import annotations

import base64
import io
import random
import re
from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path

import pytest
from PIL import Image, PngImagePlugin, TiffImagePlugin

from build_tools import cli
from tests.support.banks import BASE_UNIT, change, copy_base
from tests.support.built_packs import unpacked
from tests.support.built_sites import files
from tests.support.judged import judging_once
from tests.support.packs import SLUG, empty_bank, pack, payload, unit_files, written

WORDS = (b"Morning class", b"Hall Street", b"by the piano")
"""A name, a place in words and a comment; the place in numbers is in the Exif data."""
EXIF_NAME, EXIF_PLACE, EXIF_ORIENTATION = 0x013B, 0x8825, 0x0112
KINDS = {"low-tide": ("jpg", "JPEG"), "twelve-hours": ("png", "PNG")}
_INSIDE = re.compile(rb"data:image/(?:png|jpeg|webp);base64,([A-Za-z0-9+/=]+)")
_NOTED = ("comment", "xmp", "XML:com.adobe.xmp", "Author", "Comment")
_UPRIGHT = (24, 16)


def exif() -> Image.Exif:
    """Who, where, lying on its side, and a small copy (which Pillow writes where it is told)."""
    told = Image.Exif()
    told[EXIF_NAME] = WORDS[0].decode()
    told[EXIF_ORIENTATION] = 6
    place = told.get_ifd(EXIF_PLACE)
    place[1], place[2] = "N", tuple(TiffImagePlugin.IFDRational(n) for n in (51, 30, 7))
    return told


def with_small_copy(jpeg: bytes) -> bytes:
    """A JPEG with a JFIF extension that holds a JPEG thumbnail (JFIF 1.02, extension code 0x10)."""
    small = io.BytesIO()
    Image.new("RGB", (4, 4), "blue").save(small, "JPEG", comment=WORDS[1])
    body = b"JFXX\0\x10" + small.getvalue()
    return jpeg[:2] + b"\xff\xe0" + (len(body) + 2).to_bytes(2, "big") + body + jpeg[2:]


def photograph(kind: str) -> bytes:
    """A picture of 16 by 24 points that lies on its side, with all that a camera adds."""
    seen, made = Image.linear_gradient("L").resize((16, 24)).convert("RGB"), io.BytesIO()
    if kind == "JPEG":
        seen.save(made, kind, exif=exif(), comment=WORDS[2], xmp=WORDS[1])
        return with_small_copy(made.getvalue())
    told = PngImagePlugin.PngInfo()
    told.add_text("Author", WORDS[0].decode())
    told.add_itxt("XML:com.adobe.xmp", WORDS[1].decode())
    told.add_text("Comment", WORDS[2].decode(), zip=True)
    seen.save(made, kind, exif=exif(), pnginfo=told)
    return made.getvalue()


def with_photographs(
    unit: Mapping[str, bytes], kinds: Mapping[str, tuple[str, str]]
) -> dict[str, bytes]:
    """A unit's files with photographs in place of its drawings."""
    made = dict(unit)
    for name, (ending, kind) in kinds.items():
        del made[f"media/{name}.svg"]
        made[f"media/{name}.{ending}"] = photograph(kind)
        told = made["unit.md"].replace(f"{name}.svg".encode(), f"{name}.{ending}".encode())
        made["unit.md"] = told
    return made


ITEM = """    - title: {name}
      by: The bank
      licence: CC0-1.0
      source: Ours
      file: media/{name}.{ending}
      text_version: From dark to light.
"""


@pytest.fixture
def content(tmp_path: Path) -> Path:
    """A bank whose one unit shows two photographs as they came out of a camera."""
    bank = copy_base(tmp_path / "bank")
    folder = bank / "units" / BASE_UNIT
    items = ""
    for name, (ending, kind) in KINDS.items():
        (folder / f"media/{name}.{ending}").write_bytes(photograph(kind))
        items += ITEM.format(name=name, ending=ending)
    change(folder / "unit.md", "  items:\n", f"  items:\n{items}")
    return bank


def photographs(found: Mapping[str, bytes]) -> Iterator[tuple[str, bytes]]:
    """Every photograph in the files, those within pages and drawings too."""
    for path, data in found.items():
        if path.endswith((".jpg", ".png", ".webp")):
            yield path, data
        for n, inside in enumerate(_INSIDE.findall(data)):
            yield f"{path}, picture {n}", base64.b64decode(inside)


def hidden(data: bytes) -> list[str]:
    """What the picture carries beside its points, as another reader tells it."""
    with Image.open(io.BytesIO(data)) as picture:
        picture.load()
        told = [f"exif {tag}" for tag in picture.getexif() if tag != EXIF_ORIENTATION]
        told += [f"place {tag}" for tag in picture.getexif().get_ifd(EXIF_PLACE)]
        told += [key for key in _NOTED if picture.info.get(key)]
        if picture.getexif().get(EXIF_ORIENTATION, 1) != 1:
            told.append("on its side")
    if b"JFXX" in data:
        told.append("a small copy")
    return told


def look(found: Mapping[str, bytes], least: int) -> None:
    """Fail for a photograph that says more than is seen, and where none is found to look at."""
    ours = [(path, data) for path, data in photographs(found) if _size(data) == _UPRIGHT]
    assert len(ours) >= least, sorted(found)
    assert {path: told for path, data in ours if (told := hidden(data))} == {}
    for path, data in found.items():
        assert [word for word in WORDS if word in data] == [], path


def _size(data: bytes) -> tuple[int, int]:
    with Image.open(io.BytesIO(data)) as picture:
        return picture.size


def test_the_photographs_hide_something() -> None:
    assert {"place 1", "comment", "a small copy", "on its side"} <= set(hidden(photograph("JPEG")))
    assert {"place 1", "Author", "on its side"} <= set(hidden(photograph("PNG")))
    assert set(WORDS) == {word for word in WORDS if word in photograph("JPEG")}


def test_the_site(content: Path, tmp_path: Path) -> None:
    out = tmp_path / "site"
    assert cli.main(["site", "--content", str(content), "--out", str(out)]) == 0
    look(files(out), 2)


def test_an_edition(content: Path, tmp_path: Path) -> None:
    shared = tmp_path / "shared"
    assert cli.main(["publish", str(shared), "--content", str(content)]) == 0
    look(files(shared), 2)


def test_a_pack(content: Path, tmp_path: Path) -> None:
    out = tmp_path / "packs"
    assert cli.main(["pack", BASE_UNIT, "--content", str(content), "--out", str(out)]) == 0
    (file,) = out.iterdir()
    look(files(unpacked(file.read_bytes(), tmp_path / "bag")), 4)


def test_what_was_taken_in(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A pack that another program made, with the photographs as they were."""
    judging_once(monkeypatch)
    sent = {name: data for name, data in payload().items() if not name.startswith("unit/")}
    kinds = {"boat": KINDS["low-tide"]}
    unit = with_photographs(unit_files(), kinds)
    sent |= {f"unit/{name}": data for name, data in unit.items()}
    bank = empty_bank(tmp_path / "content")
    file = written(tmp_path, pack(sent))
    assert cli.main(["take-in", str(file), "--yes", "--content", str(bank)]) == 0
    look(files(bank / "units" / SLUG), 1)


def test_a_picture_within_a_drawing(content: Path, tmp_path: Path) -> None:
    inside = base64.b64encode(photograph("JPEG")).decode()
    file = content / "units" / BASE_UNIT / "unit.md"
    file.write_text(file.read_text("utf-8").replace("low-tide.jpg", "low-tide.svg"), "utf-8")
    (file.parent / "media" / "low-tide.jpg").unlink()
    (file.parent / "media" / "low-tide.svg").write_text(
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 24 16"><image width="24" height="16" '
        f'href="data:image/jpeg;base64,{inside}"/></svg>',
        "utf-8",
    )
    out = tmp_path / "packs"
    assert cli.main(["pack", BASE_UNIT, "--content", str(content), "--out", str(out)]) == 0
    (made,) = out.iterdir()
    look(files(unpacked(made.read_bytes(), tmp_path / "bag")), 2)


NAME, PLAIN = "Bridge Photo 1.JPG", "media/bridge-photo-1.jpg"


@cache
def of_a_telephone() -> bytes:
    """A large photograph that lies on its side, with a place and a name in it."""
    points = random.Random(7).randbytes(1000 * 1400)
    seen, made = Image.frombytes("L", (1000, 1400), points).convert("RGB"), io.BytesIO()
    seen.save(made, "JPEG", quality=95, exif=exif(), comment=WORDS[2])
    return made.getvalue()


@pytest.fixture
def with_telephone(tmp_path: Path) -> Path:
    """A bank with a photograph as it came, under the name that it came with."""
    bank = copy_base(tmp_path / "bank")
    folder = bank / "units" / BASE_UNIT
    (folder / "media" / NAME).write_bytes(of_a_telephone())
    item = ITEM.format(name="low-tide", ending="jpg").replace("media/low-tide.jpg", f"media/{NAME}")
    change(folder / "unit.md", "  items:\n", f"  items:\n{item}")
    return bank


def test_a_telephones_photograph_under_its_own_name(
    with_telephone: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Upright, in 300 kB at most, nothing hidden, in site and pack; and a line that says so."""
    given = ["--content", str(with_telephone)]
    assert cli.main(["check", *given]) == 0
    said = capsys.readouterr().out
    assert f"{BASE_UNIT}/media/{NAME}:1:1: note: this is published as bridge-photo-1.jpg" in said
    assert re.search(r"turned upright, in \d+ kB \(here it has [\d.]+ MB\), without what", said)
    assert f"read as {PLAIN}" in said
    assert cli.main(["site", *given, "--out", str(tmp_path / "site")]) == 0
    assert cli.main(["pack", BASE_UNIT, *given, "--out", str(tmp_path / "packs")]) == 0
    (file,) = (tmp_path / "packs").iterdir()
    packed = files(unpacked(file.read_bytes(), tmp_path / "bag"))
    found = {**files(tmp_path / "site"), **packed}
    pictures = {path: data for path, data in found.items() if path.endswith(PLAIN)}
    assert len(pictures) == 2, sorted(pictures)
    inside = dict(photographs({path: packed[path] for path in packed if path.endswith(".html")}))
    assert inside
    for path, data in {**pictures, **inside}.items():
        assert len(data) <= 300_000, path
        assert hidden(data) == [], path
        width, height = _size(data)
        assert width > height, path
    for path, data in found.items():
        assert [word for word in WORDS if word in data] == [], path
        assert NAME.encode() not in data, path
    assert (with_telephone / "units" / BASE_UNIT / "media" / NAME).read_bytes() == of_a_telephone()
