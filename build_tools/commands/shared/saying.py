"""What a check found, said to whoever typed the command."""

from __future__ import annotations

import sys
from pathlib import Path

from build_tools.building.ready import Ready
from build_tools.checking.report_text import as_text, counted, skipped_line
from build_tools.views.words.plain_words import how_many


def say_skipped(skipped: int) -> None:
    """Say on the side that some rules were not run, where that is so."""
    if note := skipped_line(skipped):
        print(note, file=sys.stderr)


def say_ready(ready: Ready, skipped: int, content: Path, otherwise: str) -> None:
    """Say the problems of a bank that is to be published, of drafts with errors in one line.

    Where it cannot be, `otherwise` is said too: what was not done, and what stands.
    """
    if ready.problems:
        print(as_text(ready.problems, f"{content.name}/"))
    if ready.faulty:
        named = ", ".join(
            f"{content.name}/units/{slug} ({how_many(errors, 'error')})"
            for slug, errors in ready.faulty.items()
        )
        print(f"left out, being drafts with errors: {named}; `check` says what to mend")
    for slug, errors in ready.left.items():
        where = f"{content.name}/units/{slug}"
        print(f"left out: {where} ({how_many(errors, 'error')}); `check {where}` says what to mend")
    if ready.wanted is None:
        say_skipped(skipped)
        print(f"{counted(ready.problems)}; {otherwise}")
