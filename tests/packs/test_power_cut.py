"""The power cut at every moment of taking a unit in: the old one whole or the new one whole."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from build_tools.packs.taking_in import journal
from build_tools.packs.taking_in.placing import Placing
from tests.support.packs import empty_bank
from tests.support.power_cut import every_end, make, recorded

SLUG = "rock-pool"
OLD = {
    "unit.md": b"---\nedition: 1.0.0\npublisher: A\n---\nold",
    "lesson-1.md": b"old lesson",
    "media/old.svg": b"<svg/>",
}
NEW = {
    "unit.md": b"---\nedition: 1.1.0\npublisher: A\n---\nnew",
    "lesson-1.md": b"new lesson",
    "media/new.svg": b"<svg> </svg>",
    "media/other.svg": b"<svg>  </svg>",
}


def files_in(folder: Path) -> dict[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def beside(content: Path, name: str) -> Path:
    return content / "earlier" / name


@pytest.mark.parametrize("before", [True, False], ids=["a newer edition", "a new unit"])
def test_a_cut_at_any_moment_leaves_a_whole_unit(
    tmp_path: Path, thorough: bool, before: bool
) -> None:
    content = empty_bank(tmp_path / "content")
    plan = Placing("new", f"units/{SLUG}")
    if before:
        journal.take(content, OLD, plan)
        plan = Placing("newer", f"units/{SLUG}", moved=f"earlier/{SLUG}-1.0.0")
    with recorded(content) as found:
        journal.take(content, NEW, plan)
    assert files_in(content / "units" / SLUG) == NEW
    after = tmp_path / "after the cut"
    met = []
    for cut, state in every_end(found, thorough):
        make(state, after)
        where = f"after step {cut} of {len(found.steps)}"
        with journal.alone_in(after):
            pass
        here = files_in(after / "units" / SLUG)
        assert here in ([OLD, NEW] if before else [{}, NEW]), where
        kept = files_in(beside(after, f"{SLUG}-1.0.0"))
        assert kept == (OLD if before and here == NEW else {}), where
        assert not (after / journal.ROOM).exists(), where
        met.append(here)
        shutil.rmtree(after)
    assert NEW in met
    assert (OLD if before else {}) in met
