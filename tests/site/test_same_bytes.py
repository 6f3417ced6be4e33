"""The same content gives the same bytes, whoever builds it, where, when and in what order.

In the usual run the content of two units, in the long one all of it.
"""

from __future__ import annotations

import os
import random
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from build_tools import cli
from tests.support.built_sites import CONTENT, ROOT, files

TWO = ("kite-and-string", "after-home-time")
"""They are small, and one has a recording."""
ELSEWHERE = ("quillfeather", "/content/units", "château")
CLOCK = ROOT / "tests" / "support" / "shifted_clock.py"


def copied(source: Path, content: Path, seed: int) -> Path:
    """A copy of a bank's content whose files were made in an order of chance."""
    paths = [path for path in sorted(source.rglob("*")) if path.is_file()]
    random.Random(seed).shuffle(paths)
    for path in paths:
        copy = content / path.relative_to(source)
        copy.parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(path, copy)
        os.utime(copy, (seed, seed))
    return content


@pytest.fixture(scope="module")
def one(request: pytest.FixtureRequest, thorough: bool, content: Path) -> Path:
    """A site built in the usual way; in the usual run by this process, which has done much else."""
    if thorough:
        whole: Path = request.getfixturevalue("site")
        return whole
    out = content.parent / "site"
    assert cli.main(["site", "--content", str(content), "--out", str(out)]) == 0
    return out


@pytest.fixture(scope="module")
def content(thorough: bool, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """What both are built of; units are drawn apart from each other, and then listed."""
    if thorough:
        return CONTENT
    content = tmp_path_factory.mktemp("one") / "content"
    shutil.copytree(CONTENT, content, ignore=lambda _, names: set(names) & {"units"})
    for slug in TWO:
        shutil.copytree(CONTENT / "units" / slug, content / "units" / slug)
    return content


@pytest.fixture(scope="module")
def other(content: Path, tmp_path_factory: pytest.TempPathFactory) -> dict[str, bytes]:
    """The files of a build that differs from `one` in everything but the content.

    It is made 400 days later, by somebody else, elsewhere, from files made in another order.
    """
    room = tmp_path_factory.mktemp("other") / "a deep" / "château" / "of" / "folders"
    copy = copied(content, room / "content", 2)
    line = [sys.executable, str(CLOCK), "build_tools", "site", "--content", str(copy)]
    subprocess.run(
        [*line, "--out", str(room / "site")],
        cwd=ROOT,
        env=dict(os.environ)
        | {"PYTHONHASHSEED": "2", "TZ": "Pacific/Pago_Pago", "LC_ALL": "C.UTF-8", "LANG": "C.UTF-8"}
        | {"LOGNAME": "quillfeather", "USER": "quillfeather", "SOURCE_DATE_EPOCH": "1500000000"},
        check=True,
    )
    return files(room / "site")


def test_two_builds_are_equal_byte_by_byte(one: Path, other: dict[str, bytes]) -> None:
    usual = files(one)
    assert list(usual) == list(other)
    assert [path for path in usual if usual[path] != other[path]] == []


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


def test_no_file_tells_who_built_it_or_where(other: dict[str, bytes]) -> None:
    for path, text in other.items():
        for told in (str(ROOT), ROOT.as_uri(), str(Path.home()), *ELSEWHERE):
            assert len(told) < 6 or told.encode() not in text, f"{path} holds {told}"
