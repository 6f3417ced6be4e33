"""Packs of the published units, made once a worker."""

from __future__ import annotations

import io
import zipfile
from functools import cache
from pathlib import Path

import pytest

from build_tools.building.pack import PackFile
from build_tools.use_cases.pack import pack
from tests.support.built_sites import CONTENT

SLUGS = ("rock-pool", "seeds-on-the-move", "weaving-shed")
EACH = pytest.mark.parametrize(
    "slug", [SLUGS[0], *(pytest.param(slug, marks=pytest.mark.thorough) for slug in SLUGS[1:])]
)
"""The unit that most tests look at in the usual run, and each in the long one."""


def made(content: Path, slug: str) -> PackFile:
    """The pack of a unit that can be packed."""
    found = pack(content, slug)
    assert isinstance(found, PackFile), found
    return found


@cache
def packed(slug: str) -> PackFile:
    """The pack of a published unit."""
    return made(CONTENT, slug)


def unpacked(data: bytes, folder: Path) -> Path:
    """The bag of a pack, unpacked in `folder` by Python's own reader."""
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        archive.extractall(folder)
        return folder / archive.namelist()[0].partition("/")[0]
