"""`adapt`: a unit of one's own from one that is here, with its line and its licence kept."""

from __future__ import annotations

import shutil
import tempfile
from pathlib import Path

from build_tools.adapting.adapt import NotAdapted, Wanted, adapted, licence_for
from build_tools.commands.misuse import Misuse
from build_tools.pipeline import check_folder
from build_tools.reports.text import as_text
from build_tools.source.folder import MOST_SLUG, is_slug

_READABLE = 0o755


def run(
    content: Path,
    unit: str,
    slug: str,
    *,
    title: str | None = None,
    licence: str | None = None,
    publisher: str | None = None,
) -> int:
    """Write `content`/units/`slug`, made from `unit`, as a draft.

    Returns 0 when it is there; 1 when the unit has faults of shape or its licence forbids it.
    Raises Misuse, with nothing written, where the name cannot be used or is taken.
    """
    goal = _free(content, slug)
    report = check_folder(content)
    source = Path(unit).name
    found = next((u for u in report.bank.units if u.slug == source), None) if report.bank else None
    if report.bank is None or found is None:
        wrong = [p for p in report.problems if p.file.startswith(f"units/{source}/")]
        if wrong:
            print(as_text(wrong, f"{content.name}/"))
        print(f"there is no sound unit {source} in {content.as_posix()}; nothing was written")
        return 1
    kept = licence_for(found, licence)
    if isinstance(kept, NotAdapted):
        print(f"{kept.reason}; nothing was written")
        return 1
    wanted = Wanted(
        title or f"{found.title}, adapted", publisher or report.bank.name, report.bank.as_of
    )
    old = content / "units" / source
    text = (old / "unit.md").read_text(encoding="utf-8")
    _write(old, goal, adapted(text, found, kept, wanted))
    print(f"{goal.as_posix()} is your own draft under {kept}, made from {found.title}.")
    print("Write what you changed in it under `adapted_from`, then run `check`.")
    return 0


def _free(content: Path, slug: str) -> Path:
    if not is_slug(slug):
        raise Misuse(
            f"`{slug}` cannot name a folder everywhere; use small letters, figures and single "
            f"hyphens, {MOST_SLUG} at most, such as rock-pool"
        )
    goal = content / "units" / slug
    if goal.exists() or goal.is_symlink():
        raise Misuse(f"there is a unit {slug} already; choose another name")
    return goal


def _write(old: Path, goal: Path, text: str) -> None:
    """Copy the old unit's folder, with the new unit.md, all at once or not at all."""
    room = Path(tempfile.mkdtemp(prefix=".adapting-", dir=goal.parent))
    try:
        folder = room / goal.name
        shutil.copytree(old, folder, ignore=shutil.ignore_patterns(".*"))
        (folder / "unit.md").write_text(text, encoding="utf-8", newline="\n")
        folder.chmod(_READABLE)
        folder.rename(goal)
    except OSError as error:
        raise Misuse(f"{goal} cannot be written ({error.strerror}); nothing is changed") from error
    finally:
        shutil.rmtree(room, ignore_errors=True)
