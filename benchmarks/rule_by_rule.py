"""What each rule takes of checking a unit, the dearest first, beside PyYAML's C loader.

    .venv/bin/python benchmarks/rule_by_rule.py [--units 10] [--rounds 5] [--show 40]

Each unit is checked as often as there are rounds, and the least time of each rule counts, so that
other work on the machine moves it little. A rule that asks first for what others ask too, such as
the words of the unit or the paths of the class, pays for it. Searches for rubbish are as few as in
`check`; texts that were read are forgotten between two rounds.
"""

from __future__ import annotations

import argparse
import gc
import sys
import tempfile
import time
from collections import defaultdict
from pathlib import Path

import yaml
from make_bank import PROJECT, make_bank

sys.path.insert(0, str(PROJECT))

from build_tools.checking.check_bank import check_shape, check_unit
from build_tools.checking.quick_check import BETWEEN_COLLECTIONS
from build_tools.model.build import build_unit
from build_tools.rules.catalogue import all_rules
from build_tools.sentences import plain, reading
from build_tools.source.folder import read_unit_folder
from build_tools.views.paper import typeface

WARM = 4
"""Units before any is timed: sayings are made ready when they are first asked."""
LOADER, READING, SHAPE, MODEL = "PyYAML's C loader", "(reading)", "(shape)", "(model)"
_OF_TEXTS = (reading.read, plain.plain_words, plain.words_by_sentence, typeface.words_wide)

Times = dict[tuple[str, str], float]
"""The least seconds of each unit and step."""


class _Watch:
    """Processor seconds from one step to the next."""

    def __init__(self, slug: str, least: Times) -> None:
        self._slug, self._least, self._since = slug, least, time.process_time()

    def step(self, name: str) -> None:
        """The step `name` is over."""
        took, key = time.process_time() - self._since, (self._slug, name)
        self._least[key] = min(took, self._least.get(key, took))
        self._since = time.process_time()


def time_unit(root: Path, slug: str, least: Times) -> None:
    """Load and check one unit, step by step."""
    watch = _Watch(slug, least)
    for file in sorted((root / "units" / slug).glob("*.md")):
        fields = file.read_text(encoding="utf-8").split("\n---\n", 1)[0]
        yaml.load(fields, Loader=yaml.CSafeLoader)
    watch.step(LOADER)
    folder = read_unit_folder(root, slug)
    watch.step(READING)
    check_shape(folder)
    watch.step(SHAPE)
    assert folder.unit is not None
    unit = build_unit(slug, folder.unit, folder.lessons, folder.media)
    watch.step(MODEL)
    for rule in all_rules():
        if rule.check is not None:
            list(rule.check(unit))
            watch.step(rule.name)


def main() -> None:
    """Print what each rule takes of a unit, and what all take beside the loader."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--units", type=int, default=10)
    parser.add_argument("--rounds", type=int, default=5)
    parser.add_argument("--show", type=int, default=40)
    args = parser.parse_args()
    least: Times = {}
    with tempfile.TemporaryDirectory(prefix="bank-") as folder:
        root = Path(folder)
        make_bank(root, WARM + args.units)
        slugs = sorted(one.name for one in (root / "units").iterdir())
        for slug in slugs[:WARM]:
            check_unit(root, slug, {})
        gc.freeze()
        gc.set_threshold(BETWEEN_COLLECTIONS)
        for _ in range(args.rounds):
            for kept in _OF_TEXTS:
                kept.cache_clear()
            for slug in slugs[WARM:]:
                time_unit(root, slug, least)
    each: dict[str, float] = defaultdict(float)
    for (_, name), seconds in least.items():
        each[name] += seconds * 1000 / args.units
    loader = each.pop(LOADER)
    whole = sum(each.values())
    for name, took in sorted(each.items(), key=lambda one: -one[1])[: args.show]:
        print(f"{took:7.2f} ms {took / whole:6.1%}  {name}")
    print(f"the loader {loader:.1f} ms a unit, check {whole:.1f}: {whole / loader:.2f} of it")


if __name__ == "__main__":
    main()
