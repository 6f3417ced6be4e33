"""The oldest Python that the bank runs on is said in several places, and is the same in all."""

from __future__ import annotations

import re
import sys
import tomllib
from pathlib import Path

import pytest

from build_tools import __main__ as starter
from build_tools.project import lock

ROOT = Path(__file__).resolve().parents[2]
PYPROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
OLDEST = PYPROJECT["project"]["requires-python"].removeprefix(">=")


def test_pyproject_says_the_oldest_alone() -> None:
    assert re.fullmatch(r"3\.[0-9]+", OLDEST)


def test_the_starter_refuses_what_is_older(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    assert ".".join(map(str, starter.OLDEST_PYTHON)) == OLDEST
    monkeypatch.setattr(sys, "version_info", (3, starter.OLDEST_PYTHON[1] - 1, 9))
    assert starter.main(["check"]) == 1
    assert f"Python {OLDEST} or later is needed" in capsys.readouterr().err


def test_the_lock_is_made_for_it() -> None:
    assert lock.OLDEST_PYTHON == OLDEST


def test_checkers_read_the_code_as_it_does() -> None:
    assert PYPROJECT["tool"]["ruff"]["target-version"] == f"py{OLDEST.replace('.', '')}"
    assert PYPROJECT["tool"]["mypy"]["python_version"] == OLDEST


def test_the_readme_says_it() -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    assert f"Python {OLDEST} or later is all that has to be there" in readme
