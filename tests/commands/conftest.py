"""Tests of commands ask what becomes of pages, and draw the same ones once."""

from __future__ import annotations

import pytest

from tests.support.drawn_once import drawn_once


@pytest.fixture(autouse=True)
def _pages_drawn_once(monkeypatch: pytest.MonkeyPatch) -> None:
    drawn_once(monkeypatch)
