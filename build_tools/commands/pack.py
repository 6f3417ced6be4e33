"""`pack`: units as files for other schools."""

from __future__ import annotations

from pathlib import Path

from build_tools.building.pack import NotPacked, pack_of
from build_tools.checking.report_text import as_text
from build_tools.sure_files import write_whole


def run(content: Path, units: list[str], out: Path) -> int:
    """Pack each unit, named by its slug or its folder, into the folder `out`.

    Returns 0 when all are packed; 1 when one cannot be: the others are packed all the same.
    """
    code = 0
    for slug in dict.fromkeys(Path(unit).name for unit in units):
        made = pack_of(content, slug)
        if isinstance(made, NotPacked):
            if made.problems:
                print(as_text(sorted(made.problems), f"{content.name}/"))
            print(f"{slug} was not packed: {made.reason}")
            code = 1
            continue
        goal = out / made.name
        try:
            out.mkdir(parents=True, exist_ok=True)
            write_whole(goal, made.data)
        except OSError as error:
            print(f"{goal.as_posix()} could not be written ({error.strerror}); nothing is changed")
            return 1
        print(f"packed {goal.as_posix()}: {len(made.data) / 1000:,.0f} kB, send it as it is")
    return code
