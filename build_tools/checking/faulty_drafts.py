"""Drafts that have errors: they stop nobody's publishing, since nobody publishes them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from pathlib import Path

from build_tools.problem import Problem
from build_tools.source.draft_state import says_draft


def unit_of(problem: Problem) -> str:
    """The name of the unit's folder that a problem lies in; "" for one of the bank's own files."""
    parts = problem.file.split("/")
    return parts[1] if parts[0] == "units" and len(parts) > 1 else ""


def faulty_drafts(root: Path, problems: Iterable[Problem]) -> dict[str, int]:
    """How many errors each draft in the content folder `root` has, by its folder, in order.

    A draft that cannot be read counts, as long as it can be seen that it is one.
    """
    errors = Counter(unit_of(problem) for problem in problems if problem.severity == "error")
    return {slug: errors[slug] for slug in sorted(errors) if slug and _is_draft(root, slug)}


def _is_draft(root: Path, slug: str) -> bool:
    try:
        return says_draft((root / "units" / slug / "unit.md").read_bytes())
    except OSError:
        return False
