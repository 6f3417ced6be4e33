"""A bank of two small units to build and change, and its site built by what changed or anew."""

from __future__ import annotations

import shutil
from pathlib import Path

from build_tools.building.ready import ready_to_publish
from build_tools.building.site import Built, Wanted, build_site
from build_tools.checking.quick_check import quick_check
from tests.support.banks import BASE_UNIT, change, copy_base


def two_units(folder: Path) -> Path:
    """The bank in `folder`/content: the base unit and a copy of it, which leads to the first."""
    bank = copy_base(folder)
    add_unit(bank, "ink-drops", "Ink drops")
    lead(bank, "ink-drops", BASE_UNIT)
    return bank


def add_unit(bank: Path, slug: str, title: str) -> None:
    """A copy of the base unit under another name."""
    shutil.copytree(bank / "units" / BASE_UNIT, bank / "units" / slug)
    change(bank / "units" / slug / "unit.md", "\ntitle: Paper boats\n", f"\ntitle: {title}\n")


def lead(bank: Path, slug: str, other: str) -> None:
    """Let the unit `slug` lead to the unit `other`."""
    file = bank / "units" / slug / "unit.md"
    kept = [
        line
        for line in file.read_text(encoding="utf-8").split("\n")
        if not line.startswith("leads_to:")
    ]
    at = next(n for n, line in enumerate(kept) if line.startswith("summary:"))
    kept.insert(at, f"leads_to: {{in_words: Dances of water, units: [{other}]}}")
    file.write_text("\n".join(kept), encoding="utf-8")


def wanted(bank: Path, kept: Path) -> Wanted:
    """What can be published of the bank."""
    ready = ready_to_publish(quick_check(bank, kept / "checked.json"), bank)
    assert ready.wanted is not None, [str(one) for one in ready.problems]
    return ready.wanted


def built(bank: Path, out: Path, kept: Path) -> Built:
    """The bank built into `out` by what changed since the last time."""
    return build_site(wanted(bank, kept), out, kept / "built.site")


def built_anew(bank: Path, out: Path, kept: Path) -> Path:
    """The bank built into `out` with nothing kept of its pages."""
    build_site(wanted(bank, kept), out)
    return out
