"""`adapt`: a unit of one's own from one that is here, with its line and its licence kept."""

from __future__ import annotations

import shutil
from pathlib import Path

from build_tools.adapting.adapt import Adaptation, NotAdapted, adapted, licence_for
from build_tools.checking.check_bank import check_folder
from build_tools.checking.report_text import as_text
from build_tools.commands.unit_folder import free_folder, written_whole


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
    goal = free_folder(content, slug)
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
    wanted = Adaptation(
        title=title or f"{found.title}, adapted",
        publisher=publisher or report.bank.name,
        day=report.bank.as_of,
        licence=kept,
    )
    old = content / "units" / source
    text = (old / "unit.md").read_text(encoding="utf-8")
    with written_whole(goal) as room:
        shutil.copytree(old, room, ignore=shutil.ignore_patterns(".*"), dirs_exist_ok=True)
        fresh = adapted(text, found, wanted)
        (room / "unit.md").write_text(fresh, encoding="utf-8", newline="\n")
    print(f"{goal.as_posix()} is your own draft under {kept}, made from {found.title}.")
    print("Write what you changed in it under `adapted_from`, then run `check`.")
    return 0
