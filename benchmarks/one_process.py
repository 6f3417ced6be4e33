"""What checking one unit costs beside PyYAML's C loader, in one process, turn about.

    .venv/bin/python benchmarks/one_process.py [--units 40]

Processor seconds of this process alone, so that other work on the machine moves them little.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
import time
from pathlib import Path

import yaml
from make_bank import PROJECT, make_bank

sys.path.insert(0, str(PROJECT))

from build_tools.checking.check_bank import check_unit

WARM = 6
"""Units before any is timed: sayings are made ready when they are first asked."""


def main() -> None:
    """Check each unit of a made bank and load its fields, and print what each took."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--units", type=int, default=40)
    units: int = parser.parse_args().units
    loading, checking = 0.0, 0.0
    with tempfile.TemporaryDirectory(prefix="bank-") as folder:
        root = Path(folder)
        make_bank(root, units)
        slugs = sorted(one.name for one in (root / "units").iterdir())
        for number, slug in enumerate(slugs):
            start = time.process_time()
            for file in sorted((root / "units" / slug).glob("*.md")):
                fields = file.read_text(encoding="utf-8").split("\n---\n", 1)[0]
                yaml.load(fields, Loader=yaml.CSafeLoader)
            loaded = time.process_time()
            check_unit(root, slug, {})
            if number >= WARM:
                loading += loaded - start
                checking += time.process_time() - loaded
    timed = units - WARM
    print(f"the loader {loading / timed * 1000:.1f} ms a unit, check {checking / timed * 1000:.1f}")
    print(f"check / loader: {checking / loading:.2f}")


if __name__ == "__main__":
    main()
