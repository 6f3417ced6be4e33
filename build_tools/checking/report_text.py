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
            help_, *to_copy = problem.help.split("\n")
            parts.append(
                textwrap.fill(
                    f"to mend it: {help_}",
                    width=100,
                    initial_indent="    ",
                    subsequent_indent="    ",
                    break_long_words=False,
                )
            )
            parts += [f"        {line}" for line in to_copy]
    return "\n".join(parts)


MOST_AT_ONCE = 10
"""Problems that are read one after another; of more, a person wants to know where to begin."""
FIRST_TO_MEND = 5


def as_summary(problems: Sequence[Problem], prefix: str) -> str:
    """How many problems each unit has, and the first ones to mend: errors before questions.

    Where there are few, all of them. `prefix` is put before each file's name, such as content/.
    """
    if len(problems) <= MOST_AT_ONCE:
        return as_text(problems, prefix)
    folders: dict[str, list[Problem]] = {}
    for problem in problems:
        parts = problem.file.split("/")
        inside = len(parts) > 2 and parts[0] == "units"
        folders.setdefault("/".join(parts[:2]) if inside else problem.file, []).append(problem)
    lines = [f"{prefix}{folder}: {counted(found)}" for folder, found in folders.items()]
    to_mend = [one for one in problems if one.severity != "note"]
    first = sorted(to_mend or problems, key=lambda p: (GRADES.index(p.severity), p))[:FIRST_TO_MEND]
    left = len(problems) - len(first)
    heading = "the first to mend:" if to_mend else "nothing to mend; the first notes:"
    worst = [folder for folder, found in folders.items() if found[0] in first or len(folders) == 1]
    one = worst[0] if worst else next(iter(folders))
    more = f"`check --all {prefix}{one}` for every one"
    if len(folders) > 1:
        more = f"`check {prefix}{one}` for one place, `check --all` for every one"
    return "\n".join(
        [
            *lines,
            "",
            heading,
            *(as_text([problem], prefix) for problem in first),
            "",
            f"{left} more: {more}",
        ]
    )


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
