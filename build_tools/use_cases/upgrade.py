"""Units of an earlier format rewritten in this one, where they lie, whole or not at all."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from build_tools.checking.check_bank import check_shape
from build_tools.disk.sure_files import write_whole
from build_tools.misuse import Misuse
from build_tools.model.build import build_unit
from build_tools.movement.whole_length import whole_counts
from build_tools.problem import Problem
from build_tools.source.folder import UnitFolder, read_unit_folder, unit_slugs
from build_tools.source.front_matter import Document, read_markdown
from build_tools.upgrading.upgrade import Upgrade, upgraded, upgraded_fields

BANK = "bank.yml"


@dataclass(frozen=True, slots=True)
class Upgraded:
    """One file: what was done, and what is left to its author. Nothing where it was up to date."""

    file: str
    done: tuple[str, ...]
    left: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class NotUpgraded:
    """A unit that was left as it is, and why; its problems where its files are not sound."""

    file: str
    reason: str
    problems: tuple[Problem, ...] = ()


def upgrade(content: Path, slugs: Sequence[str]) -> list[Upgraded | NotUpgraded]:
    """Upgrade the units named, or with no name the whole bank, its own file too.

    Each file is written whole or not at all. Raises Misuse for a unit that is not there.
    """
    there, _ = unit_slugs(content)
    for slug in slugs:
        if slug not in there:
            raise Misuse(f"there is no unit {slug} in {content.as_posix()}")
    found = [_unit(content, slug) for slug in slugs or there]
    return found if slugs else [_bank(content), *found]


def _bank(content: Path) -> Upgraded | NotUpgraded:
    path = content / BANK
    try:
        made = upgraded_fields(_text(path))
    except (OSError, ValueError):
        return NotUpgraded(BANK, "it cannot be read")
    return _written(path, BANK, made)


def _unit(content: Path, slug: str) -> Upgraded | NotUpgraded:
    folder = read_unit_folder(content, slug)
    file = f"units/{slug}/unit.md"
    problems = [*folder.problems, *check_shape(folder, any_format=True)]
    if problems or folder.unit is None:
        return NotUpgraded(file, "its files are not sound", tuple(problems))
    if folder.unit.kind is not None:
        return NotUpgraded(file, "it is not written as every program reads it; run tidy first")
    path = content / file
    text = _text(path)
    made = upgraded(text)
    if not made.done:
        return Upgraded(file, (), ())
    fresh = read_markdown(file, made.text.encode())
    if not isinstance(fresh, Document) or not _is_the_same_dance(slug, folder, fresh):
        return NotUpgraded(file, "what it would become is not the same dance; send us the unit")
    return _written(path, file, made)


def _is_the_same_dance(slug: str, folder: UnitFolder, fresh: Document) -> bool:
    """Whether the dance is sound and as long as it was: the last look before a file is written."""
    if folder.unit is None or check_shape(UnitFolder(slug, fresh, folder.lessons)):
        return False
    old, new = (build_unit(slug, one, folder.lessons, {}) for one in (folder.unit, fresh))
    return whole_counts(old.dance) == whole_counts(new.dance)


def _text(path: Path) -> str:
    # line breaks as they are: what is not changed stays byte for byte
    return path.read_bytes().decode("utf-8")


def _written(path: Path, file: str, made: Upgrade) -> Upgraded:
    if made.done:
        write_whole(path, made.text.encode("utf-8"))
    return Upgraded(file, tuple(made.done), tuple(made.left))
