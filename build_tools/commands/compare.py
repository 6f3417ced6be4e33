"""`compare`: what changed between two editions of a unit, in a reader's words."""

from __future__ import annotations

from pathlib import Path

from build_tools.commands.misuse import Misuse
from build_tools.comparing.change import Weight
from build_tools.comparing.compare import compare
from build_tools.comparing.edition import called_for, newer
from build_tools.reports.text import as_text
from build_tools.unit_texts import text_of_folder

_HEADINGS = {
    Weight.DANCE: "What pupils make or dance, and what you may do with the unit",
    Weight.TEACHING: "How lessons run",
    Weight.WORDING: "Words",
}


def run(old: Path, new: Path) -> int:
    """Print what changed between the units in the folders `old` and `new`.

    Returns 0 when both could be read, 1 when one has errors of shape.
    """
    texts = []
    for folder in (old, new):
        if not (folder / "unit.md").is_file():
            raise Misuse(f"{folder} holds no unit.md; name the folder of a unit")
        found = text_of_folder(folder)
        if isinstance(found, list):
            print(as_text(found, ""))
            return 1
        texts.append(found)
    before, after = texts
    changes = compare(before, after)
    if not changes:
        print("nothing changed but, perhaps, the edition and its date")
    for weight, heading in _HEADINGS.items():
        lines = [change.sentence for change in changes if change.weight == weight]
        if lines:
            print(heading)
            print(*(f"  {line}" for line in lines), sep="\n")
    here, there = str(before.fields["edition"]), str(after.fields["edition"])
    wanted = called_for(here, changes)
    if there == wanted or (newer(there, wanted) and changes):
        print(f"from edition {here} to {there}, as these changes call for")
    else:
        print(f"these changes call for edition {wanted}; the unit says {there}")
    return 0
