"""The same content gives the same bytes, whoever builds it, where, when and in what order."""

from __future__ import annotations

import os
import random
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.support.built_sites import CONTENT, ROOT, build, files

CLOCK = ROOT / "tests" / "support" / "shifted_clock.py"


def copied(content: Path, seed: int) -> Path:
    """A copy of the bank's content whose files were made in an order of chance."""
    paths = [path for path in sorted(CONTENT.rglob("*")) if path.is_file()]
    random.Random(seed).shuffle(paths)
    for path in paths:
        copy = content / path.relative_to(CONTENT)
        copy.parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(path, copy)
        os.utime(copy, (seed, seed))
    return content


@pytest.fixture(scope="module")
def two(tmp_path_factory: pytest.TempPathFactory) -> tuple[dict[str, bytes], dict[str, bytes]]:
    """The files of two builds that differ in everything but the content."""
    one = tmp_path_factory.mktemp("one")
    build(
        copied(one / "content", 1),
        one / "site",
        {"PYTHONHASHSEED": "1", "TZ": "Pacific/Kiritimati", "LC_ALL": "", "LANG": "C"}
        | {"LOGNAME": "quillfeather", "USER": "quillfeather", "SOURCE_DATE_EPOCH": "1000000000"},
    )
    other = tmp_path_factory.mktemp("other") / "a deep" / "château" / "of" / "folders"
    build(
        copied(other / "content", 2),
        other / "site",
        {"PYTHONHASHSEED": "2", "TZ": "Pacific/Pago_Pago", "LC_ALL": "C.UTF-8", "LANG": "C.UTF-8"}
        | {"LOGNAME": "thistledown", "USER": "thistledown", "SOURCE_DATE_EPOCH": "1500000000"},
    )
    return files(one / "site"), files(other / "site")


def test_two_builds_are_equal_byte_by_byte(
    two: tuple[dict[str, bytes], dict[str, bytes]],
) -> None:
    one, other = two
    assert list(one) == list(other)
    assert [path for path in one if one[path] != other[path]] == []


def test_a_build_400_days_later_is_equal_too(
    two: tuple[dict[str, bytes], dict[str, bytes]], tmp_path: Path
) -> None:
    line = [sys.executable, str(CLOCK), "build_tools", "site", "--content", str(CONTENT)]
    subprocess.run([*line, "--out", str(tmp_path / "site")], cwd=ROOT, check=True)
    later = files(tmp_path / "site")
    assert [path for path in later if later[path] != two[0].get(path)] == []


def test_the_shifted_clock_is_shifted() -> None:
    """Else the test above could not fail: a module of Python's own tells the shifted year."""
    told = subprocess.run(
        [sys.executable, str(CLOCK), "calendar"],
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    plain = subprocess.run(
        [sys.executable, "-m", "calendar"], capture_output=True, text=True, check=True
    ).stdout
    assert int(told.split()[0]) > int(plain.split()[0])


def test_no_file_tells_who_built_it_or_where(
    two: tuple[dict[str, bytes], dict[str, bytes]],
) -> None:
    for path, text in two[0].items():
        for told in (str(ROOT), ROOT.as_uri(), str(Path.home()), "quillfeather", "/content/units"):
            assert len(told) < 6 or told.encode() not in text, f"{path} holds {told}"
