"""Print, for each rule and each sound unit, how many planted faults were found at their line."""

from __future__ import annotations

from itertools import groupby
from string import ascii_lowercase

from build_tools.rules.catalogue import all_rules
from tests.planted.planting import Outcome, faults_of, outcomes, sound_units

_WIDTH = 4


def main() -> None:
    """Print the units, one row for each rule, the totals, and what was not found."""
    slugs = [unit.slug for unit in sound_units()]
    letters = ascii_lowercase[: len(slugs)]
    print("Found / planted, by the right rule at the right line; a dot where no fault fits.\n")
    for letter, unit in zip(letters, sound_units(), strict=True):
        print(f"  {letter}  {unit.slug:<24} {unit.top['dance']['form']}")
    everything: list[Outcome] = []
    rules = sorted(all_rules(), key=lambda rule: (rule.family, rule.name))
    for family, members in groupby(rules, key=lambda rule: rule.family):
        print(f"\n{family:<36}{_cells(list(letters))}{'all':>8}  edits")
        for rule in members:
            faults = faults_of(rule.name)
            tried = [outcome for fault in faults for outcome in outcomes(fault)]
            edits = ", ".join(sorted({fault.edit for fault in faults}))
            print(f"  {rule.name:<34}{_row(slugs, tried)}  {edits}", flush=True)
            everything += tried
    print("\nall rules")
    for letter, slug in zip(letters, slugs, strict=True):
        print(
            f"  {letter}  {slug:<24}{_share([one for one in everything if one.slug == slug]):>10}"
        )
    print(f"     {'all units':<24}{_share(everything):>10}")
    for outcome in everything:
        if not outcome.found:
            print(f"not found: {_missed(outcome)}")


def _row(slugs: list[str], tried: list[Outcome]) -> str:
    columns = [[one for one in tried if one.slug == slug] for slug in slugs]
    return f"{_cells([_share(column) for column in columns])}{_share(tried):>10}"


def _share(tried: list[Outcome]) -> str:
    return f"{sum(one.found for one in tried)}/{len(tried)}" if tried else "."


def _cells(texts: list[str]) -> str:
    return "".join(f"{text:>{_WIDTH}}" for text in texts)


def _missed(outcome: Outcome) -> str:
    where = f"{outcome.fault.plant.__name__}: {outcome.file}:{outcome.line}"
    if outcome.misshapen:
        return f"{where} out of shape: {outcome.misshapen[0]}"
    return f"{where}, but its rule reports at {sorted(outcome.reported) or 'no place'}"


if __name__ == "__main__":
    main()
