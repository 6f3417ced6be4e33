"""What is wrong in a published folder is seen."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from build_tools.publishing.verify import verify


@pytest.mark.parametrize(
    ("damage", "told"),
    [
        (lambda e: (e / "index.html").write_text("x"), "index.html was changed"),
        (lambda e: (e / "index.html").unlink(), "index.html is missing"),
        (lambda e: (e / "more.html").write_text("x"), "more.html was added"),
        (lambda e: (e / "manifest-sha512.txt").unlink(), "manifest-sha512.txt is missing"),
        (lambda e: (e / "manifest-sha512.txt").write_text("?"), "cannot be read"),
        (lambda e: (e.parents[1] / "current.js").write_text("?"), "pointer current.js"),
        (lambda e: e.rename(e.with_name("2026-11-25-9")), "2026-11-25-1 is not there"),
        (lambda e: (e.parents[1] / "index.html").unlink(), "index.html has no entry page"),
        (
            lambda e: shutil.copy(e.parents[1] / "index.html", e.parents[1] / "old.html"),
            "old.html leads to no page",
        ),
    ],
)
def test_verify_sees_every_kind_of_damage(share: Path, damage: object, told: str) -> None:
    assert callable(damage)
    damage(share / "editions" / "2026-11-25-1")
    assert any(told in line for line in verify(share))
