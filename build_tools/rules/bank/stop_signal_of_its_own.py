"""One signal stops every class of the bank.

Two taps in one unit, a call and a raised hand in the next: the class that knew at once what to do
in autumn runs on in spring, and a teacher who takes over reads the lesson twice. The first step of
the first lesson is compared, where the class learns to stop; drafts may still change.

Bad:
    another unit: say: My raised hand means stop.
    say: Two taps mean stop.
Good:
    another unit: say: My raised hand means stop.
    say: My raised hand and two taps mean stop.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from build_tools.model.bank import BankOutline
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.stops_seen import signals_in
from build_tools.views.words.plain_words import listed

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"


def check_bank(bank: BankOutline) -> Iterator[Finding]:
    """Yield a finding for each unit whose signals have none in common with the usual one."""
    signals = [
        (unit, found)
        for unit in sorted(bank.units, key=lambda one: one.slug)
        if not unit.draft
        and (found := frozenset().union(*(signals_in(text) for text in unit.starts_with)))
    ]
    often = Counter(kind for _, found in signals for kind in found)
    if not often:
        return
    usual, units = min(often.items(), key=lambda one: (-one[1], one[0]))
    for unit, found in signals:
        if usual not in found:
            yield Finding(
                unit.file,
                ("title",),
                f"this unit stops the class by {listed(sorted(found))}, and {units} of the "
                f"{len(signals)} units that say how stop it by {usual}",
                f"write {usual} into the signal of its first lesson, with its own or without it",
            )
