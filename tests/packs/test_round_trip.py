"""A pack is a bag that other readers accept, and the same unit gives the same bytes anywhere."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import zipfile
from collections.abc import Sequence
from pathlib import Path

import bagit
import pytest

from build_tools import cli
from tests.support.banks import BASE, BASE_UNIT, change
from tests.support.built_packs import EACH, made, packed, unpacked
from tests.support.built_sites import CONTENT, ROOT, files
from tests.support.packs import empty_bank

ELSEWHERE = "The Heron Ridge collection"
SMALL = (BASE_UNIT,)


def edition_of(slug: str, content: Path = CONTENT) -> str:
    """The edition that the unit says it is."""
    text = (content / "units" / slug / "unit.md").read_text(encoding="utf-8")
    return text.split("\nedition: ", 1)[1].split("\n", 1)[0]


@EACH
def test_another_bag_library_accepts_it(slug: str, tmp_path: Path) -> None:
    """bagit-python, the Library of Congress's reader of RFC 8493."""
    top = unpacked(packed(slug).data, tmp_path)
    bag = bagit.Bag(str(top))
    bag.validate()
    assert bag.version_info == (1, 0)
    assert bag.algorithms == ["sha512"]
    assert bag.info["External-Identifier"] == top.name == f"{slug}-{edition_of(slug)}"
    assert set(bag.payload_files()) == {path for path in files(top) if path.startswith("data/")}


def test_its_command_line_does_too_and_sees_a_changed_letter(tmp_path: Path) -> None:
    top = unpacked(packed("rock-pool").data, tmp_path)
    line = [sys.executable, "-m", "bagit", "--validate", str(top)]
    sound = subprocess.run(line, capture_output=True, text=True, check=False)
    assert sound.returncode == 0, sound.stderr
    change(top / "data/unit/unit.md", "title: Twelve hours in", "title: Eleven hours in")
    broken = subprocess.run(line, capture_output=True, text=True, check=False)
    assert broken.returncode == 1
    assert "unit.md" in broken.stderr


@EACH
def test_it_holds_the_unit_and_all_that_goes_with_it(slug: str, tmp_path: Path) -> None:
    found = files(unpacked(packed(slug).data, tmp_path) / "data")
    unit = files(CONTENT / "units" / slug)
    assert {path[5:]: data for path, data in found.items() if path.startswith("unit/")} == unit
    lessons = [path[:-3] for path in unit if path.startswith("lesson-")]
    assert {path for path in found if not path.startswith("unit/")} == {
        "about.json",
        "credits.txt",
        "licence.txt",
        "metadata.jsonld",
        "pages/index.html",
        *(f"pages/{name}.html" for name in ("ready", "parts", "moves", "assess")),
        *(f"pages/{name}.html" for name in lessons),
    }


@EACH
def test_unpacked_elsewhere_and_packed_again_it_has_the_same_bytes(
    slug: str, tmp_path: Path
) -> None:
    content = empty_bank(tmp_path / "another bank", CONTENT)
    top = unpacked(packed(slug).data, tmp_path)
    shutil.copytree(top / "data" / "unit", content / "units" / slug)
    again = made(content, slug)
    assert (again.name, again.data == packed(slug).data) == (packed(slug).name, True)


def another_bank(folder: Path, of: Path, slugs: Sequence[str]) -> Path:
    """The same units in a bank of another name, day and topics, the words put to it."""
    empty_bank(folder, of)
    for slug in slugs:
        shutil.copytree(of / "units" / slug, folder / "units" / slug)
    change(folder / "bank.yml", "name: Another bank", f"name: {ELSEWHERE}")
    change(folder / "bank.yml", "as_of: 2026-11-", "as_of: 2027-01-")
    change(folder / "bank.yml", "about: ", "about: Some dances. ")
    change(folder / "safety.md", "title: ", "title: Here and there, ")
    topics = folder / "vocabulary" / "topics.yml"
    lines = topics.read_text(encoding="utf-8").splitlines()
    kept = [line.split(":")[0] + ": {also: [Nothing Near]}" for line in lines if line[0] != "#"]
    topics.write_text("\n".join(kept) + "\n", encoding="utf-8")
    return folder


def packing(
    slugs: Sequence[str], content: Path, out: Path, umask: int, **environment: str
) -> dict[str, bytes]:
    """What a process of its own packs, under other circumstances."""
    done = subprocess.run(
        [
            sys.executable,
            "-m",
            "build_tools",
            "pack",
            *slugs,
            "--content",
            str(content),
            "--out",
            str(out),
        ],
        cwd=ROOT,
        env=dict(os.environ) | {"PYTHONUTF8": "1"} | environment,
        capture_output=True,
        encoding="utf-8",
        check=False,
        umask=umask if os.name == "posix" else -1,
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return files(out)


def test_nothing_but_the_unit_shows_in_the_bytes(tmp_path: Path, thorough: bool) -> None:
    """Of a small unit in the usual run, of two published ones in the long one."""
    of, slugs = (CONTENT, ("weaving-shed", "seeds-on-the-move")) if thorough else (BASE, SMALL)
    one = packing(
        slugs, of, tmp_path / "one", 0o022,
        PYTHONHASHSEED="1", TZ="Pacific/Kiritimati", LC_ALL="", LANG="C",
        SOURCE_DATE_EPOCH="1000000000",
    )  # fmt: skip
    other = packing(
        slugs, another_bank(tmp_path / "a deep" / "château", of, slugs), tmp_path / "other", 0o077,
        PYTHONHASHSEED="2", TZ="Pacific/Pago_Pago", LC_ALL="C.UTF-8",
    )  # fmt: skip
    assert list(one) == sorted(f"{slug}-{edition_of(slug, of)}.zip" for slug in slugs)
    assert list(one) == list(other)
    assert [name for name in one if one[name] != other[name]] == []
    assert all(ELSEWHERE.encode() not in data for data in other.values())


def test_the_command_writes_what_the_library_makes_and_says_where(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "to send"
    assert cli.main(["pack", "rock-pool", "--out", str(out)]) == 0
    pack = packed("rock-pool")
    assert files(out) == {pack.name: pack.data}
    assert (out / pack.name).as_posix() in capsys.readouterr().out
    assert zipfile.ZipFile(out / pack.name).testzip() is None
