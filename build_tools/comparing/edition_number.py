"""Which number a new edition calls for (Semantic Versioning 2.0.0, applied to teaching).

The first number grows when pupils make or dance something else or the unit may be used otherwise,
the second when a lesson runs differently, the third when the same is said better.
"""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.comparing.change import Change, Weight


def called_for(old: str, changes: Sequence[Change]) -> str:
    """The edition that `changes` to the edition `old`, such as 1.2.0, call for."""
    first, second, third = (int(number) for number in old.split("."))
    match max((change.weight for change in changes), default=None):
        case None | Weight.RECORD:
            return old
        case Weight.WORDING:
            return f"{first}.{second}.{third + 1}"
        case Weight.TEACHING:
            return f"{first}.{second + 1}.0"
        case Weight.DANCE:
            return f"{first + 1}.0.0"


def newer(one: str, other: str) -> bool:
    """Whether the edition `one` is newer than `other`."""
    return [int(n) for n in one.split(".")] > [int(n) for n in other.split(".")]
