"""Problems as lines of text."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence
from itertools import groupby

from build_tools.problem import GRADES, Problem


def as_text(problems: Sequence[Problem], prefix: str) -> str:
    """The problems file by file; `prefix` is put before each file's name, such as content/."""
    parts = []
    for file, of_file in groupby(problems, key=lambda p: p.file):
        for problem in of_file:
            place = f"{prefix}{file}:{problem.line}:{problem.column}"
            message = one_line(problem.message)
            parts.append(f"{place}: {problem.severity}: {message} [{problem.rule}]")
            parts.append(
                textwrap.fill(
                    f"to mend it: {problem.help}",
                    width=100,
                    initial_indent="    ",
                    subsequent_indent="    ",
                    break_long_words=False,
                )
            )
    return "\n".join(parts)


def one_line(words: str) -> str:
    """The words on one line, so that what an author or a stranger wrote starts none of its own."""
    return " ".join(words.splitlines())


def counted(problems: Sequence[Problem]) -> str:
    """How many of each grade, in words: 2 errors, 1 question."""
    found = []
    for grade in GRADES:
        if number := sum(p.severity == grade for p in problems):
            found.append(f"{number} {grade}{'' if number == 1 else 's'}")
    return ", ".join(found) or "no problems"


def skipped_line(skipped: int) -> str:
    """What to say of rules that were not run; empty if all were."""
    if not skipped:
        return ""
    rules = "rule was" if skipped == 1 else "rules were"
    return f"{skipped} {rules} not run, because what they look at is broken"
