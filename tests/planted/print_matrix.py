"""Print rule by rule in how many sound units a fault was planted and found at its line."""

from __future__ import annotations

from build_tools.rules.catalogue import all_rules
from tests.planted.planting import Outcome, faults_of, outcomes


def main() -> None:
    """Print one line for each rule, and one below it for each fault that was not found."""
    planted = found = 0
    for rule in sorted(all_rules(), key=lambda rule: (rule.family, rule.name)):
        tried = [outcome for fault in faults_of(rule.name) for outcome in outcomes(fault)]
        good = sum(outcome.found for outcome in tried)
        planted, found = planted + len(tried), found + good
        edits = ", ".join(sorted({fault.edit for fault in faults_of(rule.name)})) or "not yet"
        print(f"{rule.family:<10} {rule.name:<34} {good:>2} of {len(tried):>2}  {edits}")
        for outcome in tried:
            if not outcome.found:
                print(f"    {_missed(outcome)}")
    print(f"{found} of {planted} planted faults found by the right rule at the right line")


def _missed(outcome: Outcome) -> str:
    where = f"{outcome.fault.plant.__name__}: {outcome.file}:{outcome.line}"
    if outcome.misshapen:
        return f"{where} out of shape: {outcome.misshapen[0]}"
    return f"{where}, but its rule reports at {sorted(outcome.reported) or 'no place'}"


if __name__ == "__main__":
    main()
