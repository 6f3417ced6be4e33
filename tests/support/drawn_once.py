"""Pages drawn once for all tests that publish the same unit of the same bank.

What is drawn follows from what is given alone, which tests/building holds; tests of what a command
does with its pages need not draw them anew each time, which takes longer than all else they do.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence
from pathlib import Path

import pytest

from build_tools.building import drawing, shared_files
from build_tools.building.shared_files import shared_files as draw_shared
from build_tools.building.unit_files import unit_files as draw_unit
from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.pages.assemble import Listed
from build_tools.source.media_files import lies_in

_kept: dict[str, list[tuple[object, dict[str, bytes]]]] = {}


def drawn_once(patch: pytest.MonkeyPatch) -> None:
    """Let what is drawn be drawn once, as long as `patch` lasts."""
    patch.setattr(drawing, "unit_files", _unit_files)
    patch.setattr(shared_files, "shared_files", _shared_files)


def _unit_files(
    bank: Bank,
    unit: Unit,
    content: Path,
    published: Collection[str] = (),
    *,
    keep: bool = False,
) -> dict[str, bytes]:
    folder = content / "units" / unit.slug
    # a unit is what its files say
    files = {one.name: one.read_bytes() for one in sorted(folder.iterdir()) if one.is_file()}
    media = {name: lies_in(folder, name).read_bytes() for name in unit.media}
    given = (bank, files, media, sorted(published), keep)
    return _once(unit.slug, given, lambda: draw_unit(bank, unit, content, published, keep=keep))


def _shared_files(bank: Bank, units: Sequence[Listed]) -> dict[str, bytes]:
    return _once("", (bank, tuple(units)), lambda: draw_shared(bank, units))


def _once(name: str, given: object, draw: Callable[[], dict[str, bytes]]) -> dict[str, bytes]:
    drawn_before = _kept.setdefault(name, [])
    found = next((made for known, made in drawn_before if known == given), None)
    if found is None:
        found = draw()
        drawn_before.append((given, found))
    return dict(found)
