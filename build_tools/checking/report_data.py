"""Problems as JSON: a sorted list with one entry for each."""

from __future__ import annotations

import json
from collections.abc import Sequence

from build_tools.problem import Problem


def as_json(problems: Sequence[Problem], prefix: str) -> str:
    """The problems as a JSON list; `prefix` is put before each file's name, such as content/."""
    return json.dumps(
        [
            {
                "rule": p.rule,
                "severity": p.severity,
                "file": prefix + p.file,
                "line": p.line,
                "column": p.column,
                "message": p.message,
                "help": p.help,
            }
            for p in sorted(problems)
        ],
        ensure_ascii=False,
        indent=2,
    )
