"""A unit in another language gets no clean bill: a note says how many rules were not asked.

The tag is one of BCP 47 (RFC 5646): cy is Welsh.
"""

from __future__ import annotations

from pathlib import Path

from build_tools.checking.check_bank import check_unit
from build_tools.rules.catalogue import all_rules
from tests.support.banks import BASE_UNIT, change, copy_base


def test_what_was_not_judged_is_said(tmp_path: Path) -> None:
    bank = copy_base(tmp_path)
    assert "wording-not-judged" not in {p.rule for p in check_unit(bank, BASE_UNIT, {}).problems}
    line = change(bank / "units" / BASE_UNIT / "unit.md", "\nlanguage: en-GB\n", "\nlanguage: cy\n")
    (note,) = (
        p for p in check_unit(bank, BASE_UNIT, {}).problems if p.rule == "wording-not-judged"
    )
    unread = sum(rule.reads == "en" and rule.check is not None for rule in all_rules())
    assert (note.severity, note.line) == ("note", line + 1)
    assert f"in `cy`, and {unread} rules read English alone" in note.message
    assert unread > 20
