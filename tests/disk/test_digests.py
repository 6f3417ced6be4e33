"""A file of this software is read once, and again as soon as it may have changed."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from build_tools.disk import digests
from build_tools.disk.digests import digest_of_file, digest_of_files, digest_once, files_below

LONG_AGO = 1_600_000_000


@pytest.fixture
def file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setattr(digests, "_known", {})
    # as if the tests' own files had been there for long
    monkeypatch.setattr(digests, "DOUBT_NANOSECONDS", -60_000_000_000)
    path = tmp_path / "page.html"
    path.write_bytes(b"one")
    os.utime(path, (LONG_AGO, LONG_AGO))
    return path


def test_it_is_read_once(file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    found = digest_once(file)
    monkeypatch.setattr(digests, "digest_of_file", lambda _: pytest.fail("read again"))
    assert digest_once(file) == found


def test_other_words_of_the_same_length_and_time_are_seen(file: Path) -> None:
    """Where the system keeps a time that programs cannot set."""
    before = digest_once(file)
    other = file.with_name("other")
    other.write_bytes(b"two")
    os.utime(other, (LONG_AGO, LONG_AGO))
    other.replace(file)
    assert digest_once(file) == digest_of_file(file) != before


def test_what_has_just_been_written_is_read_each_time(
    file: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(digests, "DOUBT_NANOSECONDS", 60_000_000_000)
    digest_once(file)
    assert not digests._known


def test_a_name_counts_as_much_as_the_bytes(file: Path) -> None:
    first = digest_of_files([file], file.parent)
    assert first == digest_of_files([file], file.parent, digest_once)
    renamed = file.rename(file.with_name("sheet.html"))
    assert digest_of_files([renamed], file.parent) != first


def test_what_python_keeps_for_itself_is_no_file_of_ours(tmp_path: Path) -> None:
    for name in ("one.py", "inside/two.py", "__pycache__/one.pyc", "inside/__pycache__/two.pyc"):
        path = tmp_path / name
        path.parent.mkdir(exist_ok=True)
        path.write_bytes(b"")
    assert {path.name for path in files_below(tmp_path)} == {"one.py", "two.py"}
