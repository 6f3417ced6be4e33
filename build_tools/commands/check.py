"""`check`: read the bank and say what needs mending."""

from __future__ import annotations

import hashlib
import sys
from collections.abc import Sequence
from pathlib import Path

from build_tools.checking.quick_check import quick_check
from build_tools.checking.report_data import as_json
from build_tools.checking.report_text import as_text, counted, skipped_line
from build_tools.misuse import Misuse
from build_tools.problem import Problem


def run(
    content: Path, paths: Sequence[str], *, json: bool, strict: bool, kept_in: Path | None
) -> int:
    """Check the folder `content` and report what lies below `paths`, or everything.

    What each unit's files said is kept in the file `kept_in`, if given, for the next time.

    Returns 0 when sound, 1 with an error (with a question too when `strict`). Raises Misuse
    where a path does not exist or lies outside the folder.
    """
    wanted = [_below(content, path) for path in paths]
    report = quick_check(content, kept_in)
    shown = [p for p in report.problems if _is_wanted(p, wanted)]
    prefix = f"{content.name}/"
    if json:
        print(as_json(shown, prefix))
    else:
        if shown:
            print(as_text(shown, prefix))
        print(counted(shown))
    if note := skipped_line(report.skipped):
        print(note, file=sys.stderr)
    return exit_code(shown, strict=strict)


def exit_code(problems: Sequence[Problem], *, strict: bool) -> int:
    """1 if a problem stands in the way, else 0."""
    grades = {"error", "question"} if strict else {"error"}
    return int(any(p.severity in grades for p in problems))


def kept_file(project: Path, content: Path) -> Path:
    """Where results for the folder `content` are kept from one check to the next."""
    name = hashlib.sha256(str(content).encode("utf-8", "surrogateescape")).hexdigest()[:16]
    return project / ".kept" / f"{name}.json"


def existing_content(content: Path) -> Path:
    """The content folder as a whole path; raises Misuse where there is none."""
    whole = _whole(content)
    if whole is None or not whole.is_dir():
        raise Misuse(f"there is no folder {content}; give the folder that holds bank.yml and units")
    return whole


def _below(content: Path, path: str) -> str:
    whole = _whole(Path(path))
    if whole is None:
        raise Misuse(f"there is no file or folder {path}")
    try:
        return whole.relative_to(content).as_posix()
    except ValueError:
        raise Misuse(f"{path} lies outside {content}, so nothing in it is checked") from None


def _whole(path: Path) -> Path | None:
    """The whole path of what exists; None where nothing does, or nothing could."""
    try:
        return path.resolve(strict=True)
    except (OSError, RuntimeError, ValueError):
        return None


def _is_wanted(problem: Problem, wanted: Sequence[str]) -> bool:
    return not wanted or any(
        w == "." or problem.file == w or problem.file.startswith(f"{w}/") for w in wanted
    )
