"""Each rule finds exactly what the marks in its cases say, at those lines, and nothing else.

A case lies in `<family>/<rule>/bad…` or `good…` and holds only the files that differ from `base`.
`# expect: <rule>` stands at the end of a guilty line.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.rules.old_cases import Case, all_cases, expected, findings, laid_over_base, with_needs


@pytest.mark.parametrize("case", all_cases(), ids=str)
def test_finds_what_the_marks_say(case: Case, tmp_path: Path) -> None:
    marks = expected(case)
    assert bool(marks) == case.bad, "a bad case has a mark, a good case has none"
    found = findings(laid_over_base(case, tmp_path), with_needs(case.rule))
    assert {(p.file, p.line, p.rule) for _, _, p in found} == marks
